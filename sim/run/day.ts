import type { DayRun } from '../../shared/day.ts';
import type { PatternDraw } from '../../shared/drawPattern.ts';
import type { Mark } from '../../shared/result.ts';
import type { Study } from '../../shared/study.ts';
import type { Kelvins, Seconds } from '../../shared/units.ts';
import { type Variant, withSetting } from '../../shared/variant.ts';
import { dayDraws } from '../demand/dayDraws.ts';
import { balanceOf } from '../measure/balance.ts';
import { atTheTap, dayMeasures } from '../measure/day.ts';
import { hygieneOf } from '../measure/hygiene.ts';
import { makePlant } from '../plant/plant.ts';
import { tapPipeContent } from '../plant/tapPipe.ts';
import { startMemory } from '../solve/startMemory.ts';
import { type Snapshot, System } from '../solve/system.ts';
import { type Marched, march } from './march.ts';
import { part } from './progress.ts';
import { Recorder } from './recorder.ts';
import { TOLERANCE } from './simulate.ts';
import { TapBook } from './tapBook.ts';

/** A span of days and what was written down of it. */
interface Span {
  readonly marched: Marched;
  readonly recorder: Recorder;
  readonly book: TapBook;
}

/**
 * A day of hot water in use, from midnight, over and over: until it ends as it began, or as often as is stated. Before the
 * first the store is reheated once, so that it does not begin cold. Yields the share done.
 */
export function* dayRun(variant: Variant): Generator<number, DayRun> {
  const { day } = variant;
  const atMidnight = withSetting(variant, 'programme.startsAt', 0);
  const plant = makePlant(atMidnight);
  const system = new System(plant);
  const draws = dayDraws(variant, plant.cylinder.waterHeat, tapPipeContent(variant.draw));
  const isStated = day.repeat === 'stated';
  const shown = isStated ? day.days : 1;
  const heated = (from: Snapshot) =>
    day.pasteurise === 'once' ? heatedThrough(system, from, day.pasteuriseFrom) : from;

  const reheated = yield* part(reheat(system, variant.run.duration), 0, FIRST);
  const midnight = midnightAfter(system, reheated);
  if (isStated) {
    const from = heated(midnight);
    const span = yield* part(days(system, from, draws, [], shown), FIRST, 1 - FIRST);
    return found(variant, system, from, span, shown, shown);
  }
  let from = midnight;
  let left: readonly PatternDraw[] = [];
  for (let done = FIRST, simulated = 1; ; simulated++) {
    const span = yield* part(days(system, from, draws, left, 1), done, (1 - done) / 2);
    done += (1 - done) / 2;
    const { marched } = span;
    const repeats = differenceOf(system, from.state, marched.end.state) < STEADY;
    const isLast = repeats || simulated === MOST_DAYS || marched.outcome.kind !== 'finished';
    if (isLast && day.pasteurise === 'no') {
      return found(variant, system, from, span, simulated, shown);
    }
    left = marched.waiting.map((draw) => ({ ...draw, at: draw.at - DAY }));
    from = isLast ? heated(marched.end) : marched.end;
    if (isLast) {
      const last = yield* part(days(system, from, draws, left, 1), done, 1 - done);
      return found(variant, system, from, last, simulated + 1, shown);
    }
  }
}

/** The day as a study beside the bench. Yields the share done. */
export function* dayStudy(variant: Variant): Generator<number, Study> {
  return { kind: 'day', day: yield* dayRun(variant) };
}

/** Marches through days and writes everything down. */
function* days(
  system: System,
  from: Snapshot,
  draws: readonly PatternDraw[],
  left: readonly PatternDraw[],
  count: number,
): Generator<number, Span> {
  const recorder = new Recorder(system);
  const book = new TapBook(system);
  const all = Array.from({ length: count }, (_, day) =>
    draws.map((draw) => ({ ...draw, at: draw.at + day * DAY })),
  ).flat();
  const evenly = Math.max(SHORTEST_SAMPLE, (count * DAY) / SAMPLES);
  const marched = yield* march(system, {
    from,
    duration: count * DAY,
    draws: [...left, ...all],
    tolerance: TOLERANCE,
    recorder,
    taps: book,
    sampleStep: () => (system.control.tap.draw === null ? evenly : WHILE_DRAWN),
  });
  return { marched, recorder, book };
}

function found(
  variant: Variant,
  system: System,
  from: Snapshot,
  { marched, recorder, book }: Span,
  simulatedDays: number,
  shownDays: number,
): DayRun {
  const { plant, slots } = system;
  const trace = recorder.trace();
  const draws = book.reports.map((report) => atTheTap(report, trace));
  const marks = marched.marks.map(({ mark }) => mark);
  const difference = differenceOf(system, from.state, marched.end.state);
  return {
    variant,
    outcome: marched.outcome,
    simulatedDays,
    shownDays,
    difference,
    isSteady: shownDays === 1 && difference < STEADY,
    trace,
    marks,
    phases: marched.phases,
    draws,
    measures: dayMeasures(plant, slots, {
      start: marched.start,
      end: marched.end.state,
      trace,
      draws,
      // one that is still on at midnight was made the day before
      hotWaterCalls: countOf(
        marks.filter(({ at }) => at > 0),
        'hotWaterCalled',
      ),
      burnerStarts: plant.built === null ? null : countOf(marks, 'burnerLit'),
    }),
    hygiene: hygieneOf(trace, plant.cylinder.layerVolume, draws),
    balance: balanceOf(plant, slots, marched.start, marched.end.state),
    cost: marched.cost,
  };
}

/** Runs from the start of the variant until its stat is first satisfied, or as long as the run is. */
function* reheat(system: System, duration: Seconds): Generator<number, Snapshot> {
  const { end } = yield* march(system, {
    from: system.start(),
    duration,
    draws: [],
    tolerance: TOLERANCE,
    until: ({ kind }) => kind === 'statSatisfied',
  });
  return end;
}

/** A start at midnight with the store and its sensor as another moment left them. */
function midnightAfter(system: System, { state: warm }: Snapshot): Snapshot {
  const { state } = system.start();
  const { layers, bead } = system.slots;
  const kept = state.map((value, slot) => (slot < layers || slot === bead ? warm[slot] : value));
  return { state: kept, memory: startMemory(system.plant, system.chain, kept, system.slots) };
}

/** The set-point goes up at a time of this day. */
function heatedThrough(system: System, { state, memory }: Snapshot, at: Seconds): Snapshot {
  const heatThrough = state[system.slots.clock] + at;
  return { state, memory: { ...memory, timers: { ...memory.timers, heatThrough } } };
}

function countOf(marks: readonly Mark[], wanted: Mark['kind']): number {
  return marks.filter(({ kind }) => kind === wanted).length;
}

/** Largest difference between two states of the store. */
function differenceOf(
  { slots }: System,
  one: readonly number[],
  other: readonly number[],
): Kelvins {
  let most = 0;
  for (let layer = 0; layer < slots.layers; layer++) {
    most = Math.max(most, Math.abs(one[layer] - other[layer]));
  }
  return most;
}

const DAY = 86_400; // s
const STEADY = 0.05; // K
const MOST_DAYS = 7; // heating that comes and goes may keep two days from ever being equal
const FIRST = 0.05; // of the work, about
const SAMPLES = 288;
const SHORTEST_SAMPLE = 300; // s
const WHILE_DRAWN = 15; // s
