import { type Asked, type AskedOf, type AskedRow, askedRow } from '../../shared/asked.ts';
import type { DayRun } from '../../shared/day.ts';
import { entryOf, type Gap, type Point } from '../../shared/point.ts';
import { problemsOf } from '../../shared/problems.ts';
import type { Measures, Outcome } from '../../shared/result.ts';
import type { CubicMetres, Seconds } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { ownDraws } from '../demand/schedule.ts';
import { measuresOf } from '../measure/measures.ts';
import { makePlant } from '../plant/plant.ts';
import { System } from '../solve/system.ts';
import { dayRun } from './day.ts';
import { march } from './march.ts';
import { part } from './progress.ts';
import { Recorder } from './recorder.ts';
import { reheatTime } from './reheatTime.ts';
import { sampleSteps, TOLERANCE } from './simulate.ts';
import { usableWhenCalled } from './studies.ts';

/**
 * The values of some measures for one variant, which may have problems. Runs no more than they need: recovery by itself ends
 * when the stat is satisfied. Each value is, to the last bit, the one that the run or the day of the variant has. Yields the
 * share done.
 */
export function* pointOf(variant: Variant, asked: readonly Asked[]): Generator<number, Point> {
  const problems = problemsOf(variant);
  if (problems.length > 0) {
    const sentences = problems.map(({ message }) => message);
    return without(asked, { kind: 'notPossible', outcome: null, sentences });
  }
  const rows = asked.map(askedRow);
  const kinds = [...new Set(rows.map(({ of }) => of))];
  const found: Partial<Record<AskedOf, Found>> = {};
  for (const [index, kind] of kinds.entries()) {
    const measures = rows.filter(({ of }) => of === kind);
    found[kind] = yield* part(
      runs[kind](variant, measures),
      index / kinds.length,
      1 / kinds.length,
    );
  }
  const entries = rows.map((row) => {
    const { outcome, value } = found[row.of] as Found;
    return entryOf(row, outcome, value(row));
  });
  return { values: entries.map(({ value }) => value), gaps: entries.map(({ gap }) => gap) };
}

/** What was run, and the values in it. */
interface Found {
  readonly outcome: Outcome;
  readonly value: (row: AskedRow) => number | null;
}

const runs: Readonly<
  Record<AskedOf, (variant: Variant, rows: readonly AskedRow[]) => Generator<number, Found>>
> = {
  *run(variant, rows) {
    if (rows.every(({ key }) => key === 'recovery')) return yield* recoveryAlone(variant);
    const { outcome, measures } = yield* measured(variant);
    return { outcome, value: ({ measure }) => measures[measure as keyof Measures] };
  },
  *day(variant) {
    const day = yield* dayRun(variant);
    return { outcome: day.outcome, value: (row) => ofDay(day, row) };
  },
  *draw(variant) {
    const usable: CubicMetres | null = yield* part(usableWhenCalled(variant), 0, 0);
    return { outcome: { kind: 'finished', at: 0 }, value: () => usable };
  },
};

function* recoveryAlone(variant: Variant): Generator<number, Found> {
  const { time, marched } = yield* reheatTime(makePlant(variant), variant.run.duration);
  const at: Seconds = time ?? variant.run.duration;
  return { outcome: marched?.outcome ?? { kind: 'finished', at }, value: () => time };
}

/** The measures of a run as `simulate` finds them, without what sets its pace. */
function* measured(
  variant: Variant,
): Generator<number, { readonly outcome: Outcome; readonly measures: Measures }> {
  const plant = makePlant(variant);
  const system = new System(plant);
  const recorder = new Recorder(system);
  const { duration } = variant.run;
  const marched = yield* march(system, {
    from: system.start(),
    duration,
    draws: ownDraws(variant),
    tolerance: TOLERANCE,
    recorder,
    sampleStep: sampleSteps(duration),
  });
  const { outcome } = marched;
  return { outcome, measures: measuresOf(plant, system.slots, marched, recorder.trace()) };
}

function ofDay({ measures, shownDays }: DayRun, { measure, perDay }: AskedRow): number | null {
  const value = measures[measure as keyof typeof measures];
  return value !== null && perDay ? value / shownDays : value;
}

function without(asked: readonly Asked[], gap: Gap): Point {
  return { values: asked.map(() => null), gaps: asked.map(() => gap) };
}
