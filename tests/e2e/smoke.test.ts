import type { Browser } from 'playwright';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { openBrowser } from '../support/openBrowser.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

test('the built app opens with 1 main heading and 0 faults in the console', async () => {
  const page = await browser.newPage();
  const faults: string[] = [];
  page.on('pageerror', (fault) => faults.push(fault.message));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') faults.push(message.text());
  });
  page.on('requestfailed', (request) => faults.push(`not loaded: ${request.url()}`));
  await page.goto(inject('url'), { waitUntil: 'networkidle' });
  expect(await page.locator('h1').count()).toBe(1);
  expect(faults).toEqual([]);
  await page.close();
});

test('the built app asks nothing of any other address', async () => {
  const page = await browser.newPage();
  const elsewhere: string[] = [];
  page.on('request', (request) => {
    const { protocol, origin } = new URL(request.url());
    if (protocol.startsWith('http') && origin !== new URL(inject('url')).origin) {
      elsewhere.push(request.url());
    }
  });
  await page.goto(inject('url'), { waitUntil: 'networkidle' });
  expect(elsewhere).toEqual([]);
  await page.close();
});

test('licences.txt holds the licence of each package that ships code', async () => {
  const reply = await fetch(new URL('licences.txt', inject('url')));
  expect(reply.status).toBe(200);
  expect(await reply.text()).toMatch(/^svelte 5\.\d+\.\d+ \(MIT\)$/m);
});
