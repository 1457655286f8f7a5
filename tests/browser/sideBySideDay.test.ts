import { describe, expect, test } from 'vitest';
import { comparedApart, comparedLabel } from '../../shared/comparedMeasures.ts';
import type { Grid } from '../../shared/grid.ts';
import type { Point } from '../../shared/point.ts';
import { differenceText } from '../../shared/sentences/compare.ts';
import { measured } from '../../shared/sentences/map.ts';
import { withSetting } from '../../shared/variant.ts';
import { pointOf } from '../../sim/run/pointOf.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';
import { toEnd } from '../../sim/run/toEnd.ts';
import { VariantRuns } from '../../src/state/VariantRuns.svelte.ts';
import { pointPool } from '../../src/worker/pointPool.ts';
import { inventedPool } from '../make/inventedMap.ts';
import { cooler, first, larger, lower, plain, shown, words } from './sideBySideShown.ts';

const CALLS = 'Calls for hot water per day';

/** Invented: every measure is as many as the coil has metres. */
const invented = ({ base, measures }: Pick<Grid, 'base' | 'measures'>): Point => ({
  values: measures.map(() => base.coil.length),
  gaps: measures.map(() => null),
});

/** As `pointOf` has it where a run ended early; no settings are known that end one. */
const early = ({ measures }: Pick<Grid, 'measures'>): Point => ({
  values: measures.map(() => null),
  gaps: measures.map(() => ({
    kind: 'endedEarly',
    outcome: 'tooManySteps',
    sentences: ['The run ended early, after 13 h 20 min: it needed too many steps.'],
  })),
});

describe('what takes a run besides the reheat', () => {
  test('4 rows are what the model gives, with the difference from A, from real workers', async () => {
    const { row } = await shown([first, lower]);
    const [a, b] = [first, lower].map((variant) => toEnd(pointOf(variant, comparedApart)).values);
    for (const [index, key] of comparedApart.entries()) {
      const label = comparedLabel(key);
      const texts = [a, b].map((values) => measured(key, values[index]));
      const second = `${texts[1]} ${differenceText(key, b[index], a[index])}`;
      await expect
        .poll(() => row(label), { timeout: 20_000 })
        .toEqual([label, words(texts[0]), words(second)]);
    }
  });

  test('says so while it is computed, and is not begun before both have their reheat', async () => {
    const { pool, asked, work } = inventedPool(invented);
    const { row, bench, reheat } = await shown([first, larger], 1440, pool);
    await expect.poll(() => asked.length).toBe(2);
    expect(row(CALLS)).toEqual([CALLS, 'being computed', 'being computed']);
    expect(row('Recovery time')[2]).toMatch(/min (less|more)$/);
    work();
    await expect.poll(() => row(CALLS)).toEqual([CALLS, '12.0', '18.0 6.0 more']);
    bench.putAt(1, 'coil', withSetting(larger, 'coil.length', 20));
    await expect.poll(() => row('Recovery time')[2]).toBe('being computed');
    expect(asked).toHaveLength(4);
    await reheat();
    await expect.poll(() => asked.length).toBe(6);
  });

  test('a variant that is changed while its day is computed never shows the day of before', async () => {
    const { pool, asked, work } = inventedPool(invented);
    const { row, bench, reheat, unmount } = await shown([first, larger], 1440, pool);
    await expect.poll(() => asked.length).toBe(2);
    work(1); // the draws are there,
    work(1); // and the days begin
    expect(asked).toHaveLength(4);
    const day = asked.find(({ job }) => job.base.coil.length === 18 && job.asked.length > 1);
    bench.putAt(1, 'coil', withSetting(larger, 'coil.length', 20));
    // what a worker had already finished comes after the change
    day?.found([{ key: 0, point: invented({ base: larger, measures: day.job.asked }) }]);
    await expect.poll(() => row(CALLS)).toEqual([CALLS, 'being computed', 'being computed']);
    await reheat();
    await expect.poll(() => asked.length).toBe(6);
    work();
    await expect.poll(() => row(CALLS)).toEqual([CALLS, '12.0', '20.0 8.0 more']);
    bench.undo();
    await expect.poll(() => row(CALLS)).toEqual([CALLS, '12.0', '18.0 6.0 more']);
    expect(asked.filter(({ job }) => job.asked.length > 1 && job.base.coil.length === 18)).toEqual([
      day,
    ]);
    await unmount();
  });

  test('a day that ended early says so where its numbers would be, and the rest is compared', async () => {
    const { pool, asked, work } = inventedPool((grid) =>
      grid.base.coil.length === 18 && grid.measures.length > 1 ? early(grid) : invented(grid),
    );
    const { row } = await shown([first, larger, cooler], 1440, pool);
    await expect.poll(() => asked.length).toBe(2);
    work();
    const sentence = 'The run ended early, after 13 h 20 min: it needed too many steps.';
    await expect.poll(() => row(CALLS)).toEqual([CALLS, '12.0', sentence, '12.0 the same']);
    expect(row('Usable at 40 °C when drawn until the stat calls')[2]).toMatch(/ l [\d ]+ l more$/);
  });

  test('with rooms that are not heated it says that there is no lowest room temperature', async () => {
    const unheated = withSetting(first, 'heating.arrangement', 'hotWaterOnly');
    const { row } = await shown([first, unheated]);
    await expect
      .poll(() => row('Lowest room temperature')[2], { timeout: 20_000 })
      .toBe('No rooms are heated.');
  });

  test('0 workers are left when the view is left', async () => {
    const pool = pointPool();
    const { row, unmount } = await shown([first], 1440, pool);
    await expect.poll(() => row(CALLS)[1], { timeout: 20_000 }).toMatch(/^[\d.]+$/);
    expect(pool.size).toBeGreaterThan(0);
    await unmount();
    expect(pool.size).toBe(0);
  });
});

test('where the worker of the reheats is lost, 0 cells say that they are being computed', async () => {
  const lost = new VariantRuns(() => {
    throw new Error('no worker');
  });
  const { container, row } = await shown([first, larger], 1440, pointPool(), lost);
  await expect.poll(() => row('Recovery time')).toEqual(['Recovery time', '–', '–']);
  expect(plain(container)).not.toContain('being computed');
});

test('a reheat that ended early keeps its recovery and says of all else why it is not compared', async () => {
  const results = new Map(
    [first, larger].map((variant, place) => {
      const result = simulateToEnd(variant);
      const outcome = { kind: 'tooManySteps', at: 7000 } as const;
      return [variant.coil.length, place === 0 ? result : { ...result, outcome }];
    }),
  );
  const { row } = await shown([first, larger], 1440, pointPool(), {
    fault: null,
    of: ({ coil }) => results.get(coil.length) ?? null,
    want: async () => {},
    startAgain() {},
    dispose() {},
  });
  expect(row('Recovery time')[2]).toMatch(/^[\d.]+ min [\d.]+ min less$/);
  expect(row('Mean return').slice(1)).toEqual([
    expect.stringMatching(/^[\d.]+ °C$/),
    'The run ended early, after 116.7 min: it needed too many steps.',
  ]);
});
