import { presetNamed, presets, presetVariant } from '../../shared/presets.ts';
import type { Variant } from '../../shared/variant.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';
import { SPREAD_RUNS, spreadOf } from '../../sim/run/spread.ts';
import { toEnd } from '../../sim/run/toEnd.ts';
import { median } from './quantile.ts';
import { onBuiltApp } from './onBuiltApp.ts';

// What a spread costs in one worker of Chromium beside a single reheat of 2 h, and how far its percentiles are from those of
// many runs. Prints; asserts nothing. MANY=yes adds the long comparison.

const timed = ['family-as-found', 'healthy-house', 'rapid-coil', 'short-cycling', 'far-away'];
const variantOf = (key: string): Variant => presetVariant(presetNamed(key) ?? presets[0]);

await onBuiltApp(async (browser, url) => {
  const page = await browser.newPage();
  const worker = page.waitForRequest(/run\.worker-/);
  await page.goto(url);
  const script = (await worker).url();
  // the page's own workers out of the way
  await page.goto(`${url}missing-on-purpose.txt`);
  console.log(`\nSpread by ${SPREAD_RUNS} runs in one worker of Chromium: bar 3 s`);
  for (const key of timed) {
    const variant = variantOf(key);
    const times = await page.evaluate(timesOf, { script, variant });
    const single = median(times.single);
    const whole = median(times.spread);
    console.log(
      `${key.padEnd(18)} median of ${times.spread.length}: ${whole.toFixed(0).padStart(6)} ms, ` +
        `${(whole / SPREAD_RUNS).toFixed(2)} ms a run; a reheat of 2 h with its trace ${single.toFixed(2)} ms, ` +
        `${(whole / single).toFixed(0)} of those; first word after ${median(times.first).toFixed(0)} ms; ` +
        `${simulateToEnd(variant).cost.derivativeCalls} calls in a reheat`,
    );
  }
});

if (process.env.MANY === 'yes') {
  const many = 4096;
  console.log(`\n${SPREAD_RUNS} runs against ${many}: how far off, percent`);
  for (const key of ['family-as-found', 'healthy-house', 'low-temperature', 'long-rests']) {
    const [few, all] = [SPREAD_RUNS, many].map((runs) => toEnd(spreadOf(variantOf(key), runs)));
    const off = (['low', 'median', 'high'] as const).map((which) =>
      (100 * ((few[which] ?? Number.NaN) / (all[which] ?? Number.NaN) - 1)).toFixed(2),
    );
    console.log(`${key.padEnd(18)} low ${off[0]}, median ${off[1]}, high ${off[2]}; bar 2`);
  }
}

/** In the page: ms of 3 spreads until the first word and until done, and of 21 single reheats, by one worker. */
async function timesOf({ script, variant }: { script: string; variant: Variant }) {
  const one = new Worker(script, { type: 'module' });
  let number = 0;
  const ask = (why: boolean) =>
    new Promise<{ first: number; done: number }>((resolve) => {
      number += 1;
      const asked = performance.now();
      let first = 0;
      one.onmessage = ({ data }) => {
        const now = performance.now() - asked;
        if (data.kind === 'study' && data.study.kind === 'spread' && first === 0) first = now;
        if (data.kind === 'finished') resolve({ first, done: now });
      };
      one.postMessage({ kind: 'run', number, variant, studies: false, why });
    });
  await ask(false);
  await ask(true); // warm
  const single: number[] = [];
  for (let i = 0; i < 21; i++) single.push((await ask(false)).done);
  const spread: number[] = [];
  const first: number[] = [];
  for (let i = 0; i < 3; i++) {
    const found = await ask(true);
    spread.push(found.done);
    first.push(found.first);
  }
  one.terminate();
  return { single, spread, first };
}
