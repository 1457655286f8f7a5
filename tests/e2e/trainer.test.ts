import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { openBench } from '../support/openBench.ts';
import { openBrowser } from '../support/openBrowser.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const player = (page: Page) => page.getByRole('region', { name: 'Player' });
const heading = (page: Page) => player(page).getByRole('heading').first().innerText();
const minutes = async (page: Page) => Number(/After ([\d.]+)\smin/.exec(await heading(page))?.[1]);

test('the trainer, with no pointer: lessons, who goes first, project, run, throw the switch with 1 key, back to start', async () => {
  const page = await openBench(browser, inject('url'), { width: 1920, height: 1080 });
  const press = async (name: string, role: 'link' | 'button') => {
    await page.getByRole(role, { name, exact: true }).first().focus();
    await page.keyboard.press('Enter');
  };
  await press('Lessons', 'link');
  await press('Who goes first', 'link');
  await player(page).waitFor();
  await press('Project', 'button');
  await press('Back to start', 'button');
  await press('Run', 'button');
  await expect.poll(() => minutes(page), { timeout: 20_000 }).toBeGreaterThan(6);
  await page.keyboard.press('2');
  await player(page).locator('.thrown').first().waitFor({ state: 'attached' });
  expect(await page.getByRole('radio', { name: 'both at once' }).first().isChecked()).toBe(true);
  // it goes on without another key, and the ribbon says who sets the pace now
  const thrown = await minutes(page);
  await expect.poll(() => minutes(page), { timeout: 20_000 }).toBeGreaterThan(thrown + 3);
  await expect.poll(() => player(page).locator('svg').first().innerHTML()).toMatch(/>heating/);
  expect(await page.getByRole('dialog').count()).toBe(0);

  const seen = await player(page).evaluate((section) => {
    const texts = [...section.querySelectorAll<HTMLElement | SVGElement>('*')].filter(
      (node) =>
        [...node.childNodes].some((child) => child.nodeType === 3 && child.textContent?.trim()) &&
        node.checkVisibility({ visibilityProperty: true }),
    );
    const { top, bottom, right } = section.getBoundingClientRect();
    return {
      smallest: Math.min(
        ...texts.map((node) => Number.parseFloat(getComputedStyle(node).fontSize)),
      ),
      isWhole: top >= 0 && bottom <= innerHeight && right <= innerWidth,
      scrolled: scrollY,
    };
  });
  expect(seen.smallest).toBeGreaterThanOrEqual(24);
  expect(seen.isWhole).toBe(true);

  await press('Back to start', 'button');
  await expect.poll(() => player(page).locator('.thrown').count()).toBe(0);
  expect(await page.getByRole('radio', { name: 'hot water first' }).first().isChecked()).toBe(true);
  await page.context().close();
});
