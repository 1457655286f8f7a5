import { delayKeys } from '../../shared/delays.ts';
import type { DelayKey, MinutesByCause } from '../../shared/minutes.ts';
import type { SoFar, Study } from '../../shared/study.ts';
import type { Seconds } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { countOf, shapley } from '../measure/shapley.ts';
import { part } from './progress.ts';
import { meanReheatTime, type Reheat, reheatTime } from './reheatTime.ts';
import { plantWithout, type Removable, removable } from './withoutCauses.ts';

/**
 * The whole time of a reheat, less what the boiler at full output would need, shared out over the causes: every set of
 * them is taken away once, and each has its mean over all orders in which they could be (`sim/measure/shapley.ts`). Yields the
 * share done, and estimates that already add up. The variant must have no problems (`shared/problems.ts`).
 */
export function* minutesByCause(variant: Variant): Generator<number | SoFar, MinutesByCause> {
  const horizon = Math.max(variant.run.duration, LONGEST_WAIT);
  const nothing = { ...NOTHING, horizon };
  if (variant.immersion.used === 'insteadOfBoiler') return { ...nothing, absent: delayKeys };
  const from = removable(variant);
  const { present, absent, scaleWithCoil } = from;
  const whole = (yield* part(timeWithout(from, [], horizon), 0, 0)).time;
  const ideal = (yield* part(timeWithout(from, present, horizon), 0, 0)).time;
  const base = { ...nothing, whole, ideal, absent, scaleWithCoil, runs: 2, of: 2 };
  if (ideal === null) return base;
  if (whole === null) return yield* whatWouldHelp(base, from);
  return yield* sharedOut({ ...base, whole, ideal }, from);
}

/** As a study. */
export function* minutesStudy(variant: Variant): Generator<number | SoFar, Study> {
  return { kind: 'minutes', ...(yield* minutesByCause(variant)) };
}

/** How long it takes without some causes; with none taken away, to the last bit what a run of the variant finds. */
export function timeWithout(
  from: Removable,
  removed: readonly DelayKey[],
  horizon: Seconds,
): Generator<number, Reheat> {
  const plant = plantWithout(from, removed);
  return removed.includes('sensor') ? meanReheatTime(plant, horizon) : reheatTime(plant, horizon);
}

/** Takes away every set of causes. */
function* sharedOut(
  base: MinutesByCause & { whole: Seconds; ideal: Seconds },
  from: Removable,
): Generator<number | SoFar, MinutesByCause> {
  const { present } = from;
  const { whole, ideal } = base;
  const all = 2 ** present.length - 1;
  const longest = LONGEST_COUNTED * Math.max(whole, ideal);
  const time = new Float64Array(all + 1).fill(Number.NaN); // [set]
  time[0] = whole;
  time[all] = ideal;
  const sets = Array.from({ length: all + 1 }, (_, set) => set);
  const of = sets.length;
  let { runs } = base;
  let counted: Seconds | null = null;
  const found = (): MinutesByCause => {
    const shares = shapley(present.length, time).map((share, player) => ({
      key: present[player],
      time: share === 0 ? 0 : -share,
    }));
    return { ...base, shares, counted, runs, of };
  };

  // from both ends, so that the first estimate has each cause taken away first and last
  for (let size = 1; 2 * size <= present.length; size++) {
    for (const set of sets) {
      const count = countOf(set);
      if (count !== size && count !== present.length - size) continue;
      const run = timeWithout(from, causesIn(present, set), longest);
      const one = (yield* part(run, runs / of, 0)).time;
      if (one === null || one > longest) counted = longest;
      time[set] = Math.min(one ?? longest, longest);
      runs++;
      yield runs / of;
    }
    if (runs < of) yield { done: runs / of, study: { kind: 'minutes', ...found() } };
  }
  return found();
}

/** The smallest sets of causes without which the stat is satisfied. */
function* whatWouldHelp(
  base: MinutesByCause,
  from: Removable,
): Generator<number | SoFar, MinutesByCause> {
  const { present } = from;
  const sets = Array.from({ length: 2 ** present.length }, (_, set) => set);
  let { runs } = base;
  for (let size = 1; size < present.length; size++) {
    const ofSize = sets.filter((set) => countOf(set) === size);
    const wouldHelp: (readonly DelayKey[])[] = [];
    for (const [done, set] of ofSize.entries()) {
      const removed = causesIn(present, set);
      const { time } = yield* part(
        timeWithout(from, removed, base.horizon),
        done / ofSize.length,
        0,
      );
      runs++;
      if (time !== null) wouldHelp.push(removed);
      yield done / ofSize.length;
    }
    if (wouldHelp.length > 0) return { ...base, wouldHelp, runs, of: runs };
  }
  return { ...base, wouldHelp: [present], runs, of: runs };
}

/** The causes in a set. */
function causesIn(present: readonly DelayKey[], set: number): readonly DelayKey[] {
  return present.filter((_, player) => (set & (2 ** player)) !== 0);
}

const NOTHING: MinutesByCause = {
  whole: null,
  ideal: null,
  shares: [],
  absent: [],
  scaleWithCoil: false,
  wouldHelp: [],
  horizon: 0,
  counted: null,
  runs: 0,
  of: 0,
};
const LONGEST_WAIT = 6 * 3600; // s, or the run where that is longer; hot water that takes longer is none
const LONGEST_COUNTED = 2; // times the whole: a set of causes that hardly ever gets there would drown the others
