import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { openBrowser } from '../support/openBrowser.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

/** Opens the app while whatever takes and checks settings is held back; it comes, or is lost, when told to. */
async function withoutSettings(width: number, height: number) {
  const context = await browser.newContext({ viewport: { width, height } });
  const page = await context.newPage();
  let decide: (isLost: boolean) => void = () => {};
  const decided = new Promise<boolean>((resolve) => {
    decide = resolve;
  });
  await page.route(/\/settingsParts-[^/]*\.js$/, async (route) => {
    if (await decided) await route.abort();
    else await route.continue();
  });
  await page.goto(inject('url'));
  await page.locator('h1 button').waitFor();
  return { page, come: () => decide(false), lose: () => decide(true) };
}

/** The sum of the layout shifts since `from`, ms; of all kinds, also those within 500 ms of an input. */
const shifted = (page: Page, from: number) =>
  page.evaluate(
    (since) =>
      new Promise<number>((resolve) => {
        new PerformanceObserver((list) => {
          const late = list.getEntries().filter(({ startTime }) => startTime >= since);
          // each entry of this kind has a value, which the types of the page do not know
          resolve(
            late.reduce((sum, entry) => sum + (entry as unknown as { value: number }).value, 0),
          );
        }).observe({ type: 'layout-shift', buffered: true });
        setTimeout(() => resolve(0), 500); // without any entry the observer is never called
      }),
    from,
  );

describe('before the settings have been fetched', () => {
  test.each([
    [1440, 900],
    [1000, 900],
    [390, 844],
  ])(
    'at %d by %d the finding, the drawing and the curve stand, and settings that come move 0 of it',
    async (width, height) => {
      const { page, come } = await withoutSettings(width, height);
      expect(await page.locator('.section .drawn > svg').isVisible()).toBe(true);
      expect(await page.locator('.curve svg.scrubbed').isVisible()).toBe(true);
      await expect.poll(() => page.locator('.block dl').count()).toBe(1);
      expect(await page.locator('#field-stat-setPoint').count()).toBe(0);
      const before = await page.evaluate(() => performance.now());
      come();
      await page.locator('#field-stat-setPoint').waitFor();
      await page.waitForTimeout(300); // for a shift to be seen, were there one
      expect(await shifted(page, before)).toBe(0);
      await page.context().close();
    },
  );

  test('the sensor taken up by 8 steps stands at 0.60 m, and is run as soon as it can be checked', async () => {
    const { page, come } = await withoutSettings(1440, 900);
    await page.locator('.bench > .section').getByRole('slider', { name: 'Sensor height' }).focus();
    for (let press = 0; press < 8; press++) await page.keyboard.press('ArrowUp');
    // each run after the first is said
    expect(await page.locator('#said').innerText()).toBe('');
    come();
    await expect.poll(() => page.locator('#field-stat-sensorHeight').inputValue()).toBe('0.60');
    await expect
      .poll(() => page.locator('#said').innerText(), { timeout: 10_000 })
      .toContain('min');
    await page.context().close();
  });

  test('settings that are lost are said to be lost, in 1 sentence with a button', async () => {
    const { page, lose } = await withoutSettings(1440, 900);
    lose();
    const said = page.locator('.panel [role=alert]');
    await said.waitFor();
    expect(await said.innerText()).toContain('could not be fetched');
    expect(await said.getByRole('button', { name: 'Try again' }).count()).toBe(1);
    await page.context().close();
  });
});
