import { type Browser, chromium } from 'playwright';
import { chromiumArguments, chromiumPath } from './chromium.ts';

/** Starts the Chromium of the end-to-end tests; the caller closes it. */
export async function openBrowser(): Promise<Browser> {
  return chromium.launch({ executablePath: await chromiumPath(), args: chromiumArguments });
}
