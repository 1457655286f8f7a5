import type { Browser, Page } from 'playwright';

/** How a page is opened. */
interface Look {
  readonly width: number;
  readonly height: number;
  readonly theme?: 'light' | 'dark';
  readonly hasTouch?: boolean;
}

/** Opens the built app in a fresh context, with nothing kept, and waits for its first result. */
export async function openBench(browser: Browser, url: string, look: Look): Promise<Page> {
  const { width, height, theme = 'light', hasTouch = false } = look;
  const context = await browser.newContext({
    viewport: { width, height },
    colorScheme: theme,
    hasTouch,
  });
  const page = await context.newPage();
  await page.goto(url);
  await page.locator('h1 button').waitFor();
  return page;
}

/** Waits until the run, its studies and the progress that belongs to them are over. */
export async function settled(page: Page): Promise<void> {
  await page.locator('.study').first().waitFor({ state: 'attached' }); // fetched: there is none at first
  await page.locator('.study .stale').first().waitFor({ state: 'hidden' });
  await page.locator('.awaited').first().waitFor({ state: 'detached' });
}
