import type { Browser } from 'playwright';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { openBench } from '../support/openBench.ts';
import { openBrowser } from '../support/openBrowser.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

test('the designer compares 3 coils in 8 actions at most, maps coil area against flow and saves the map as CSV', async () => {
  const page = await openBench(browser, inject('url'), { width: 1440, height: 900 });
  let actions = 0;
  const act = async (what: () => Promise<unknown>) => {
    actions += 1;
    await what();
  };
  const length = page.locator('#field-coil-length');
  const press = (name: string) => page.getByRole('button', { name, exact: true }).first().click();

  await act(() => press('Add variant B'));
  await act(() => page.locator('.panel summary', { hasText: /^Coil/ }).first().click());
  await act(() => length.fill('16').then(() => length.press('Enter')));
  await act(() => press('Add variant C'));
  await act(() => length.fill('20').then(() => length.press('Enter')));
  await act(() => page.getByRole('link', { name: 'Side by side' }).first().click());
  expect(actions).toBeLessThanOrEqual(8);

  const cells = (label: string) =>
    page.locator('tbody tr', { has: page.getByRole('rowheader', { name: label, exact: true }) });
  const tube = cells('Tube length').locator('td');
  await tube.nth(2).waitFor();
  expect((await tube.allInnerTexts()).map((text) => text.replaceAll('\u00a0', ' '))).toEqual([
    '12 m',
    '16 m',
    '20 m',
  ]);
  const recovered = cells('Recovery time').locator('td');
  const inMinutes = async () =>
    (await recovered.allInnerTexts()).map((text) => Number.parseFloat(text));
  await expect.poll(inMinutes, { timeout: 20_000 }).not.toContain(Number.NaN);
  const minutes = await inMinutes();
  expect(minutes[2]).toBeLessThan(minutes[1]);
  expect(minutes[1]).toBeLessThan(minutes[0]);

  await page.getByLabel('Setting across').selectOption({ label: 'Coil area' });
  await page.getByLabel('Second setting').selectOption({ label: 'Flow target for hot water' });
  await page.getByRole('button', { name: /^Compute/ }).click();
  await page.getByText(/^All 225 points are computed/).waitFor({ timeout: 50_000 });
  const [download] = await Promise.all([page.waitForEvent('download'), press('Save as CSV')]);
  expect(download.suggestedFilename()).toMatch(/^map-.*\.csv$/);
  await page.context().close();
});
