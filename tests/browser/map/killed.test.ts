import { expect, inject, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import { evenAxis, type Grid, pointCount, variantAt, withOverrides } from '../../../shared/grid.ts';
import { pointOf } from '../../../sim/run/pointOf.ts';
import { toEnd } from '../../../sim/run/toEnd.ts';
import { MapRun } from '../../../src/state/MapRun.svelte.ts';
import { askedTogether } from '../../../src/state/mapUnderWay.ts';
import { type PointPool, startPointWorker } from '../../../src/worker/pointPool.ts';
import { Pool } from '../../../src/worker/pool.ts';

/** A map of recovery times whose highest row is not possible: a flow target that the safety limiter would stop. */
function gridOf(columns: number, rows: number): Grid {
  return {
    base: withOverrides(defaultVariant('as found'), [['coil.given', 'area']]),
    axes: [evenAxis('boiler.hotWaterFlow', 70, 90, rows), evenAxis('coil.area', 0.5, 1.5, columns)],
    measures: askedTogether('recovery'),
  };
}

/** What each point gives when it is computed here, on the page. */
function directly(grid: Grid) {
  return Array.from({ length: pointCount(grid) }, (_, place) => {
    const { values, gaps } = toEnd(pointOf(variantAt(grid, place), grid.measures));
    return { value: values[0], gap: gaps[0] };
  });
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

const grid = gridOf(6, 5);
const direct = directly(grid);

function made() {
  const workers: Worker[] = [];
  const pool: PointPool = new Pool(() => {
    const worker = startPointWorker();
    workers.push(worker);
    return worker;
  }, 1);
  return { pool, workers, run: new MapRun(pool) };
}

test('30 points from a real worker are those computed here, to the last bit, 6 of them not possible', async () => {
  const { pool, run } = made();
  run.ask({ grid, rowsAreWords: false });
  await ended(run);
  expect(foundIn(run)).toEqual(direct);
  expect(direct.filter(({ gap }) => gap?.kind === 'notPossible')).toHaveLength(6);
  pool.rest();
});

test('asked again it is there at once: no worker is started for 30 points that are remembered', async () => {
  const { pool, workers, run } = made();
  run.ask({ grid, rowsAreWords: false });
  await ended(run);
  pool.rest();
  const before = workers.length;
  run.ask({ grid: { ...grid, base: { ...grid.base, name: 'another name' } }, rowsAreWords: false });
  expect(run.found?.done).toBe(30);
  expect(run.ending).toBe('finished');
  expect(workers).toHaveLength(before);
});

/** A map of three workers, of which so many are terminated while it is under way, each at a moment of chance. */
function dying(address: string, most: number) {
  let deaths = 0;
  const start = () => {
    const worker = new Worker(address, { type: 'module' });
    const kill = () => {
      if (deaths === most || run.ending !== null) return;
      deaths += 1;
      worker.terminate();
    };
    worker.addEventListener('message', () => setTimeout(kill, LIFE * Math.random()), {
      once: true,
    });
    return worker;
  };
  const pool: PointPool = new Pool(start, 3, 40); // 0.4 s of silence are enough here
  const run = new MapRun(pool);
  return { pool, run, deaths: () => deaths };
}

/** A worker lives no longer than this after its first word, ms: from its first point to some ten of them. */
const LIFE = 120;

test('of 50 workers terminated at moments of chance, 10 in a map, every map is whole and the same to the last bit', async () => {
  const module = new Blob([inject('bundledWorker')], { type: 'text/javascript' });
  const address = URL.createObjectURL(module);
  const large = gridOf(15, 15);
  const expected = directly(large);
  let dead = 0;
  for (let map = 0; map < 20 && dead < 50; map += 1) {
    const { pool, run, deaths } = dying(address, Math.min(10, 50 - dead));
    run.ask({ grid: large, rowsAreWords: false });
    await ended(run);
    expect(foundIn(run), `map ${map}`).toEqual(expected);
    pool.rest();
    dead += deaths();
  }
  expect(dead).toBe(50);
  URL.revokeObjectURL(address);
}, 120_000);
