import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { openBench } from '../support/openBench.ts';
import { openBrowser } from '../support/openBrowser.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const open = (width = 1440, height = 900) =>
  openBench(browser, inject('url'), { width, height, hasTouch: width < 700 });
const link = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Views' }).getByRole('link', { name, exact: true });
const fragment = (page: Page) => new URL(page.url()).hash;

describe('3 views', () => {
  test('Lessons and Physics are gone to, and Back, Forward and reload find them again', async () => {
    const page = await open();
    expect(await link(page, 'Bench').getAttribute('aria-current')).toBe('page');
    await link(page, 'Lessons').click();
    await page.getByRole('heading', { level: 1, name: /lesson/i }).waitFor();
    expect(fragment(page)).toBe('#lessons');
    expect(await page.title()).toBe('Lessons · Reheat Bench');
    await link(page, 'Physics').click();
    expect(fragment(page)).toBe('#physics');
    await page.goBack();
    expect(fragment(page)).toBe('#lessons');
    expect(await link(page, 'Lessons').getAttribute('aria-current')).toBe('page');
    await page.goForward();
    await page.reload();
    expect(await link(page, 'Physics').getAttribute('aria-current')).toBe('page');
    await link(page, 'Bench').click();
    await page.locator('h1 button').waitFor();
    expect(await page.title()).toBe('Reheat Bench');
    await page.context().close();
  });

  test('an address that leads nowhere opens the bench', async () => {
    const page = await open();
    await page.goto(`${inject('url')}#nowhere/at-all`);
    await page.locator('h1 button').waitFor();
    expect(await link(page, 'Bench').getAttribute('aria-current')).toBe('page');
    await page.context().close();
  });

  test('62 °C half typed, then Back: it is on the bench, and 1 Undo takes it away', async () => {
    const page = await open();
    await link(page, 'Physics').click();
    await link(page, 'Bench').click();
    const field = page.locator('#field-stat-setPoint');
    await field.fill('62');
    await page.goBack();
    await page.locator('h1 button').waitFor({ state: 'detached' });
    await page.goForward();
    expect(await field.inputValue()).toBe('62');
    await page.getByRole('button', { name: 'Undo set-point' }).click();
    expect(await field.inputValue()).toBe('60');
    await page.context().close();
  });
});

describe('the bar at the foot of a phone', () => {
  test('at 390 by 844 each name is 44 pixels or more both ways, and the bar stays at the foot', async () => {
    const page = await open(390, 844);
    for (const name of ['Bench', 'Side by side', 'Lessons', 'Physics']) {
      const box = await link(page, name).boundingBox();
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
      expect((box?.y ?? 0) + (box?.height ?? 0)).toBeCloseTo(844, 0); // whole pixels
    }
    await page.context().close();
  });

  test('50 presses of Tab from the settings on: the bar hides 0 of what has the focus', async () => {
    const page = await open(390, 844);
    await page.locator('#field-stat-setPoint').focus();
    for (let press = 0; press < 50; press++) {
      await page.keyboard.press('Tab');
      const isHidden = await page.evaluate(() => {
        const focused = document.activeElement;
        const bar = document.querySelector('nav');
        if (!focused || !bar || bar.contains(focused) || focused === document.body) return false;
        return focused.getBoundingClientRect().bottom > bar.getBoundingClientRect().top;
      });
      expect(isHidden).toBe(false);
    }
    await page.context().close();
  });
});
