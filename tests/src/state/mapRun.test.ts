import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { withOverrides } from '../../../shared/grid.ts';
import { MapRun } from '../../../src/state/MapRun.svelte.ts';
import { mapSignature } from '../../../src/state/mapUnderWay.ts';
import { contentOf, PointCache } from '../../../src/worker/pointCache.ts';
import { inventedGrid, inventedMap, inventedPool } from '../../make/inventedMap.ts';

const grid = inventedGrid('plane');
const asked = { grid, rowsAreWords: false };
/** Lets the page do what it has put off until it is free. */
const breathe = () => vi.advanceTimersByTime(0);

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

test('there is no picture before the 25 coarse points, then one, and in the end all 81', () => {
  const { pool, work } = inventedPool();
  const run = new MapRun(pool);
  run.ask(asked);
  work(24);
  breathe();
  expect(run.found).toBeNull();
  work(1);
  breathe();
  expect(run.found?.done).toBe(25);
  work();
  expect(run.found?.done).toBe(81);
  expect(run.ending).toBe('finished');
  expect(run.found?.values).toEqual(inventedMap('plane').values);
});

test('stopped at 40 of 81 points, the 40 are kept, and going on computes the other 41 alone', () => {
  const { pool, work, asked: tasks } = inventedPool();
  const run = new MapRun(pool);
  run.ask(asked);
  work(40);
  run.stop();
  expect(run.ending).toBe('stopped');
  expect(run.found?.done).toBe(40);
  run.ask(asked);
  const take = vi.spyOn(tasks[1], 'take');
  work();
  expect(take.mock.results.flatMap(({ value }) => value)).toHaveLength(41);
  expect(run.found?.done).toBe(81);
});

test('a map that was drawn before is there at once, whole, and 0 points are computed', () => {
  const { pool, work } = inventedPool();
  const run = new MapRun(pool);
  run.ask(asked);
  work();
  run.ask({ grid: inventedGrid('line'), rowsAreWords: false });
  work();
  run.ask(asked);
  expect(run.found?.done).toBe(81);
  expect(run.isStale).toBe(false);
});

test('what an older map finds after a newer was asked for is not shown, but remembered', () => {
  const { pool, work, asked: tasks } = inventedPool();
  const run = new MapRun(pool);
  run.ask(asked);
  work(30);
  breathe();
  run.ask({ grid: inventedGrid('line'), rowsAreWords: false });
  expect(run.isStale).toBe(true);
  tasks[0].ended('superseded', '');
  work();
  expect(run.found?.grid.axes).toHaveLength(1);
  expect(run.ending).toBe('finished');
});

test('a worker that is heard draws nothing itself: the page may answer what was pressed first', () => {
  const { pool, work } = inventedPool();
  const run = new MapRun(pool);
  run.ask(asked);
  work(40);
  expect(run.found).toBeNull();
  breathe();
  expect(run.found?.done).toBe(40);
  work(20); // no more often than four times a second
  vi.advanceTimersByTime(249);
  expect(run.found?.done).toBe(40);
  vi.advanceTimersByTime(1);
  expect(run.found?.done).toBe(60);
});

test('progress is not told of within 200 ms, and only rises', () => {
  const { pool, work } = inventedPool();
  const run = new MapRun(pool);
  run.ask(asked);
  vi.advanceTimersByTime(199);
  expect(run.progress).toBeNull();
  vi.advanceTimersByTime(1);
  expect(run.progress).toBe(0);
  work(40);
  vi.advanceTimersByTime(250);
  expect(run.progress).toBeCloseTo(40 / 81, 12);
  work();
  expect(run.progress).toBeNull();
});

test('2 maps are one where only the name, or a setting that is mapped, differs', () => {
  const { base } = grid;
  const with_ = (other: typeof base) => mapSignature({ ...asked, grid: { ...grid, base: other } });
  const same = with_(base);
  expect(with_({ ...base, name: 'another' })).toBe(same);
  expect(with_(withOverrides(base, [['coil.area', 1.3]]))).toBe(same);
  expect(with_(withOverrides(base, [['boiler.output', 9000]]))).not.toBe(same);
});

test('the content of a variant is the same by either order of its settings, and another for any other value', () => {
  const { base } = grid;
  const one = contentOf(base, ['coil.area', 'boiler.hotWaterFlow'])([1, 70]);
  expect(contentOf(base, ['boiler.hotWaterFlow', 'coil.area'])([70, 1])).toBe(one);
  const set = withOverrides(base, [
    ['coil.area', 1],
    ['boiler.hotWaterFlow', 70],
  ]);
  expect(contentOf(set, [])([])).toBe(one);
  expect(contentOf(base, ['coil.area', 'boiler.hotWaterFlow'])([1, 70.1])).not.toBe(one);
  expect(contentOf({ ...set, ownDraws: [] }, [])([])).not.toBe(one);
});

test('of 100 contents in a memory for 10 the latest 10 are kept, and one that was asked for again stays', () => {
  const cache = new PointCache(10 * (300 + 4)); // four letters and what a content takes besides
  const cell = new Map([['recovery' as const, { value: 1, gap: null }]]);
  for (let n = 0; n < 100; n += 1) {
    cache.keep(`c${String(n).padStart(3, '0')}`, cell);
    cache.find('c000', 'recovery');
  }
  expect(cache.size).toBe(10);
  expect(cache.find('c000', 'recovery')?.value).toBe(1);
  expect(cache.find('c099', 'recovery')?.value).toBe(1);
  expect(cache.find('c050', 'recovery')).toBeUndefined();
});
