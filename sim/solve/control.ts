import type { Calls, Mode } from '../../shared/arrangements.ts';
import type { Limit } from '../../shared/result.ts';
import type { PatternDraw } from '../../shared/drawPattern.ts';
import type { Joules, Seconds } from '../../shared/units.ts';
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
  tap: Tap;
  pools: Pools;
}

/** The tap: shut, or open for a draw. */
export interface Tap {
  readonly draw: PatternDraw | null;
  /** At or above what is wanted at the tap: cold is mixed in, or heat counts as useful. */
  readonly isWarm: boolean;
  /** The temperature that must be reached once has been. */
  readonly hasPeaked: boolean;
  /** Sum of useful heat at which the draw is done, J. */
  readonly doneAt: Joules;
}

/** No draw. */
export const shutTap: Tap = {
  draw: null,
  isWarm: false,
  hasPeaked: false,
  doneAt: Number.POSITIVE_INFINITY,
};

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
  /** All the water of a draw has been taken. */
  readonly tap: Seconds;
  /** The set-point is raised against Legionella, or goes back. */
  readonly heatThrough: Seconds;
}

/** The next of them, s; a rest that is over is none. @param clock  what is done */
export function soonest(
  { rest, valve, overrun, turn, fault, tap, heatThrough }: Timers,
  clock: Seconds,
): Seconds {
  const next = Math.min(valve, overrun, turn, fault, tap, heatThrough);
  return rest > clock ? Math.min(rest, next) : next;
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
  readonly tap: Tap;
  /** The set-point is raised. */
  readonly isHeatingThrough: boolean;
  readonly timers: Timers;
}

/** State and memory at one moment: all that a run needs to go on from there. */
export interface Snapshot {
  readonly state: readonly number[];
  readonly memory: Memory;
}

/** No timer set. */
export const noTimers: Timers = {
  valve: Number.POSITIVE_INFINITY,
  overrun: Number.POSITIVE_INFINITY,
  rest: Number.NEGATIVE_INFINITY, // over since ever: the burner may light
  turn: Number.POSITIVE_INFINITY,
  fault: Number.POSITIVE_INFINITY,
  tap: Number.POSITIVE_INFINITY,
  heatThrough: Number.POSITIVE_INFINITY,
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
  tap: shutTap,
  isHeatingThrough: false,
  timers: noTimers,
};
