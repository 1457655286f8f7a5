import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { openBench, settled } from '../support/openBench.ts';
import { openBrowser } from '../support/openBrowser.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const desk = { width: 1440, height: 900 };
const open = (look = desk) => openBench(browser, inject('url'), look);
const height = (page: Page) => page.locator('#field-stat-sensorHeight');

test('the first visit opens with a finding in minutes, says the data are invented, and has 11 figures', async () => {
  const page = await open();
  expect(await page.locator('h1').innerText()).toMatch(/60\s°C at the sensor in \d+\.\d\smin\./);
  expect(await page.locator('.bench > .examples').innerText()).toContain('invented data');
  await settled(page);
  await expect.poll(() => page.locator('figure').count(), { timeout: 60_000 }).toBe(11);
  await page.context().close();
});

describe('the sensor goes to 0.60 m', () => {
  const to = async (page: Page) => {
    await expect.poll(() => height(page).inputValue()).toBe('0.60');
    await expect
      .poll(() =>
        page
          .locator('.bench > .section')
          .getByRole('slider', { name: 'Sensor height' })
          .getAttribute('aria-valuetext'),
      )
      .toBe('0.60 metres up, 45 percent of height');
    await expect.poll(() => page.locator('.bench > .section').innerText()).toContain('0.60');
    await page.context().close();
  };
  /** The middle of the handle, and where 0.60 m of the 1.32 m is on the wall. */
  const places = async (page: Page) => {
    const grip = await page.locator('[data-handle=sensor]').boundingBox();
    const wall = await page.locator('.bench div.wall').boundingBox();
    if (!grip || !wall) throw new Error('no handle, or no wall');
    const y = wall.y + wall.height * (1 - 0.6 / 1.32);
    return {
      grip: { x: grip.x + grip.width / 2, y: grip.y + grip.height / 2 },
      wall: { x: wall.x + wall.width / 2, y },
    };
  };

  test('by mouse, in 1 step that Undo takes back to 0.44 m', async () => {
    const page = await open();
    const { grip, wall } = await places(page);
    await page.mouse.move(grip.x, grip.y);
    await page.mouse.down();
    await page.mouse.move(grip.x, wall.y - 30, { steps: 5 });
    await page.mouse.move(grip.x, wall.y, { steps: 5 });
    await page.mouse.up();
    await expect.poll(() => height(page).inputValue()).toBe('0.60');
    await page.getByRole('button', { name: 'Undo sensor height' }).click();
    await expect.poll(() => height(page).inputValue()).toBe('0.44');
    await page.getByRole('button', { name: 'Redo sensor height' }).click();
    await to(page);
  });

  test('by 8 presses of the up arrow on the handle', async () => {
    const page = await open();
    await page.locator('.bench > .section').getByRole('slider', { name: 'Sensor height' }).focus();
    for (let press = 0; press < 8; press++) await page.keyboard.press('ArrowUp');
    await to(page);
  });

  test('by 1 tap on the wall', async () => {
    const page = await open();
    const { wall } = await places(page);
    await page.mouse.click(wall.x, wall.y);
    await to(page);
  });

  test('by typing 0,6 m', async () => {
    const page = await open();
    await height(page).fill('0,6 m');
    await height(page).press('Enter');
    await to(page);
  });

  test('by 8 presses of the button that says more', async () => {
    const page = await open();
    const more = page.locator('.settings').getByRole('button', { name: 'Sensor height: more' });
    for (let press = 0; press < 8; press++) await more.click();
    await to(page);
  });
});

test('Escape during a drag puts 0.44 m back, with 0 steps to undo', async () => {
  const page = await open();
  const box = await page.locator('[data-handle=sensor]').boundingBox();
  if (!box) throw new Error('no handle');
  await page.mouse.move(box.x + 22, box.y + 22);
  await page.mouse.down();
  await page.mouse.move(box.x + 22, box.y - 60, { steps: 6 });
  await expect.poll(() => height(page).inputValue()).not.toBe('0.44');
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await expect.poll(() => height(page).inputValue()).toBe('0.44');
  expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
  await page.context().close();
});

