import { arrangementOf } from '../arrangements.ts';
import { celsius, duration } from '../format.ts';
import { timeOf } from '../phaseTime.ts';
import { isAllowed } from '../programme.ts';
import type { Result } from '../result.ts';
import { layerAt, profileAt, valueAt } from '../sampleAt.ts';
import type { Seconds } from '../units.ts';
import {
  firstMark,
  isServed,
  reheatPhases,
  servesCoil,
  type Stretch,
  valveMoves,
  worthSaying,
} from './phases.ts';
import { measured, type Sentence, say } from './sentence.ts';

/** What else kept the boiler from the cylinder, or helped it, one sentence each; a time under a minute is not worth one. */
export function hindrancesOf(result: Result): readonly Sentence[] {
  return [
    programmePause(result),
    turns(result),
    roomsFirst(result),
    valve(result),
    sharedTarget(result),
    immersion(result),
    misreading(result),
    behind(result),
    laterFault(result),
  ].filter((each): each is Sentence => each !== null);
}

/** The programme stopped hot water before the stat was satisfied, or let it wait. */
function programmePause(result: Result): Sentence | null {
  const shut = timeShut(result);
  if (shut < worthSaying || !isServed(result)) return null;
  return say`The hot-water programme keeps the boiler from the cylinder for ${duration(shut)} of them.`;
}

/** Time of the reheat in which the programme allowed no hot water and the boiler gave none, s. */
export function timeShut(result: Result): Seconds {
  const { programme } = result.variant;
  const clockAt = ({ from, to }: Stretch) => programme.startsAt + (from + to) / 2;
  return timeOf(
    reheatPhases(result),
    (phase) => !servesCoil(phase) && !isAllowed(programme, 'hotWater', clockAt(phase)),
  );
}

/** The rooms had the boiler to themselves while the cylinder called. */
function turns(result: Result): Sentence | null {
  const { variant, marks, measures, outcome } = result;
  if (arrangementOf(variant.heating.arrangement).turn === undefined) return null;
  const until = measures.recovery ?? outcome.at;
  const taken = marks.filter(({ kind, at }) => kind === 'turnTaken' && at < until);
  if (taken.length === 0) return null;
  const theirs = timeOf(
    reheatPhases(result).filter(({ from }) => from >= taken[0].at),
    ({ coilRuns, radiatorsRun }) => radiatorsRun && !coilRuns,
  );
  if (theirs < worthSaying) return null;
  return say`The rooms take their turn: for ${duration(theirs)} of them the radiators have the boiler.`;
}

/** The rooms had the boiler while the cylinder called, by the arrangement. */
function roomsFirst(result: Result): Sentence | null {
  const { arrangement } = result.variant.heating;
  if (arrangementOf(arrangement).both.coilRuns) return null;
  const theirs = timeOf(
    reheatPhases(result),
    ({ coilRuns, radiatorsRun }) => radiatorsRun && !coilRuns,
  );
  if (theirs < worthSaying) return null;
  return say`The rooms go first: for ${duration(theirs)} of them the radiators have the boiler and the cylinder waits.`;
}

function valve(result: Result): Sentence | null {
  const moves = valveMoves(result);
  const waited = reheatPhases(result)
    .filter((phase) => !servesCoil(phase))
    .flatMap((phase) => moves.map((move) => overlap(phase, move)))
    .reduce((sum, each) => sum + each, 0);
  if (waited < worthSaying) return null;
  return say`For ${duration(waited)} of them a valve is on its way.`;
}

const overlap = (one: Stretch, other: Stretch): Seconds =>
  Math.max(0, Math.min(one.to, other.to) - Math.max(one.from, other.from));

function sharedTarget(result: Result): Sentence | null {
  const { boiler } = result.variant;
  if (boiler.targets === 'separate' || !isServed(result)) return null;
  return say`There is one flow target: the cylinder is heated at heating’s.`;
}

function immersion(result: Result): Sentence | null {
  const { measures, variant } = result;
  if (variant.immersion.used !== 'withBoiler' || measures.electricity <= 0) return null;
  return say`The immersion heater adds ${measured(measures, 'electricity')} over the whole run.`;
}

/** A controller that does not read what the sensor has. */
function misreading(result: Result): Sentence | null {
  const apart = apartAt(result);
  if (apart === null) return null;
  const when = result.measures.recovery === null ? 'At the end' : 'When the stat is satisfied';
  return say`${when} the controller reads ${celsius(apart.reading)} while the sensor is at ${celsius(apart.bead)}.`;
}

/** Reading and sensor when the stat was satisfied, or at the end, where they differ; else null. */
export function apartAt({ trace, measures, outcome }: Result): {
  readonly reading: number;
  readonly bead: number;
} | null {
  const at = measures.recovery ?? outcome.at;
  const reading = valueAt(trace.time, trace.of.sensor, at);
  const bead = valueAt(trace.time, trace.of.bead, at);
  return Math.abs(reading - bead) >= worthReading ? { reading, bead } : null;
}

/** A sensor that is far from the water beside it: badly fixed, or slow. */
function behind({ trace, variant, measures, outcome }: Result): Sentence | null {
  const at = measures.recovery ?? outcome.at;
  const { stat, cylinder } = variant;
  const water = layerAt(profileAt(trace, at), stat.sensorHeight / cylinder.height);
  const bead = valueAt(trace.time, trace.of.bead, at);
  if (Math.abs(water - bead) < farBehind) return null;
  const when = measures.recovery === null ? 'At the end' : 'When the stat is satisfied';
  return say`${when} the water beside the sensor is at ${celsius(water)}, the sensor itself at ${celsius(bead)}.`;
}

/** A fault after the stat was satisfied. */
function laterFault(result: Result): Sentence | null {
  const at = firstMark(result, 'faultShown');
  if (at === null || result.measures.recovery === null) return null;
  return say`After ${duration(at)} the controller shows a sensor fault and refuses hot water.`;
}

const worthReading = 0.5; // K
const farBehind = 3; // K, more than a usual lag leaves
