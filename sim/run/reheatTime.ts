import type { PatternDraw } from '../../shared/drawPattern.ts';
import type { Seconds } from '../../shared/units.ts';
import { ownDraws } from '../demand/schedule.ts';
import type { Plant } from '../plant/plant.ts';
import type { Snapshot } from '../solve/system.ts';
import { System } from '../solve/system.ts';
import type { Marched } from './march.ts';
import { TOLERANCE } from './simulate.ts';
import { untilMark } from './untilMark.ts';

/** How long a reheat takes, and what it left behind. */
export interface Reheat {
  /** From the start of the run until the stat is first satisfied, s; null where it is not in the time that is waited. */
  readonly time: Seconds | null;
  /** Null where nothing had to be run. */
  readonly marched: Marched | null;
}

/**
 * The time until the stat is first satisfied, as a run of the variant finds it, to the last bit where it is within the run's
 * own duration. Then it is waited on, without further draws than the variant's own.
 * @param horizon  how long is waited; at least the duration of the run
 */
export function* reheatTime(plant: Plant, horizon: Seconds): Generator<number, Reheat> {
  const { duration } = plant.variant.run;
  const draws = ownDraws(plant.variant);
  const first = yield* untilSatisfied(plant, null, duration, draws, 0);
  if (first.time !== null || first.marched === null || horizon <= duration) return first;
  const left = first.marched.waiting.map((draw) => ({ ...draw, at: draw.at - duration }));
  const { time, marched } = yield* untilSatisfied(
    plant,
    first.marched.end,
    horizon - duration,
    left,
    0,
  );
  return { time: time === null ? null : duration + time, marched };
}

/**
 * The same with a sensor that has the mean of the store. A store that is hot as the run starts takes no time; what is drawn
 * from it later does, from the start of the run.
 */
export function* meanReheatTime(plant: Plant, horizon: Seconds): Generator<number, Reheat> {
  const draws = ownDraws(plant.variant);
  const start = new System(plant).start();
  const isHot = !start.memory.calls.hotWater;
  if (isHot && draws.length === 0) return { time: 0, marched: null };
  const from = isHot ? draws[0].at : 0;
  const found = yield* untilSatisfied(plant, null, horizon, draws, from);
  return isHot && found.time === null ? { ...found, time: 0 } : found;
}

/** Marches until the stat is satisfied. @param from  null: the start of a run @param notBefore  s, when that counts */
function* untilSatisfied(
  plant: Plant,
  from: Snapshot | null,
  duration: Seconds,
  draws: readonly PatternDraw[],
  notBefore: Seconds,
): Generator<number, Reheat> {
  const system = new System(plant);
  const { found, marched } = yield* untilMark(
    system,
    { from: from ?? system.start(), duration, draws, tolerance: TOLERANCE },
    ({ kind, at }) => kind === 'statSatisfied' && at >= notBefore,
  );
  return { time: found?.mark.at ?? null, marched };
}
