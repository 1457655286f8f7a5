import { describe, expect, test } from 'vitest';
import { comparedApart } from '../../../shared/comparedMeasures.ts';
import { defaultVariant } from '../../../shared/fields.ts';
import { evenAxis, type Grid, variantAt } from '../../../shared/grid.ts';
import type { Point } from '../../../shared/point.ts';
import { type Variant, withSetting } from '../../../shared/variant.ts';
import { MapRun } from '../../../src/state/MapRun.svelte.ts';
import { VariantPoints } from '../../../src/state/VariantPoints.svelte.ts';
import { PointCache } from '../../../src/worker/pointCache.ts';
import type { PointPool } from '../../../src/worker/pointPool.ts';
import { inventedPool } from '../../make/inventedMap.ts';

const a = defaultVariant('as found');
const b = withSetting(a, 'stat.setPoint', 55);

/** Invented: every measure is the set-point and its own place among those asked. */
function invented(grid: Grid): Point {
  const { measures } = grid;
  const base = variantAt(grid, 0);
  return {
    values: measures.map((_, place) => base.stat.setPoint + place),
    gaps: measures.map(() => null),
  };
}

function made() {
  const cache = new PointCache();
  const stand = inventedPool(invented);
  return { ...stand, cache, points: new VariantPoints(stand.pool, cache) };
}

const callsOf = (points: VariantPoints, variant: Variant) =>
  points.of(variant, 'callsPerDay')?.value ?? null;

describe('2 variants', () => {
  test('have 4 runs, the draws before the days and A before B, 2 of them handed out at a time', () => {
    const { points, asked, work } = made();
    points.want('table', [a, b], comparedApart);
    expect(asked).toHaveLength(2);
    expect(callsOf(points, a)).toBeNull();
    work();
    expect(asked.map(({ job }) => [job.base.stat.setPoint, job.asked.length])).toEqual([
      [60, 1],
      [55, 1],
      [60, 3],
      [55, 3],
    ]);
    expect(comparedApart.map((key) => points.of(b, key)?.value)).toEqual([55, 55, 56, 57]);
  });

  test('that are alike but for their name are run once, and once only', () => {
    const { points, asked, work } = made();
    points.want('table', [a, { ...a, name: 'another' }], comparedApart);
    points.want('table', [{ ...a, name: 'renamed' }], comparedApart);
    work();
    points.want('table', [a], comparedApart);
    expect(asked).toHaveLength(2);
    expect(callsOf(points, { ...a, name: 'another' })).toBe(60);
  });
});

describe('a variant that is changed', () => {
  test('while it is computed: 0 of its old values are shown as new, and A is not run again', () => {
    const { points, asked, work } = made();
    const days = ['callsPerDay'] as const;
    points.want('table', [a, b], days);
    work(1);
    const changed = withSetting(b, 'boiler.output', 9000);
    points.want('table', [a, changed], days);
    expect(asked).toHaveLength(3);
    expect(callsOf(points, changed)).toBeNull();
    expect(callsOf(points, a)).toBe(60);
    work();
    expect(callsOf(points, changed)).toBe(55);
  });

  test('before it began: its run is given up, and what comes of it all the same is remembered', () => {
    const { points, asked, work } = made();
    points.want('table', [b], ['callsPerDay']);
    const [day] = asked;
    points.want('table', [a], ['callsPerDay']);
    expect(day.take(1)).toHaveLength(1);
    day.found([{ key: 0, point: { values: [7, 8, 9], gaps: [null, null, null] } }]);
    work();
    expect([callsOf(points, a), callsOf(points, b)]).toEqual([60, 7]);
    points.want('table', [a, b], ['callsPerDay']);
    expect(asked).toHaveLength(2);
  });

  test('0 runs stay under way while nothing is wanted, and what is known stays', () => {
    const { points, asked, work } = made();
    points.want('table', [a], comparedApart);
    work();
    points.want('table', [b], comparedApart);
    points.want('table', [], comparedApart);
    work();
    expect([callsOf(points, a), callsOf(points, b)]).toEqual([60, null]);
    points.want('table', [a, b], comparedApart);
    expect(asked).toHaveLength(6);
  });
});

describe('what cannot be computed', () => {
  test('says why, and is tried again when it is next wanted', () => {
    const { points, asked } = made();
    points.want('table', [a], ['callsPerDay']);
    asked[0].take(1);
    asked[0].found([{ key: 0, fault: 'the worker that computed it died 6 times' }]);
    asked[0].ended('finished', '');
    expect(points.of(a, 'callsPerDay')?.gap?.sentences).toEqual([
      'It could not be computed: the worker that computed it died 6 times.',
    ]);
    points.want('map', [a], ['recovery']);
    expect(points.of(a, 'callsPerDay')?.value).toBeNull();
    points.want('table', [a], ['callsPerDay']);
    expect(asked).toHaveLength(3);
    expect(points.of(a, 'callsPerDay')).toBeNull();
  });

  test('where no worker starts, each of 4 measures says so, and it is tried again when they are next wanted', () => {
    let begun = 0;
    const pool = {
      begin(task: Parameters<PointPool['begin']>[0]) {
        begun += 1;
        task.ended('lost', 'no worker');
        return begun;
      },
      stop() {},
    } as unknown as PointPool;
    const points = new VariantPoints(pool);
    points.want('table', [a], comparedApart);
    expect(comparedApart.map((key) => points.of(a, key)?.gap?.sentences)).toEqual(
      comparedApart.map(() => ['It could not be computed: no worker could be kept alive.']),
    );
    points.want('table', [a], comparedApart);
    expect(begun).toBe(2);
  });
});

describe('beside a map with the same memory', () => {
  const day = ['callsPerDay', 'dayLowestRoom', 'fuelPerDay'] as const;

  test.each([true, false])('a day that both want is run once, the map first: %s', (isMapFirst) => {
    const { points, asked, work } = made();
    const wants = [
      () => points.want('map', [a], ['fuelPerDay']),
      () => points.want('table', [a], day),
    ];
    for (const want of isMapFirst ? wants : wants.reverse()) want();
    expect(asked).toHaveLength(1);
    work();
    expect(points.of(a, 'fuelPerDay')?.value).toBeGreaterThanOrEqual(60);
    for (const want of wants) want();
    expect(asked).toHaveLength(1);
  });

  test('0 runs are given up that the other still wants', () => {
    const { points, asked, work } = made();
    points.want('map', [a, b], ['callsPerDay']);
    points.want('table', [a], day);
    points.want('table', [], day);
    points.want('map', [a], ['recovery']);
    work();
    expect(asked.map(({ job }) => job.asked.length)).toEqual([3, 3, 1]);
    expect([callsOf(points, a), callsOf(points, b)]).toEqual([null, null]);
    expect(points.of(a, 'recovery')?.value).toBe(60);
    points.want('map', [a], ['callsPerDay']);
    points.want('table', [b], day);
    points.want('map', [], ['callsPerDay']);
    work();
    expect([callsOf(points, a), callsOf(points, b)]).toEqual([null, 55]);
  });

  test('a point that a map has computed is known of the variant that stands there', () => {
    const { points, pool, cache, asked, work } = made();
    const map = new MapRun(pool, cache);
    const grid = { base: a, axes: [evenAxis('stat.setPoint', 50, 60, 3)], measures: [...day] };
    map.ask({ grid, rowsAreWords: false });
    work();
    points.want('table', [a, b], day);
    expect(asked).toHaveLength(1);
    expect(callsOf(points, b)).toBe(55);
  });
});
