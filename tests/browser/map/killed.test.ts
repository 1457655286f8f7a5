import { expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import { evenAxis, type Grid, pointCount, variantAt, withOverrides } from '../../../shared/grid.ts';
import { pointOf } from '../../../sim/run/pointOf.ts';
import { toEnd } from '../../../sim/run/toEnd.ts';
import { MapRun } from '../../../src/state/MapRun.svelte.ts';
import { askedTogether } from '../../../src/state/mapUnderWay.ts';
import { type PointPool, startPointWorker } from '../../../src/worker/pointPool.ts';
import { Pool } from '../../../src/worker/pool.ts';

// one corner is not possible: a flow target that the safety limiter would stop
const grid: Grid = {
  base: withOverrides(defaultVariant('as found'), [['coil.given', 'area']]),
  axes: [evenAxis('boiler.hotWaterFlow', 70, 90, 5), evenAxis('coil.area', 0.5, 1.5, 6)],
  measures: askedTogether('recovery'),
};

/** What each point gives when it is computed here, on the page. */
const direct = Array.from({ length: pointCount(grid) }, (_, place) => {
  const { values, gaps } = toEnd(pointOf(variantAt(grid, place), grid.measures));
  return { value: values[0], gap: gaps[0] };
});

/** @param deaths  workers that are terminated, each as it has told of some points */
function made(count: number, deaths = 0) {
  const workers: Worker[] = [];
  let dead = 0;
  const pool: PointPool = new Pool(
    () => {
      const worker = startPointWorker();
      let told = 0;
      worker.addEventListener('message', ({ data }) => {
        if (data.kind === 'found') told += 1;
        if (told < 1 + (dead % 3) || dead >= deaths) return;
        dead += 1;
        told = Number.NEGATIVE_INFINITY;
        worker.terminate();
      });
      workers.push(worker);
      return worker;
    },
    count,
    150, // 1.5 s of silence are enough here; a start may take 9 s, as nothing is bundled
  );
  return { pool, workers, run: new MapRun(pool), dead: () => dead };
}

async function ended(run: MapRun) {
  await expect.poll(() => run.ending, { timeout: 60_000, interval: 5 }).toBe('finished');
}

function foundIn(run: MapRun) {
  const { values, gaps } = run.found ?? { values: null, gaps: [] };
  return gaps.map((gap, place) => {
    const value = values?.values[place] ?? Number.NaN;
    return { value: Number.isNaN(value) ? null : value, gap };
  });
}

test('30 points from a real worker are those computed here, to the last bit, 6 of them not possible', async () => {
  const { pool, run } = made(1);
  run.ask({ grid, rowsAreWords: false });
  await ended(run);
  expect(foundIn(run)).toEqual(direct);
  expect(direct.filter(({ gap }) => gap?.kind === 'notPossible')).toHaveLength(6);
  pool.rest();
});

test('a map in which 5 workers are terminated on the way is the same, to the last bit', async () => {
  const { pool, workers, run, dead } = made(2, 5);
  run.ask({ grid, rowsAreWords: false });
  await ended(run);
  expect(foundIn(run)).toEqual(direct);
  expect(dead()).toBe(5);
  expect(workers.length).toBeGreaterThanOrEqual(6);
  pool.rest();
}, 120_000);

test('asked again it is there at once: no worker is started for 30 points that are remembered', async () => {
  const { pool, workers, run } = made(1);
  run.ask({ grid, rowsAreWords: false });
  await ended(run);
  pool.rest();
  const before = workers.length;
  run.ask({ grid: { ...grid, base: { ...grid.base, name: 'another name' } }, rowsAreWords: false });
  expect(run.found?.done).toBe(30);
  expect(run.ending).toBe('finished');
  expect(workers).toHaveLength(before);
});
