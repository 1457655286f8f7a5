import type { Limit, Mark } from '../../shared/result.ts';
import type { Seconds } from '../../shared/units.ts';

/** What can switch. Each has one crossing function; it switches where that rises above zero. */
export type Switch =
  | 'stat'
  | 'offScale'
  | 'roomStat'
  | 'immersionStat'
  | 'tapWarm'
  | 'tapPeak'
  | 'tapDone'
  | 'merge'
  | 'part'
  | 'limitUp'
  | 'limitDown'
  | 'burnerHot'
  | 'burnerCool'
  | 'limiter'
  | 'loadUp'
  | 'loadDown';

/** The switches of a boiler: ideal or as built, each in a file of its own. */
export interface HeatSource {
  readonly switches: readonly Switch[];
  /**
   * Puts the boiler in order after anything has changed.
   * @param mayFire  whether water moves through a circuit that calls
   */
  settle(mayFire: boolean, clock: Seconds, y: ArrayLike<number>): Mark['kind'] | null;
  /** See `System.crossing`. */
  crossing(what: Switch, value: (slot: number) => number, evaluate: () => void): number;
  /** Throws one of its switches. @param y  the state there */
  throwSwitch(what: Switch, clock: Seconds, y: ArrayLike<number>): Mark['kind'] | null;
  /** What holds the boiler while it is called. */
  limit(): Limit;
}

/** Of a crossing function that cannot rise above zero at present. */
export const NEVER = Number.NEGATIVE_INFINITY;
