import type { Calls, Mode } from '../../shared/arrangements.ts';
import type { Limit } from '../../shared/result.ts';
import type { CubicMetresPerSecond, Seconds } from '../../shared/units.ts';
import type { Firing } from '../plant/burner.ts';
import type { Service } from '../plant/service.ts';
import type { Pools } from './pools.ts';

/** What stands still between two events: set outside the derivative, read inside it. */
export interface Control {
  /** Circuits through which water moves. */
  service: Service;
  limit: Limit;
  firing: Firing;
  immersionIsOn: boolean;
  drawFlow: CubicMetresPerSecond;
  pools: Pools;
}

/** What waits for a moment of its own. Times are s after the midnight before the run. */
export interface Timers {
  /** A valve arrives. */
  readonly valve: Seconds;
  /** The circulator has run on long enough. */
  readonly overrun: Seconds;
  /** The burner has rested long enough. */
  readonly rest: Seconds;
  /** The rooms, or the cylinder again, get their turn. */
  readonly turn: Seconds;
  /** The sensor's lead breaks or shorts. */
  readonly fault: Seconds;
}

/** All that the controls remember from one moment to the next. */
export interface Memory {
  /** What the stats say; programme, faults and turns decide what becomes of it. */
  readonly calls: Calls;
  readonly immersionCalls: boolean;
  /** Circuits that are open. */
  readonly mode: Mode;
  /** Circuits that a valve is on its way to, or null. */
  readonly nextMode: Mode | null;
  readonly isRoomsTurn: boolean;
  readonly hasFault: boolean;
  readonly isLockedOut: boolean;
  readonly firing: Firing;
  readonly timers: Timers;
}

/** No timer set. */
export const noTimers: Timers = {
  valve: Number.POSITIVE_INFINITY,
  overrun: Number.POSITIVE_INFINITY,
  rest: Number.NEGATIVE_INFINITY, // over since ever: the burner may light
  turn: Number.POSITIVE_INFINITY,
  fault: Number.POSITIVE_INFINITY,
};

/** Before a run has started. */
export const beforeRun: Memory = {
  calls: { hotWater: false, heating: false },
  immersionCalls: false,
  mode: { coilRuns: false, radiatorsRun: false, limitOf: 'heating' },
  nextMode: null,
  isRoomsTurn: false,
  hasFault: false,
  isLockedOut: false,
  firing: 'off',
  timers: noTimers,
};
