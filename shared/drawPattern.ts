import type { CubicMetres, CubicMetresPerSecond, Seconds } from './units.ts';

/** One draw of a day's pattern, water taken from the top of the store. */
export interface PatternDraw {
  readonly at: Seconds;
  readonly volume: CubicMetres;
  readonly flow: CubicMetresPerSecond;
  readonly name: string;
}

const litre = 1e-3;
const minute = 60;
const hour = 3600;

/** The day under which calls are counted: invented, about 120 litres of stored water. */
export const dayPattern: readonly PatternDraw[] = [
  { at: 6.5 * hour, volume: 30 * litre, flow: (6 * litre) / minute, name: 'shower' },
  { at: 7 * hour, volume: 30 * litre, flow: (6 * litre) / minute, name: 'shower' },
  { at: 7.5 * hour, volume: 4 * litre, flow: (4 * litre) / minute, name: 'basin' },
  { at: 8 * hour, volume: 6 * litre, flow: (5 * litre) / minute, name: 'sink' },
  { at: 12.5 * hour, volume: 6 * litre, flow: (5 * litre) / minute, name: 'sink' },
  { at: 17.5 * hour, volume: 6 * litre, flow: (5 * litre) / minute, name: 'sink' },
  { at: 19 * hour, volume: 8 * litre, flow: (5 * litre) / minute, name: 'sink' },
  { at: 21 * hour, volume: 30 * litre, flow: (6 * litre) / minute, name: 'shower' },
];
