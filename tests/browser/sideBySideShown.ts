import { afterEach } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../src/app.css';
import { defaultVariant } from '../../shared/fields.ts';
import { type Variant, withSetting } from '../../shared/variant.ts';
import { Bench } from '../../src/state/Bench.svelte.ts';
import { TimeCursor } from '../../src/state/TimeCursor.svelte.ts';
import { VariantRuns } from '../../src/state/VariantRuns.svelte.ts';
import SideBySideView from '../../src/views/SideBySideView.svelte';
import { PointCache } from '../../src/worker/pointCache.ts';
import { type PointPool, pointPool } from '../../src/worker/pointPool.ts';
import { startWorker } from '../../src/worker/startWorker.ts';

export const first = withSetting(defaultVariant('as found'), 'run.layers', 20);
export const larger = { ...withSetting(first, 'coil.length', 18), name: 'larger coil' };
export const cooler = { ...withSetting(first, 'boiler.hotWaterFlow', 70), name: 'cooler' };
export const lower = { ...withSetting(larger, 'stat.setPoint', 58), name: 'both' };
export const four = [first, larger, cooler, lower];

/** On one line, with plain spaces. */
export const words = (text: string) => text.replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();
export const plain = (node: Element | null | undefined) => words(node?.textContent ?? '');

/** As much of the reheats as the view asks for. */
type Runs = Pick<VariantRuns, 'fault' | 'of' | 'want' | 'startAgain' | 'dispose'>;

let last: Runs | null = null;
afterEach(() => last?.dispose());

/**
 * The view of some variants, once their reheats are known.
 * @param pool  computes what takes a run besides the reheat
 * @param runs  computes the reheats
 */
export async function shown(
  variants: readonly Variant[],
  width = 1440,
  pool: PointPool = pointPool(),
  runs: Runs = new VariantRuns(startWorker),
) {
  await page.viewport(width, width < 500 ? 844 : 900);
  const bench = new Bench(variants);
  last = runs;
  let visits = 0;
  const { container, unmount } = await render(SideBySideView, {
    result: null,
    day: null,
    bench,
    runs: runs as VariantRuns,
    moment: new TimeCursor(1200),
    lesson: null,
    ongo: () => {},
    onbench: () => (visits += 1),
    pool,
    cache: new PointCache(),
  });
  const reheat = () => runs.want(bench.all.variants);
  await reheat();
  const rows = () =>
    [...container.querySelectorAll('tbody tr')].map((row) => [...row.children].map(plain));
  const row = (label: string) => rows().find(([name]) => name === label) ?? [];
  return { container, unmount, bench, reheat, rows, row, visits: () => visits };
}
