import type { Celsius, CubicMetres, CubicMetresPerSecond, Joules, Seconds } from './units.ts';

/** One draw: a tap from opening to shutting. Volume and flow are what leaves the tap, hot and cold together. */
export interface PatternDraw {
  /** From the start of the run. */
  readonly at: Seconds;
  /** At most; a draw by useful heat may end sooner. */
  readonly volume: CubicMetres;
  readonly flow: CubicMetresPerSecond;
  readonly name: string;
  /** Wanted at the tap and mixed there; left out: water as the store gives it, as a draw by useful heat takes it. */
  readonly mixedTo?: Celsius;
  readonly useful?: UsefulHeat;
}

/** Useful heat by the load profiles of the European Union: the draw ends once it is delivered. */
export interface UsefulHeat {
  /** Above the incoming cold water. */
  readonly energy: Joules;
  /** Tm: heat counts only while the water at the tap is at or above it. */
  readonly leastTemperature: Celsius;
  /** Tp: must be reached during the draw. */
  readonly peakTemperature: Celsius | null;
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
