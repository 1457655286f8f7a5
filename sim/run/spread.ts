import type { Spread, UnknownKey } from '../../shared/spread.ts';
import type { SoFar, Study } from '../../shared/study.ts';
import type { Seconds } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { ownDraws } from '../demand/schedule.ts';
import { EvenPoints } from '../measure/evenPoints.ts';
import { firstOrder } from '../measure/firstOrder.ts';
import { percentile } from '../measure/percentile.ts';
import { System } from '../solve/system.ts';
import { part } from './progress.ts';
import { ReadingTrack } from './readingTrack.ts';
import { PossiblePlants } from './unknowns.ts';
import { untilMark } from './untilMark.ts';

/** What the unknowns leave open of the recovery time. Yields what is known after 32, 64 and 128 of 256 runs. */
export function* spreadStudy(variant: Variant): Generator<number | SoFar, Study> {
  return { kind: 'spread', ...(yield* spreadOf(variant, SPREAD_RUNS)) };
}

/** The same by so many runs, a power of two; one run where nothing is unknown. */
export function* spreadOf(variant: Variant, count: number): Generator<number | SoFar, Spread> {
  const plants = new PossiblePlants(variant);
  const { keys } = plants;
  const of = keys.length === 0 ? 1 : count;
  const points = new EvenPoints(of, keys.length);
  const runs: Run[] = [];
  for (let index = 0; index < of; index++) {
    const at = (key: UnknownKey) => {
      const edge = keys.indexOf(key);
      return edge < 0 ? KNOWN : points.at(index, edge);
    };
    const run = reheat(plants, variant, at);
    runs.push(yield* part(run, index / of, 0));
    const done = runs.length / of;
    if (REPORTS.includes(runs.length) && done < 1) {
      yield { done, study: { kind: 'spread', ...summary(variant, keys, runs, points) } };
    } else yield done;
  }
  return summary(variant, keys, runs, points);
}

interface Run {
  /** s; infinite for one that does not get there. */
  readonly recovery: Seconds;
  /** [sample] °C */
  readonly readings: Float64Array;
}

/** One reheat, until its stat is satisfied. */
function* reheat(
  plants: PossiblePlants,
  variant: Variant,
  at: (key: UnknownKey) => number,
): Generator<number, Run> {
  const plant = plants.plant(at);
  const system = new System(plant);
  const { duration } = variant.run;
  const step = duration / SAMPLES;
  const track = new ReadingTrack(system, step, SAMPLES + 1);
  const { found } = yield* untilMark(
    system,
    {
      from: system.start(),
      duration,
      draws: ownDraws(plant.variant),
      tolerance: TOLERANCE,
      recorder: track,
      sampleStep: () => step,
    },
    ({ kind }) => kind === 'statSatisfied',
  );
  return {
    recovery: found?.mark.at ?? Number.POSITIVE_INFINITY,
    readings: track.readings(),
  };
}

function summary(
  variant: Variant,
  keys: readonly UnknownKey[],
  runs: readonly Run[],
  points: EvenPoints,
): Spread {
  const { duration } = variant.run;
  const sorted = Float64Array.from(runs, ({ recovery }) => recovery).sort();
  const reached = sorted.indexOf(Number.POSITIVE_INFINITY);
  const recoveries = reached < 0 ? sorted : sorted.slice(0, reached);
  const [low, median, high] = SHARES.map((share) => {
    const recovery = percentile(sorted, share);
    return Number.isFinite(recovery) ? recovery : null;
  });
  const counted = Float64Array.from(runs, ({ recovery }) => Math.min(recovery, duration));
  const inputs = keys.map((_, edge) =>
    Float64Array.from(runs, (_run, index) => points.at(index, edge)),
  );
  const scatters = counted.some((recovery) => recovery !== counted[0]);
  const shares = firstOrder(inputs, counted);
  return {
    variant,
    low,
    median,
    high,
    recoveries,
    firstOrder: scatters
      ? keys
          .map((key, edge) => ({ key, share: shares[edge] }))
          .sort((one, other) => other.share - one.share)
      : [],
    ...bands(runs, duration, high),
    runs: runs.length,
    reached: recoveries.length,
    of: points.count,
  };
}

/** The readings between which so many runs lie at each moment, until nearly all have got there. */
function bands(
  runs: readonly Run[],
  duration: Seconds,
  high: Seconds | null,
): Pick<Spread, 'time' | 'lowReading' | 'medianReading' | 'highReading'> {
  const step = duration / SAMPLES;
  const samples = Math.min(SAMPLES, Math.ceil((high ?? duration) / step)) + 1;
  const [lowReading, medianReading, highReading] = SHARES.map(() => new Float64Array(samples));
  const now = new Float64Array(runs.length);
  for (let sample = 0; sample < samples; sample++) {
    runs.forEach(({ readings }, run) => {
      now[run] = readings[sample];
    });
    now.sort(); // what is no number comes last, and makes the band none
    const isRead = !Number.isNaN(now[now.length - 1]);
    [lowReading, medianReading, highReading].forEach((band, which) => {
      band[sample] = isRead ? percentile(now, SHARES[which]) : Number.NaN;
    });
  }
  const time = Float64Array.from({ length: samples }, (_, sample) => sample * step);
  return { time, lowReading, medianReading, highReading };
}

/** Enough that the percentiles are within 1.2 % of those of 4096 runs in five examples (tests/bench/spread.bench.ts). */
export const SPREAD_RUNS = 256;
const REPORTS: readonly number[] = [32, 64, 128];
const SHARES = [0.1, 0.5, 0.9] as const;
const KNOWN = 0.5;
const SAMPLES = 120; // of the whole run: of 2 h one a minute
/** K. Ten times that of a run: it moves the recovery time by 0.01 % at most in any of the examples. */
const TOLERANCE = 1e-3;
