import { readFile } from 'node:fs/promises';
import type { Browser } from 'playwright';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { openBench } from '../support/openBench.ts';
import { openBrowser } from '../support/openBrowser.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

test('a coil from a file is there after a reload, is picked in the settings, shortens the reheat and leaves with the CSV', async () => {
  const page = await openBench(browser, inject('url'), { width: 1440, height: 900 });
  const finding = page.locator('h1').first();
  const before = Number.parseFloat(/in ([\d.]+)/.exec(await finding.innerText())?.[1] ?? '');
  await page.getByRole('link', { name: 'Catalogue' }).first().click();
  const text = 'name,source,coil.given,coil.areaSquareMetres\nCoil of mine,rating plate,area,2\n';
  await page.getByLabel('Read a catalogue from a CSV file').setInputFiles({
    name: 'mine.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(text),
  });
  await page.getByText('mine.csv: 1 new, 0 in place of what had the same name.').waitFor();

  await page.reload();
  await page.getByRole('rowheader', { name: 'Coil of mine', exact: true }).waitFor();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as CSV' }).click(),
  ]);
  const saved = await readFile(await download.path(), 'utf8');
  expect(saved.split('\n').at(-2)).toMatch(/^Coil of mine,rating plate,/);

  await page.getByRole('link', { name: 'Bench', exact: true }).first().click();
  await page.locator('.settings summary', { hasText: /^Coil/ }).first().click();
  await page.getByLabel('From the catalogue').selectOption('Coil of mine');
  await page.getByText('Figures from: rating plate.').waitFor();
  const now = async () =>
    Number.parseFloat(/in ([\d.]+)/.exec(await finding.innerText())?.[1] ?? '');
  await expect.poll(now, { timeout: 10_000 }).toBeLessThan(before - 1);
  await page.context().close();
});