test('a set-point of 55 °C changes the finding, and Ctrl+Z gives the same sentence as before', async () => {
  const page = await open();
  const before = await page.locator('h1').innerText();
  const setPoint = page.locator('#field-stat-setPoint');
  await setPoint.fill('55');
  await setPoint.press('Enter');
  await expect.poll(() => page.locator('h1').innerText()).toContain('55');
  await expect.poll(() => page.locator('#said').innerText()).toContain('55');
  expect((await page.locator('#said').innerText()).split(/\s+/).length).toBeLessThan(21);
  await page.keyboard.press('Control+z');
  await expect.poll(() => page.locator('h1').innerText()).toBe(before);
  await page.context().close();
});

test('2 m in a cylinder of 1.32 m keeps the text, names the limit twice, and its link leads back', async () => {
  const page = await open();
  const before = await page.locator('h1').innerText();
  await height(page).fill('2');
  expect(await page.locator('.problems').count()).toBe(0);
  await height(page).press('Tab');
  await page.locator('.problems').waitFor();
  expect(await height(page).inputValue()).toBe('2');
  expect(await page.locator('#field-stat-sensorHeight-problem').innerText()).toContain('1.32');
  expect(await page.locator('h1').innerText()).toBe(before);
  expect(await page.locator('.top > .finding').innerText()).toContain('sensor height 0.44');
  await page.locator('.problems a').click();
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.id))
    .toBe('field-stat-sensorHeight');
  await page.keyboard.press('Control+a');
  await page.keyboard.type('0.5');
  await expect.poll(() => page.locator('.problems').count()).toBe(0);
  await page.context().close();
});

test('after a reload the example that was picked and 1 change to it are still there', async () => {
  const page = await open();
  const finding = () => page.locator('h1').innerText();
  const first = await finding();
  await page.locator('#example').selectOption('small-vented');
  await expect.poll(() => height(page).inputValue()).toBe('0.30');
  await expect.poll(finding).not.toBe(first);
  const before = await finding(); // and that of a sensor 0.1 m higher, to a tenth of a minute
  await height(page).fill('0.4');
  await height(page).press('Enter');
  await expect.poll(() => page.locator('.bench > .section').innerText()).toContain('0.40');
  await page.reload();
  await page.locator('h1 button').waitFor();
  expect(await height(page).inputValue()).toBe('0.40');
  expect(await page.locator('h1').innerText()).toBe(before);
  expect(await page.locator('.bench > .examples').innerText()).toContain('As you left it on');
  await page.context().close();
});

test('what was kept and is spoilt gives 1 sentence and the worked example', async () => {
  const page = await open();
  const kept = () => page.evaluate(() => localStorage.getItem('reheat-bench variant'));
  await expect.poll(kept).not.toBeNull(); // or it would be kept over what is spoilt
  await page.evaluate(() => localStorage.setItem('reheat-bench variant', 'yesterday\n{"a"'));
  await page.reload();
  await page.locator('h1 button').waitFor();
  expect(await page.locator('.bench > .examples').innerText()).toContain('cannot be read any more');
  expect(await page.locator('#example').inputValue()).toBe('family-as-found');
  await page.context().close();
});

test('a saved file opens again as the same bench; a file of prose is 1 problem with its name', async () => {
  const page = await open();
  await height(page).fill('0.7');
  await height(page).press('Enter');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save' }).click(),
  ]);
  const path = await download.path();
  await page.locator('#example').selectOption('rapid-coil');
  await expect.poll(() => height(page).inputValue()).toBe('0.44');
  await page.locator('input[type=file]').setInputFiles(path);
  await expect.poll(() => height(page).inputValue()).toBe('0.70');
  const prose = {
    name: 'letter.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from('Dear engineer'),
  };
  await page.locator('input[type=file]').setInputFiles(prose);
  await page.locator('.problems').waitFor();
  expect(await page.locator('.problems').innerText()).toContain('letter.txt was not opened');
  expect(await height(page).inputValue()).toBe('0.70');
  await page.context().close();
});

test('the minutes in the finding open a working with a formula in 2 rows, a source, and the focus', async () => {
  const page = await open();
  await page.locator('h1 button').click();
  const working = page.locator('#working-bench');
  expect(await working.locator('h3').innerText()).toMatch(/^Working: recovery time: \d/);
  expect(await working.locator('.scroller math').count()).toBe(2);
  expect(await working.innerText()).toContain('Source.');
  await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('H3');
  await working.getByRole('button', { name: 'Close' }).click();
  expect(await working.count()).toBe(0);
  expect(await page.evaluate(() => document.activeElement?.closest('h1') !== null)).toBe(true);
  await page.context().close();
});
