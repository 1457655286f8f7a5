import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, CDPSession, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { openBench, settled } from '../support/openBench.ts';
import { openBrowser } from '../support/openBrowser.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const open = (look: Parameters<typeof openBench>[2]) => openBench(browser, inject('url'), look);

describe('axe finds 0 violations', () => {
  const source = readFileSync(
    createRequire(import.meta.url).resolve('axe-core/axe.min.js'),
    'utf8',
  );

  test.each([
    ['light', 390, 844],
    ['dark', 390, 844],
    ['light', 1440, 900],
    ['dark', 1440, 900],
  ] as const)(
    '%s, %d by %d, with a table, a setting’s help and a problem open',
    async (theme, width, height) => {
      const page = await open({ width, height, theme, hasTouch: width < 700 });
      await settled(page);
      await page.getByRole('button', { name: 'Table' }).first().click();
      await page.getByRole('button', { name: 'About set-point' }).click();
      await page.locator('#field-stat-lag').fill('soon');
      await page.locator('#field-stat-lag').press('Enter');
      await page.addScriptTag({ content: source });
      const violations = await page.evaluate(async () => {
        // biome-ignore lint/suspicious/noExplicitAny: axe stands in the page, without its types
        const found = await (window as any).axe.run(document);
        return found.violations.map(
          ({ id, nodes }: { id: string; nodes: { html: string }[] }) =>
            `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`,
        );
      });
      expect(violations).toEqual([]);
      await page.context().close();
    },
  );
});

describe('width', () => {
  test.each([320, 390, 700, 1100])(
    'at %d pixels the page has no sideways scroll',
    async (width) => {
      const page = await open({ width, height: 800 });
      await settled(page);
      const across = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(across).toBeLessThanOrEqual(width);
      await page.context().close();
    },
  );

  test('at 390 by 844 the curve, with its axis of minutes, ends within the first 720 pixels', async () => {
    const page = await open({ width: 390, height: 844, hasTouch: true });
    const box = await page.locator('.curve svg.scrubbed').boundingBox();
    expect((box?.y ?? 844) + (box?.height ?? 0)).toBeLessThanOrEqual(720);
    await page.context().close();
  });

  test('at 390 by 844 the sensor’s stepper stands beside its drawing, and settings right after the curve', async () => {
    const page = await open({ width: 390, height: 844, hasTouch: true });
    const boxOf = async (selector: string) => {
      const box = await page.locator(selector).boundingBox();
      if (!box) throw new Error(`no ${selector}`);
      return box;
    };
    const drawing = await boxOf('.section .drawn');
    const stepper = await boxOf('#sensor-height');
    expect(stepper.x).toBeGreaterThan(drawing.x + drawing.width);
    expect(stepper.y).toBeGreaterThan(drawing.y);
    expect(stepper.y + stepper.height).toBeLessThan(drawing.y + drawing.height);
    const tops = await Promise.all(
      ['.bench .finding', '.section', '.curve', '.panel', '.examples', '.block', '.store'].map(
        async (selector) => (await page.locator(selector).first().boundingBox())?.y ?? Number.NaN,
      ),
    );
    expect(tops).toEqual([...tops].sort((one, other) => one - other));
    await page.context().close();
  });

  test('at 1440 3 ties end where the plot begins and follow the sensor up; at 1000 there is none', async () => {
    const page = await open({ width: 1440, height: 900 });
    await page.locator('.ties .tie.sensor').waitFor();
    expect(await page.locator('.ties .tie').count()).toBe(3);
    // without the stroke, which a bounding box of the browser driver takes in
    const ends = () =>
      page.evaluate(() => {
        const [slope, level] = ['.ties .tie.sensor', '.curve .tie.sensor'].map((selector) =>
          document.querySelector(selector)?.getBoundingClientRect(),
        );
        if (!slope || !level) throw new Error('no tie');
        return {
          foot: slope.bottom,
          apart: Math.hypot(slope.right - level.left, slope.top - level.top),
        };
      });
    // the drawings settle in the frame after their first
    await expect.poll(async () => (await ends()).apart).toBeLessThan(0.1); // rounded coordinates
    const { foot } = await ends();
    await page.locator('#field-stat-sensorHeight').fill('0.8');
    await page.locator('#field-stat-sensorHeight').press('Enter');
    // 0.36 m at 297 pixels a metre are 107
    await expect.poll(async () => foot - (await ends()).foot).toBeGreaterThan(105);
    await expect.poll(async () => (await ends()).apart).toBeLessThan(0.1);
    await page.setViewportSize({ width: 1000, height: 900 });
    await expect.poll(() => page.locator('.ties .tie').count()).toBe(0);
    await page.context().close();
  });
});

