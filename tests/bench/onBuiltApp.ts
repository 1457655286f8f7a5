import type { Browser } from 'playwright';
import type { TestProject } from 'vitest/node';
import serveBuiltApp from '../support/builtApp.ts';
import { openBrowser } from '../support/openBrowser.ts';

/** Serves the built app to a browser for as long as a measurement takes. */
export async function onBuiltApp(
  measure: (browser: Browser, url: string) => Promise<void>,
): Promise<void> {
  let url = '';
  const stop = await serveBuiltApp({
    provide: (_key: string, value: string) => {
      url = value;
    },
  } as unknown as TestProject);
  const browser = await openBrowser();
  try {
    await measure(browser, url);
  } finally {
    await browser.close();
    await stop();
  }
}
