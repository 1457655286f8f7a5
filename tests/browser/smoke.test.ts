import { expect, test } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import App from '../../src/App.svelte';
import { beginVisit } from '../../src/state/visit.ts';

test('the app shows 1 main heading in a real Chromium', async () => {
  render(App, { visit: await beginVisit() });
  await expect.element(page.getByRole('heading', { level: 1 })).toBeVisible();
  expect(document.querySelectorAll('h1')).toHaveLength(1);
});
