import type { Variant } from '../../shared/variant.ts';
import { onBuiltApp } from './onBuiltApp.ts';
import { median } from './quantile.ts';

/** Median ms from asking a worker of the built app in Chromium for each run until it is there, of 61 after 100 to warm up. */
export async function workerTimes(variants: readonly Variant[]): Promise<number[]> {
  const medians: number[] = [];
  await onBuiltApp(async (browser, url) => {
    const page = await browser.newPage();
    const worker = page.waitForRequest(/run\.worker-/);
    await page.goto(url);
    const script = (await worker).url();
    // the page's own workers out of the way
    await page.goto(`${url}missing-on-purpose.txt`);
    for (const variant of variants) {
      medians.push(median(await page.evaluate(timesOf, { script, variant })));
    }
  });
  return medians;
}

/** In the page. */
async function timesOf({ script, variant }: { script: string; variant: Variant }) {
  const one = new Worker(script, { type: 'module' });
  const times: number[] = [];
  for (let number = 1; number <= 161; number++) {
    const asked = performance.now();
    await new Promise<void>((resolve) => {
      one.onmessage = ({ data }) => {
        if (data.number === number && data.kind === 'finished') resolve();
      };
      one.postMessage({ kind: 'run', number, variant, studies: false, why: false });
    });
    if (number > 100) times.push(performance.now() - asked);
  }
  one.terminate();
  return times;
}
