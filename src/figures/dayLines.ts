import { coldestTenth } from '../../shared/coldestTenth.ts';
import type { DayRun } from '../../shared/day.ts';
import type { Celsius } from '../../shared/units.ts';
import type { FigureLine } from './reheatLines.ts';

/** Temperature of the coldest tenth of the store, [sample] °C. */
export function tenthOf({ trace }: DayRun): Float64Array {
  return Float64Array.from({ length: trace.samples }, (_, sample) => coldestTenth(trace, sample));
}

/** The temperatures of a day. @param tenth  [sample] °C @param isNarrow  whether the short name is used */
export function storeLines(
  { trace }: DayRun,
  tenth: Float64Array,
  isNarrow: boolean,
): FigureLine[] {
  return [
    { key: 'top', name: 'top', values: trace.of.top, kind: 'plain' },
    { key: 'sensor', name: 'sensor', values: trace.of.sensor, kind: 'lead' },
    { key: 'tenth', name: isNarrow ? 'coldest' : 'coldest tenth', values: tenth, kind: 'dotted' },
  ];
}

/** Top of the temperature axis, °C: above everything that is drawn in it. */
export function storeTop({ trace, variant }: DayRun): Celsius {
  const most = trace.of.top.reduce((high, each) => Math.max(high, each), variant.stat.setPoint);
  return Math.ceil((most + 2) / 10) * 10;
}

/** Least and most of the rooms in whole kelvins, the set-point between them. */
export function roomDomain({ trace, variant }: DayRun): [Celsius, Celsius] {
  const { roomSetPoint } = variant.heating;
  const { air } = trace.of;
  const least = air.reduce((low, each) => Math.min(low, each), roomSetPoint);
  const most = air.reduce((high, each) => Math.max(high, each), roomSetPoint);
  return [Math.floor(least - 0.1), Math.ceil(most + 0.1)];
}
