import type { Seconds } from '../../shared/units.ts';
import { Solver } from './odex.js';
import { withPortablePower } from './portableSolver.ts';

export interface IntegrateSettings {
  /** [slot] */
  readonly absoluteTolerance: number[];
  /** [slot], or one for all. */
  readonly relativeTolerance: number | number[];
  /** s, tried first */
  readonly firstStep: Seconds;
  readonly longestStep: Seconds;
  /** Calls of the derivative allowed; also ends a run whose numbers have gone wrong. */
  readonly budget: number;
}

/** How a piece ended: at its end time, at an event, out of calls, or with a number that is no number. */
export interface Piece {
  readonly end: 'reached' | 'event' | 'budget' | 'notFinite';
  readonly time: Seconds;
  readonly state: number[];
  readonly steps: number;
  /** s, the last full step taken, a good first step for what follows. */
  readonly lastStep: Seconds;
}

/** An event: the time at which a piece ends early, and the state there, [slot]. */
export interface Event {
  readonly time: Seconds;
  readonly state: readonly number[];
}

/** Looks at a step just taken, with the state at its far end; returns an event to stop at, or null to go on. */
export type Observe = (from: Seconds, to: Seconds, y: readonly number[]) => Event | null;

/**
 * Integrates from `from` to `to`, or to the first event. The derivative must be smooth in between.
 * @param derivative  rates [slot] of a state; may hand back the same array each time
 * @param y           state at `from`, [slot]; not changed
 */
export function integrate(
  derivative: (y: ArrayLike<number>, time: Seconds) => number[],
  from: Seconds,
  y: readonly number[],
  to: Seconds,
  settings: IntegrateSettings,
  observe: Observe,
): Piece {
  const solver = new Solver(y.length);
  solver.absoluteTolerance = settings.absoluteTolerance;
  solver.relativeTolerance = settings.relativeTolerance;
  solver.initialStepSize = settings.firstStep;
  solver.maxStepSize = settings.longestStep;
  solver.maxExtrapolationColumns = COLUMNS;
  solver.stabilityCheckCount = 0; // steps are kept stable by their length; what is not is found by its error
  solver.maxSteps = Number.MAX_SAFE_INTEGER; // the budget below guards, also against numbers that are none

  let calls = 0;
  let steps = 0;
  let reached = from;
  let state: number[] = [...y];
  let lastStep = settings.firstStep;
  let end: Piece['end'] = 'reached';
  const counted = (time: number, now: number[]): number[] => {
    calls++;
    if (calls > settings.budget) throw new OutOfBudget();
    return derivative(now, time);
  };

  try {
    const afterStep = (n: number, start: Seconds, finish: Seconds, now: number[]): boolean => {
      if (n === 1) return true; // the start itself
      if (!allFinite(now)) {
        end = 'notFinite';
        return false;
      }
      steps++;
      if (finish < to) lastStep = finish - start;
      const event = observe(start, finish, now);
      reached = event?.time ?? finish;
      state = event === null ? now : [...event.state];
      if (event !== null) end = 'event';
      return event === null;
    };
    withPortablePower(() => solver.solve(counted, from, state, to, afterStep));
  } catch (thrown) {
    if (!(thrown instanceof OutOfBudget)) throw thrown;
    end = 'budget';
  }
  return { end, time: reached, state, steps, lastStep };
}

/** Steps are as long as the fastest part allows, and there longer rows bring nothing: fewer calls and smaller errors than with 9. */
const COLUMNS = 4;

function allFinite(state: readonly number[]): boolean {
  let sum = 0;
  for (let slot = 0; slot < state.length; slot++) sum += state[slot];
  return Number.isFinite(sum);
}

/** Thrown through the solver, which cannot be stopped from inside a step otherwise. */
class OutOfBudget extends Error {}
