import { duration, figure } from '../../shared/format.ts';
import type { Spread } from '../../shared/spread.ts';
import type { Seconds } from '../../shared/units.ts';
import type { TableOf } from '../charts/table.ts';

/** Share of the cases that have got there, as a stepped line: minutes and percent. */
export function steps({ recoveries, runs }: Spread): { xs: Float64Array; ys: Float64Array } {
  const xs = new Float64Array(2 * recoveries.length);
  const ys = new Float64Array(2 * recoveries.length);
  recoveries.forEach((recovery, index) => {
    xs.fill(recovery / 60, 2 * index, 2 * index + 2);
    ys[2 * index] = (100 * index) / runs;
    ys[2 * index + 1] = (100 * (index + 1)) / runs;
  });
  return { xs, ys };
}

/** Least and most of the minutes that are drawn, the present time among them. */
export function minutesDomain({ recoveries }: Spread, present: Seconds | null): [number, number] {
  const all = [...recoveries, ...(present === null ? [] : [present])].map((one) => one / 60);
  if (all.length === 0) return [0, 1];
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const margin = Math.max(1, (most - least) / 20);
  return [Math.max(0, Math.floor(least - margin)), Math.ceil(most + margin)];
}

/** Within how long so many of the cases get there. */
export function spreadTable({ recoveries, runs, variant }: Spread): TableOf {
  return {
    columns: ['cases, %', 'satisfied within'],
    rows: (runs < 2 ? [100] : [10, 20, 30, 40, 50, 60, 70, 80, 90, 100]).map((share) => {
      const last = recoveries[Math.ceil((share * runs) / 100) - 1] as Seconds | undefined;
      const words =
        last === undefined ? `more than ${duration(variant.run.duration, 0)}` : duration(last, 1);
      return [figure(share, 0), words];
    }),
  };
}
