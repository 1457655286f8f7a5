import { dayPattern, type PatternDraw } from '../../shared/drawPattern.ts';
import type { Mark } from '../../shared/result.ts';
import type { Study, StudyPoint } from '../../shared/study.ts';
import type { CubicMetres, Seconds } from '../../shared/units.ts';
import { type Variant, withSetting } from '../../shared/variant.ts';
import { usableIn } from '../measure/usable.ts';
import { makePlant, type Plant } from '../plant/plant.ts';
import { withoutDraw } from '../solve/decided.ts';
import { type Snapshot, System } from '../solve/system.ts';
import type { MarkedState } from './logbook.ts';
import { march } from './march.ts';
import { part } from './progress.ts';
import { simulate, TOLERANCE } from './simulate.ts';
import { untilMark } from './untilMark.ts';

/** Recovery and usable litres against the height of the sensor, the present one among them. Yields the share done. */
export function* placementStudy(variant: Variant): Generator<number, Study> {
  const { height } = variant.cylinder;
  const evenly = Array.from({ length: HEIGHTS }, (_, i) => (height * (i + 0.5)) / HEIGHTS);
  const heights = withPresent(evenly, variant.stat.sensorHeight);
  const points: StudyPoint[] = [];
  for (const at of heights) {
    const moved = withSetting(variant, 'stat.sensorHeight', at);
    points.push(yield* part(studyPoint(moved, at, false), points.length / heights.length, 0));
    yield points.length / heights.length;
  }
  return { kind: 'placement', points };
}

/** The same, and calls per day, against the differential of the stat. Yields the share done. */
export function* differentialStudy(variant: Variant): Generator<number, Study> {
  const differentials = withPresent(DIFFERENTIALS, variant.stat.differential);
  const points: StudyPoint[] = [];
  for (const at of differentials) {
    const changed = withSetting(variant, 'stat.differential', at);
    points.push(
      yield* part(studyPoint(changed, at, true), points.length / differentials.length, 0),
    );
    yield points.length / differentials.length;
  }
  return { kind: 'differential', points };
}

/** The variant under hot-water priority and with both at once. Yields the share done. */
export function* arrangementStudy(variant: Variant): Generator<number, Study> {
  const priority = yield* part(
    simulate(withSetting(variant, 'heating.arrangement', 'priority')),
    0,
    0.5,
  );
  const simultaneous = yield* part(
    simulate(withSetting(variant, 'heating.arrangement', 'simultaneous')),
    0.5,
    0.5,
  );
  return { kind: 'arrangement', priority, simultaneous };
}

/**
 * One point: reheat as the variant starts, then draw at 10 l/min until the stat calls, then reheat with nothing drawn; and,
 * where asked, count the calls of a day.
 */
function* studyPoint(
  variant: Variant,
  value: number,
  countsCalls: boolean,
): Generator<number, StudyPoint> {
  const plant = makePlant(variant);
  const litres = (at: MarkedState | undefined) => (at ? usableIn(plant, at.snapshot.state) : null);
  const { start, first, called } = yield* drawnToCall(plant);
  const again = called
    ? yield* until(plant, withoutDraw(called.snapshot), 'statSatisfied', LONGEST_REHEAT, [])
    : undefined;
  return {
    value,
    callsAtStart: start.memory.calls.hotWater,
    recovery: first?.mark.at ?? null,
    usableAtSatisfied: litres(first),
    usableAtCall: litres(called),
    reheatAfterCall: again?.mark.at ?? null,
    callsPerDay: countsCalls && first ? yield* callsOnSecondDay(variant, first.snapshot) : null,
  };
}

/** Mixed water at 40 °C in the store as the stat calls, reheated first and then drawn at 10 l/min; null when it does not call. */
export function* usableWhenCalled(variant: Variant): Generator<number, CubicMetres | null> {
  const plant = makePlant(variant);
  const { called } = yield* drawnToCall(plant);
  return called ? usableIn(plant, called.snapshot.state) : null;
}

/** Reheats a plant as its variant starts, then draws at 10 l/min until its stat calls. */
function* drawnToCall(plant: Plant): Generator<
  number,
  {
    readonly start: Snapshot;
    readonly first: MarkedState | undefined;
    readonly called: MarkedState | undefined;
  }
> {
  const start = new System(plant).start();
  const { duration } = plant.variant.run;
  const first = yield* until(plant, start, 'statSatisfied', duration, []);
  const called = first
    ? yield* until(plant, first.snapshot, 'hotWaterCalled', LONGEST_DRAW, [endlessDraw])
    : undefined;
  return { start, first, called };
}

/** Runs from a snapshot until a mark; nothing when it does not come in time. */
function* until(
  plant: Plant,
  from: Snapshot,
  kind: Mark['kind'],
  duration: Seconds,
  draws: readonly PatternDraw[],
): Generator<number, MarkedState | undefined> {
  const options = { from, duration, draws, tolerance: TOLERANCE };
  const fits = (mark: Mark) => mark.kind === kind && mark.at > 0;
  return (yield* untilMark(new System(plant), options, fits)).found;
}

/** Calls for hot water on the second of two equal days from a snapshot, which starts as the first left it. */
function* callsOnSecondDay(variant: Variant, from: Snapshot): Generator<number, number> {
  const draws = [...dayPattern, ...dayPattern.map((draw) => ({ ...draw, at: draw.at + DAY }))];
  const system = new System(makePlant(cylinderAlone(variant)));
  const { marks } = yield* march(system, { from, duration: 2 * DAY, draws, tolerance: TOLERANCE });
  return marks.filter(({ mark }) => mark.kind === 'hotWaterCalled' && mark.at >= DAY).length;
}

/** Under priority the cylinder calls as often as if there were no heating, and that runs faster over days. */
function cylinderAlone(variant: Variant): Variant {
  return variant.heating.arrangement === 'priority'
    ? withSetting(variant, 'heating.arrangement', 'hotWaterOnly')
    : variant;
}

/** Values in order, the present one among them. */
function withPresent(values: readonly number[], present: number): number[] {
  return [...new Set([...values, present])].sort((a, b) => a - b);
}

const HEIGHTS = 16;
const DIFFERENTIALS = [1, 2, 3, 4, 6, 8, 10, 12, 15, 20]; // K
const DAY = 86_400; // s
const LONGEST_DRAW = 3 * 3600; // s, at 10 l/min more than any store holds
const LONGEST_REHEAT = 6 * 3600; // s
const endlessDraw: PatternDraw = {
  at: 0,
  volume: LONGEST_DRAW * (0.01 / 60),
  flow: 0.01 / 60, // m³/s, 10 l/min as EN 16147 draws, from memory
  name: 'until called',
};
