import type { PatternDraw } from '../../shared/drawPattern.ts';
import type { Cost, Mark, Outcome, Phase } from '../../shared/result.ts';
import type { Kelvins, Seconds } from '../../shared/units.ts';
import { Waiting } from '../demand/schedule.ts';
import type { Observe } from '../solve/integrate.ts';
import { Pooled } from '../solve/pooled.ts';
import { type Slots, tolerancesOf } from '../solve/slots.ts';
import { standingSlots } from '../solve/standing.ts';
import type { Happened, Snapshot, Switch, System } from '../solve/system.ts';
import { longestStep } from '../solve/stepLimit.ts';
import { type Thrown, Watch } from '../solve/watch.ts';
import { Logbook, type MarkedState } from './logbook.ts';
import type { Recorder } from './recorder.ts';
import type { TapBook } from './tapBook.ts';

export interface MarchOptions {
  readonly from: Snapshot;
  readonly duration: Seconds;
  readonly draws: readonly PatternDraw[];
  /** Of temperatures in one step while nothing is drawn. */
  readonly tolerance: Kelvins;
  /** Ends the run at a mark. */
  readonly until?: (mark: Mark) => boolean;
  readonly recorder?: Pick<Recorder, 'sample'> & Partial<Pick<Recorder, 'follow'>>;
  readonly taps?: TapBook;
  /** A run that was cut and goes on; one that begins when left out. */
  readonly since?: Since;
  /** Ends the run early, inside the step that holds this time, as an event does: nothing before it is any different. */
  readonly cutAt?: Seconds;
  /** From one sample to the next, s, at a time; none between the ends when left out. */
  readonly sampleStep?: (time: Seconds) => Seconds;
}

/** Where a run goes on. */
export interface Since {
  /** Of the run. */
  readonly time: Seconds;
  readonly origin: Seconds;
  readonly done: Seconds;
  /** What happens there. */
  readonly mark: Mark['kind'];
}

/** What a march through time leaves behind. */
export interface Marched {
  /** `stopped` when it was cut. */
  readonly outcome: Outcome;
  readonly marks: readonly MarkedState[];
  readonly phases: readonly Phase[];
  readonly start: readonly number[];
  readonly end: Snapshot;
  readonly burnerStarts: number | null;
  /** Draws that were not begun. */
  readonly waiting: readonly PatternDraw[];
  /** The clock as the run began, and the last of what it decided, s after the midnight before the run. */
  readonly origin: Seconds;
  readonly done: Seconds;
  readonly cost: Cost;
}

/**
 * Takes a system through time, from event to event. Yields the share done after each piece, so that the caller can show
 * progress and stop by not asking again; what the generator returns is what the run left behind.
 */
