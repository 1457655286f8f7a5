import type { PatternDraw } from '../../shared/drawPattern.ts';
import type { Result } from '../../shared/result.ts';
import type { Kelvins, Seconds } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { ownDraws } from '../demand/schedule.ts';
import { balanceOf } from '../measure/balance.ts';
import { measuresOf } from '../measure/measures.ts';
import { makePlant } from '../plant/plant.ts';
import { System } from '../solve/system.ts';
import { march } from './march.ts';
import { Recorder } from './recorder.ts';
import { toEnd } from './toEnd.ts';

export interface SimulateOptions {
  /** Draws in place of the variant's own. */
  readonly draws?: readonly PatternDraw[];
  /** Absolute tolerance of temperatures. */
  readonly tolerance?: Kelvins;
  /** Between samples. */
  readonly sampleEvery?: Seconds;
  /** Takes the system through time in place of `march`. */
  readonly through?: typeof march;
}

/**
 * Runs one variant. Yields the share done, so that the caller can show progress; a caller that stops asking has stopped
 * the run. The variant must have no problems (`shared/problems.ts`).
 */
export function* simulate(
  variant: Variant,
  options: SimulateOptions = {},
): Generator<number, Result> {
  const plant = makePlant(variant);
  const system = new System(plant);
  const recorder = new Recorder(system, true);
  const { duration } = variant.run;
  const marched = yield* (options.through ?? march)(system, {
    from: system.start(),
    duration,
    draws: options.draws ?? ownDraws(variant),
    tolerance: options.tolerance ?? TOLERANCE,
    recorder,
    sampleStep:
      options.sampleEvery === undefined
        ? sampleSteps(duration)
        : () => options.sampleEvery as Seconds,
  });
  const trace = recorder.trace();
  return {
    variant,
    outcome: marched.outcome,
    trace,
    marks: marched.marks.map(({ mark }) => mark),
    phases: marched.phases,
    pace: recorder.pace(),
    measures: measuresOf(plant, system.slots, marched, trace),
    balance: balanceOf(plant, system.slots, marched.start, marched.end.state),
    cost: marched.cost,
  };
}

/** Runs one variant to its end. */
export function simulateToEnd(variant: Variant, options: SimulateOptions = {}): Result {
  return toEnd(simulate(variant, options));
}

/** From one sample of a run to the next, at a time. @param duration  of the run */
export function sampleSteps(duration: Seconds): (time: Seconds) => Seconds {
  const evenly = Math.max(duration / SAMPLES, SHORTEST_SAMPLE);
  const closely = Math.min(evenly, CLOSE_SAMPLE);
  return (time) => (time < CLOSELY_UNTIL ? closely : evenly);
}

/** Absolute tolerance of temperatures, K; the convergence study (npm run convergence) shows what it costs. */
export const TOLERANCE = 3e-4;
const SAMPLES = 120;
const SHORTEST_SAMPLE = 15; // s
// However long the run, its first reheat is drawn as closely as that of a run of 2 h
const CLOSELY_UNTIL = 10_800; // s
const CLOSE_SAMPLE = 60; // s