describe('touch', () => {
  test.each([
    ['the curve', '.curve svg'],
    ['the drawing, away from the handle', '.drawn svg'],
  ])(
    'a swipe of 300 pixels upwards begun on %s scrolls the page 270 pixels or more',
    async (_what, target) => {
      const page = await open({ width: 390, height: 844, hasTouch: true });
      const svg = page.locator(target).first();
      await svg.scrollIntoViewIfNeeded();
      const box = await svg.boundingBox();
      if (!box) throw new Error(`no ${target}`);
      const before = await page.evaluate(() => scrollY);
      await swipe(page, box.x + box.width * 0.45, Math.min(700, box.y + box.height * 0.6), -300);
      await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThanOrEqual(before + 270);
      expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
      await page.context().close();
    },
  );

  test('steppers, the handle and the moment are 44 pixels or more both ways', async () => {
    const page = await open({ width: 390, height: 844, hasTouch: true });
    for (const name of ['Sensor height: more', 'Sensor height: less']) {
      const box = await page.getByRole('button', { name }).first().boundingBox();
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
    }
    const grip = await page.locator('[data-handle=sensor]').boundingBox();
    expect(Math.min(grip?.width ?? 0, grip?.height ?? 0)).toBeGreaterThanOrEqual(44);
    await page.context().close();
  });
});

describe('keys', () => {
  test('the dialog opens and closes by keyboard, and 4 single letters do nothing', async () => {
    const page = await open({ width: 1440, height: 900 });
    const finding = await page.locator('h1').innerText();
    for (const letter of 'zuks') await page.keyboard.press(letter);
    expect(await page.locator('h1').innerText()).toBe(finding);
    await page.getByRole('button', { name: 'Keys' }).focus();
    // each wait fails the test when what it waits for does not come; focus goes back to the button by itself
    const dialog = page.getByRole('dialog');
    await page.keyboard.press('Enter');
    await dialog.waitFor({ state: 'visible' });
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'hidden' });
    await page.waitForFunction(() => document.activeElement?.textContent?.includes('Keys'));
    await page.keyboard.press('Enter');
    await dialog.waitFor({ state: 'visible' });
    expect(await dialog.count()).toBe(1);
    await page.context().close();
  });

  test('the theme goes to light, to dark and back to the device’s in 3 presses', async () => {
    const page = await open({ width: 1440, height: 900, theme: 'dark' });
    const theme = () => page.evaluate(() => document.documentElement.dataset.theme ?? 'system');
    const seen = [await theme()];
    for (let press = 0; press < 3; press++) {
      await page.getByRole('button', { name: 'Theme' }).click();
      seen.push(await theme());
    }
    expect(seen).toEqual(['system', 'light', 'dark', 'system']);
    await page.context().close();
  });
});

test('on paper there are cautions and a whole formula, and 0 settings, steppers, Undo or Close buttons', async () => {
  const page = await open({ width: 794, height: 1123 }); // A4
  await page.locator('.working .scroller').first().waitFor();
  await page.getByRole('button', { name: 'Close' }).first().waitFor();
  await page.emulateMedia({ media: 'print' });
  await page.locator('.cautions').waitFor({ state: 'visible' }); // they come after the first result
  expect(await page.locator('#field-stat-setPoint').isVisible()).toBe(false);
  expect(await page.getByRole('button', { name: 'Undo' }).count()).toBe(0);
  expect(await page.getByRole('button', { name: 'Close' }).count()).toBe(0);
  const cut = await page
    .locator('.working .scroller')
    .first()
    .evaluate((formula) => formula.scrollWidth - formula.clientWidth);
  expect(cut).toBeLessThanOrEqual(0);
  await page.context().close();
});

test.each(['system', 'dark'])(
  'in the theme "%s" of a dark device paper is white and its ink black',
  async (theme) => {
    const page = await open({ width: 794, height: 1123 });
    await page.evaluate((chosen) => {
      document.documentElement.dataset.theme = chosen;
    }, theme);
    const token = (name: string) =>
      page.evaluate(
        (of) => getComputedStyle(document.documentElement).getPropertyValue(of).trim(),
        name,
      );
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await token('--paper')).toBe('#12161c');
    await page.emulateMedia({ colorScheme: 'dark', media: 'print' });
    expect(await token('--paper')).toBe('#fff');
    expect(await token('--ink')).toBe('#1c2024');
    await page.context().close();
  },
);

/** One finger, from a point by a distance down the screen (negative is up), in 20 ms steps. */
async function swipe(page: Page, x: number, y: number, distance: number): Promise<void> {
  const session: CDPSession = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', at: number) =>
    session.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: type === 'touchEnd' ? [] : [{ x, y: at }],
    });
  await touch('touchStart', y);
  for (let step = 1; step <= 15; step++) {
    await touch('touchMove', y + (distance * step) / 15);
    await page.waitForTimeout(20);
  }
  await touch('touchEnd', y + distance);
}
