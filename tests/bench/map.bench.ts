import { svelte } from '@sveltejs/vite-plugin-svelte';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright';
import { build, preview } from 'vite';
import { openBrowser } from '../support/openBrowser.ts';
import { quantile } from './quantile.ts';

// Prints what a map of 32 × 32 recovery times takes in Chromium: to the first picture, to the whole, with 1 and 2 workers,
// the longest task of the page, and how soon it stops. The first map of a page is computed while the engine still compiles;
// those that follow it as a setting is moved show what workers add.

const root = fileURLToPath(new URL('./mapPage', import.meta.url));
const outDir = fileURLToPath(new URL('../../node_modules/.cache/mapPage', import.meta.url));
const REPEATS = 5;
const LATER = 3; // maps of a page after its first
const POINTS = 1024;
const KNOWN = 32; // points of the next map that this one has too: the column at the far end of the axis that is moved

interface Seen {
  clicked: number;
  first: number;
  last: number;
  lastHeard: number;
  longestTask: number;
}

/** In the page, before its own scripts: notes messages of workers and long tasks. */
function watch() {
  const seen = { clicked: 0, first: 0, last: 0, lastHeard: 0, longestTask: 0 };
  (window as unknown as { seen: Seen }).seen = seen;
  const Native = window.Worker;
  window.Worker = class extends Native {
    constructor(...given: ConstructorParameters<typeof Worker>) {
      super(...given);
      this.addEventListener('message', () => {
        seen.lastHeard = performance.now();
      });
    }
  };
  new PerformanceObserver((list) => {
    for (const { startTime, duration } of list.getEntries()) {
      if (startTime > seen.clicked) seen.longestTask = Math.max(seen.longestTask, duration);
    }
  }).observe({ entryTypes: ['longtask'] });
}

/** In the page: computes the first map, or the next, whose axis begins a step further on; until how many points are drawn. */
function compute([which, points]: readonly ['first' | 'next', number]): Promise<Seen> {
  const SETTLED = 100; // ms, so that the last long task is told of too
  const { seen } = window as unknown as { seen: Seen };
  const button = [...document.querySelectorAll('button')].find((each) =>
    /^\s*(Compute|Go on)/.test(each.textContent ?? ''),
  );
  const axis = document.querySelector('input[id$="-across-from"]');
  const drawn = () => {
    const text = (document.querySelector('figure .summary')?.textContent ?? '').replace(/\s/g, '');
    return Number(/^(?:All)?(\d+)/.exec(text)?.[1] ?? 0);
  };
  Object.assign(seen, { first: 0, longestTask: 0, clicked: performance.now() });
  if (which === 'first') button?.click();
  else axis?.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowUp', bubbles: true }));
  let isBegun = which === 'first';
  return new Promise((resolve) => {
    // at each change, not at each frame: to ask for frames would make the page draw 60 times a second
    const observer = new MutationObserver(() => {
      const now = performance.now();
      if (seen.first === 0 && document.querySelector('figure path.contour')) seen.first = now;
      isBegun ||= drawn() < points;
      if (!isBegun || drawn() < points) return;
      observer.disconnect();
      seen.last = now;
      setTimeout(() => resolve(seen), SETTLED);
    });
    observer.observe(document.body, { subtree: true, childList: true, characterData: true });
  });
}

async function opened(browser: Browser, address: string): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.addInitScript(watch);
  await page.goto(address);
  for (const setting of ['coil area', 'flow target for hot water']) {
    const count = page.getByLabel(`Points along ${setting}`, { exact: true });
    await count.fill('32');
    await count.press('Enter');
  }
  await page.waitForTimeout(2000); // as long as a look at what is entered takes
  return page;
}

/** The first maps of some pages, and those after them. */
interface Timed {
  readonly first: Seen[];
  readonly later: Seen[];
}

/** One and two workers in turn, so that a machine that is busy for a while slows both. */
async function timed(browser: Browser, url: string): Promise<readonly Timed[]> {
  const runs: Timed[] = [1, 2].map(() => ({ first: [], later: [] }));
  for (let repeat = 0; repeat < REPEATS; repeat += 1) {
    for (const [index, { first, later }] of runs.entries()) {
      const page = await opened(browser, `${url}?workers=${index + 1}`);
      first.push(await page.evaluate(compute, ['first', POINTS] as const));
      for (let map = 0; map < LATER; map += 1) {
        await page.waitForTimeout(500);
        later.push(await page.evaluate(compute, ['next', POINTS] as const));
      }
      await page.close();
    }
  }
  return runs;
}

function told(runs: readonly Seen[]) {
  const median = (of: (seen: Seen) => number) =>
    quantile(
      runs.map(of).sort((a, b) => a - b),
      0.5,
    );
  return {
    first: median(({ first, clicked }) => first - clicked),
    whole: median(({ last, clicked }) => last - clicked),
    longest: Math.max(...runs.map(({ longestTask }) => longestTask)),
  };
}

async function stopTimes(browser: Browser, address: string): Promise<number[]> {
  const times: number[] = [];
  for (let repeat = 0; repeat < REPEATS; repeat += 1) {
    const page = await opened(browser, address);
    await page.evaluate(compute, ['first', 200] as const);
    await page.waitForTimeout(300);
    const clicked = await page.evaluate(() => {
      const stop = [...document.querySelectorAll('button')].find(
        (each) => each.textContent?.trim() === 'Stop',
      );
      const now = performance.now();
      stop?.click();
      return now;
    });
    await page.waitForTimeout(1500);
    const { lastHeard } = await page.evaluate(() => (window as unknown as { seen: Seen }).seen);
    times.push(Math.max(0, lastHeard - clicked));
    await page.close();
  }
  return times;
}

await build({
  configFile: false,
  logLevel: 'error',
  root,
  base: './',
  publicDir: false,
  plugins: [svelte({ configFile: false })],
  worker: { format: 'es' },
  build: { outDir, emptyOutDir: true, target: 'es2022' },
});
const server = await preview({
  configFile: false,
  root,
  build: { outDir },
  preview: { port: 0, host: '127.0.0.1' },
});
const browser = await openBrowser();
try {
  const url = server.resolvedUrls?.local[0] ?? '';
  const rates: Record<keyof Timed, number[]> = { first: [], later: [] };
  for (const [index, runs] of (await timed(browser, url)).entries()) {
    const workers = `${index + 1} worker${index > 0 ? 's' : ''}`;
    for (const which of ['first', 'later'] as const) {
      const { first, whole, longest } = told(runs[which]);
      const rate = ((which === 'first' ? POINTS : POINTS - KNOWN) / whole) * 1000;
      rates[which].push(rate);
      console.log(
        `map 32 × 32, ${workers}, ${which}: ${which === 'first' ? `first picture ${first.toFixed(0)} ms, ` : ''}` +
          `whole ${whole.toFixed(0)} ms, ${rate.toFixed(0)} points a second; ` +
          `longest task ${longest === 0 ? 'under 50' : longest.toFixed(0)} ms`,
      );
    }
  }
  const times = ([one, two]: readonly number[]) => (two / one).toFixed(2);
  console.log(
    `two workers are ${times(rates.later)} times one, and ${times(rates.first)} times in the first map of a page`,
  );
  const stops = await stopTimes(browser, `${url}?workers=2`);
  console.log(
    `stop: the last word of a worker ${stops.map((time) => time.toFixed(0)).join(', ')} ms later`,
  );
} finally {
  await browser.close();
  await server.close();
}
