import type { Asked } from '../../shared/asked.ts';
import { defaultVariant } from '../../shared/fields.ts';
import { evenAxis, type Grid, overridesAt, withOverrides } from '../../shared/grid.ts';
import { sharingAxis } from '../../shared/mapSettings.ts';
import type { Gap, Point } from '../../shared/point.ts';
import type { RunFound } from '../../shared/poolMessages.ts';
import { type FoundMap, MapUnderWay } from '../../src/state/mapUnderWay.ts';
import { PointCache } from '../../src/worker/pointCache.ts';
import type { PointPool } from '../../src/worker/pointPool.ts';

const notSatisfied: Gap = {
  kind: 'notReached',
  outcome: null,
  sentences: ['The stat was not satisfied within the run.'],
};

/** Invented: recovery of a coil by its area and the flow, no model behind it; under 62 °C the stat is not satisfied. */
export function inventedPoint(grid: Grid, place: number): Point {
  const settings = Object.fromEntries(overridesAt(grid, place));
  const area = Number(settings['coil.area'] ?? grid.base.coil.area);
  const flow = Number(settings['boiler.hotWaterFlow'] ?? grid.base.boiler.hotWaterFlow);
  const isReached = flow >= 62 && settings['heating.arrangement'] !== 'heatingFirst';
  const value = isReached ? 60 * (20 + 400 / (area * (flow - 50))) : null;
  return {
    values: grid.measures.map(() => value),
    gaps: grid.measures.map(() => (value === null ? notSatisfied : null)),
  };
}

export type MapShape = 'plane' | 'line' | 'words';

/** @param count  of points along each axis of numbers */
export function inventedGrid(shape: MapShape, count = 9, measure: Asked = 'recovery'): Grid {
  const across = evenAxis('coil.area', 0.5, 1.5, count);
  const upward = evenAxis('boiler.hotWaterFlow', 58, 86, count);
  return {
    base: withOverrides(defaultVariant('as found'), [['coil.given', 'area']]),
    axes:
      shape === 'line' ? [across] : shape === 'words' ? [sharingAxis, across] : [upward, across],
    measures: [measure],
  };
}

/** A map of which the first so many points are computed, all where left out. */
export function inventedMap(shape: MapShape, count = 9, done = Number.POSITIVE_INFINITY): FoundMap {
  const grid = inventedGrid(shape, count);
  const map = new MapUnderWay({ grid, rowsAreWords: shape === 'words' }, new PointCache());
  for (let left = done; left > 0;) {
    const runs = map.take(Math.min(left, 5));
    if (runs.length === 0) break;
    left -= runs.length;
    map.put(runs.map(({ key }): RunFound<Point> => ({ key, point: inventedPoint(grid, key) })));
  }
  return map.picture();
}

/** A pool without workers: it finds invented points when told to. @param point  what it finds at a place */
export function inventedPool(point: (grid: Grid, place: number) => Point = inventedPoint) {
  type PointTask = Parameters<PointPool['begin']>[0];
  const open: { number: number; task: PointTask }[] = [];
  let number = 0;
  const asked: PointTask[] = [];
  let rests = 0;
  let wakes = 0;
  const pool = {
    wake() {
      wakes += 1;
    },
    begin(task: PointTask) {
      number += 1;
      asked.push(task);
      open.push({ number, task });
      return number;
    },
    stop(which: number) {
      const at = open.findIndex((each) => each.number === which);
      if (at >= 0) open.splice(at, 1)[0].task.ended('stopped', '');
    },
    rest() {
      rests += 1;
    },
  };
  /** Computes so many points of everything that is open; all there are, of what is then begun as well, where left out. */
  const work = (most = Number.POSITIVE_INFINITY) => {
    workOff(most);
    while (most === Number.POSITIVE_INFINITY && open.length > 0) workOff(most);
  };
  const workOff = (most: number) => {
    for (const each of [...open]) {
      for (let left = most; left > 0;) {
        const runs = each.task.take(Math.min(left, 10));
        left -= runs.length;
        for (const run of runs) {
          const grid: Grid = {
            base: each.task.job.base,
            axes: run.asked.map(([path, value]) => ({ path, values: [value] })),
            measures: each.task.job.asked,
          };
          each.task.found([{ key: run.key, point: point(grid, 0) }]);
        }
        if (runs.length > 0) continue;
        open.splice(open.indexOf(each), 1);
        each.task.ended('finished', '');
        break;
      }
    }
  };
  return {
    pool: pool as unknown as PointPool,
    asked,
    work,
    wakes: () => wakes,
    rests: () => rests,
  };
}