export function* march(system: System, options: MarchOptions): Generator<number, Marched> {
  const { derivative } = system;
  const { duration, recorder, taps, until, since, cutAt = Number.POSITIVE_INFINITY } = options;
  const sampleStep = options.sampleStep ?? (() => duration);
  const longest = Math.max(LONGEST_STEP, duration / 24);
  const shut = accuracy(system.slots, options.tolerance);
  const open = accuracy(system.slots, options.tolerance * WHILE_DRAWN);
  const waiting = new Waiting(options.draws);
  const callsBefore = derivative.calls;
  const watch = new Watch(system);
  const pooled = new Pooled(system.slots.layers, system.slots.count);

  let y = [...options.from.state];
  let time = since?.time ?? 0;
  let nextSample = time + sampleStep(time);
  let firstStep = FIRST_STEP;
  let steps = 0;
  let restarts = 0;
  let standing = 0; // restarts in a row that got nowhere
  let thrown: Thrown | null = null;
  let outcome: Outcome | null = null;

  const origin = since?.origin ?? y[system.slots.clock];
  let done = since?.done ?? origin; // the last thing done by the clock
  const atStart = system.resume(options.from.memory, y);
  const log = new Logbook(system, time);
  const start = [...y];
  recorder?.sample(time, y);
  taps?.look(time, y);

  const observe: Observe = (from, to, now) => {
    thrown = watch.firstSwitch(from, to, now);
    const isCut = cutAt < (thrown?.at ?? to);
    const upTo = isCut ? cutAt : (thrown?.at ?? to);
    while (recorder && nextSample <= upTo) {
      recorder.sample(nextSample, watch.inside.stateAt(nextSample));
      nextSample += sampleStep(nextSample);
    }
    if (isCut) thrown = null;
    return thrown || isCut ? { time: upTo, state: watch.inside.stateAt(upTo) } : null;
  };

  /** Lets something change: samples on both sides of it, a new phase if it made one, a mark if it is worth one. */
  const change = (act: () => Happened) => {
    recorder?.sample(time, y);
    const happened = act();
    taps?.look(time, y);
    nextSample = Math.min(nextSample, time + sampleStep(time));
    if (log.hasChanged()) {
      log.turnPage(time);
      recorder?.sample(time, y);
    }
    for (const kind of happened) {
      const mark = log.mark(time, kind, y);
      if (until?.(mark)) outcome = { kind: 'finished', at: time };
    }
  };

  if (since) change(() => [since.mark]);
  else {
    if (system.decided.calls.hotWater) change(() => ['hotWaterCalled']);
    if (system.control.immersionIsOn) change(() => ['immersionOn']);
  }
  if (atStart.length > 0) change(() => atStart);
  while (outcome === null) {
    let clockEvent = system.nextTime(done);
    while (outcome === null && clockEvent - origin <= time + AT_ONCE && time < duration) {
      done = clockEvent;
      change(() => system.tick(done, y));
      clockEvent = system.nextTime(done);
    }
    if (outcome !== null || time >= duration - AT_ONCE) break;
    const isShut = system.control.tap.draw === null;
    if (isShut && waiting.next <= time + AT_ONCE) {
      change(() => system.open(waiting.take(), y));
      continue;
    }
    if (time >= cutAt) break;

    const opens = isShut ? waiting.next : duration;
    const goal = Math.min(opens, clockEvent - origin, duration, time + SLICE);
    watch.begin(time, y);
    const piece = pooled.integrate(
      system.control.pools,
      standingSlots(system.plant, system.slots, system.control),
      (state, at) => watch.inside.ratesAtEnd(at) ?? derivative.at(state),
      time,
      y,
      goal,
      {
        ...(isShut ? shut : open),
        budget: BUDGET,
        firstStep: Math.min(firstStep, goal - time),
        longestStep: Math.min(longest, longestStep(system)),
      },
      observe,
    );
    steps += piece.steps;
    restarts++;
    standing = piece.time - time < STANDING ? standing + 1 : 0;
    time = piece.time;
    y = piece.state;
    firstStep = Math.max(piece.lastStep * RESTART_SHARE, FIRST_STEP);
    if (piece.end === 'budget' || standing > PATIENCE) outcome = { kind: 'tooManySteps', at: time };
    else if (piece.end === 'notFinite') outcome = { kind: 'outOfRange', at: time };
    else if (piece.end === 'event' && thrown !== null) {
      const { what } = thrown as Thrown;
      if (stirs.has(what)) system.throwSwitch(what, y);
      else change(() => system.throwSwitch(what, y));
    }
    yield time / duration;
  }
  log.turnPage(time);
  recorder?.sample(time, y);
  taps?.close(time, y);
  const isOver = time >= duration - AT_ONCE;
  return {
    outcome: outcome ?? { kind: isOver ? 'finished' : 'stopped', at: time },
    marks: log.marks,
    phases: log.phases,
    start,
    end: { state: y, memory: system.memory },
    burnerStarts: system.burnerStarts,
    waiting: waiting.left,
    origin,
    done,
    cost: { derivativeCalls: derivative.calls - callsBefore, steps, restarts },
  };
}

/** What the solver is held to. */
function accuracy(slots: Slots, tolerance: Kelvins) {
  return {
    absoluteTolerance: tolerancesOf(slots, tolerance),
    relativeTolerance: tolerance * RELATIVE_PER_KELVIN,
  };
}

/** Switches that regroup the store and change nothing that anyone has thrown. */
const stirs: ReadonlySet<Switch> = new Set(['merge', 'part']);

const WHILE_DRAWN = 1 / 3; // of the tolerance: a front on its way to the tap moves by kelvins a second
const RELATIVE_PER_KELVIN = 0.01; // relative tolerance for each kelvin of absolute tolerance: store water is near 50 °C
const LONGEST_STEP = 300; // s, or a twenty-fourth of a long run
const FIRST_STEP = 2; // s
const RESTART_SHARE = 0.5; // of the last step, tried after an event; more leaves the next event to a coarse interpolant
const SLICE = 7200; // s of the run between two chances to stop
const BUDGET = 400_000; // derivative calls in one piece; a usual piece takes a hundred
const AT_ONCE = 1e-7; // s; a shorter piece could be none at all to the solver
const STANDING = 1e-3; // s
const PATIENCE = 200;
