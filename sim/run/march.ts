import type { PatternDraw } from '../../shared/drawPattern.ts';
import type { Cost, Mark, Outcome, Phase } from '../../shared/result.ts';
import type { Seconds } from '../../shared/units.ts';
import { drawEdges } from '../demand/schedule.ts';
import { firstCrossing } from '../solve/crossing.ts';
import { type IntegrateSettings, integrate } from '../solve/integrate.ts';
import type { Dense } from '../solve/odex.js';
import { invertedBorders } from '../solve/pools.ts';
import { tolerancesOf } from '../solve/slots.ts';
import { type Snapshot, switches, type System } from '../solve/system.ts';
import type { Recorder } from './recorder.ts';

export interface MarchOptions {
  readonly from: Snapshot;
  readonly duration: Seconds;
  readonly draws: readonly PatternDraw[];
  /** K */
  readonly tolerance: number;
  /** Ends the run at a mark. */
  readonly until?: (mark: Mark) => boolean;
  readonly recorder?: Recorder;
  /** s between samples */
  readonly sampleEvery?: Seconds;
}

/** What a march through time leaves behind. */
export interface Marched {
  readonly outcome: Outcome;
  readonly marks: readonly MarkedState[];
  readonly phases: readonly Phase[];
  readonly start: readonly number[];
  readonly end: Snapshot;
  readonly cost: Cost;
}

/** A mark and the state there. */
export interface MarkedState {
  readonly mark: Mark;
  readonly snapshot: Snapshot;
}

/**
 * Takes a system through time, from event to event. Yields the share done after each piece, so that the caller can show
 * progress and stop by not asking again; `return` of the generator is what the run left behind.
 */
export function* march(system: System, options: MarchOptions): Generator<number, Marched> {
  const { slots, derivative, control } = system;
  const { duration, recorder, until } = options;
  const every = options.sampleEvery ?? duration;
  const settings = {
    absoluteTolerance: tolerancesOf(slots, options.tolerance),
    relativeTolerance: options.tolerance * RELATIVE_PER_KELVIN,
    longestStep: Math.max(LONGEST_STEP, duration / 24),
  };
  const edges = drawEdges(options.draws).filter((edge) => edge.at < duration);
  const marks: MarkedState[] = [];
  const phases: Phase[] = [];
  const ends = new Float64Array(switches.length);
  const between = new Array<number>(slots.count).fill(0);
  const callsBefore = derivative.calls;

  let y = [...options.from.state];
  let time = 0;
  let nextSample = 0;
  let firstStep = FIRST_STEP;
  let steps = 0;
  let restarts = 0;
  let standing = 0; // restarts in a row without getting anywhere
  let phaseFrom = 0;
  let outcome: Outcome | null = null;

  system.resume(options.from.calls, y);
  const start = [...y];
  recorder?.sample(0, y);
  nextSample = every;

  const stateAt = (at: Dense, when: Seconds) => {
    for (let slot = 0; slot < slots.count; slot++) between[slot] = at(slot, when);
    return between;
  };
  const observe = (from: Seconds, to: Seconds, now: readonly number[], at: Dense) => {
    let event: Seconds | null = null;
    derivative.at(now);
    for (let which = 0; which < switches.length; which++) {
      ends[which] = system.crossing(switches[which], (slot) => now[slot], alreadyEvaluated);
    }
    for (let which = 0; which < switches.length; which++) {
      if (!(ends[which] > 0)) continue;
      const borders = invertedBorders(control.pools, now);
      const g = (when: Seconds) =>
        system.crossing(
          switches[which],
          (slot) => at(slot, when),
          () => derivative.at(stateAt(at, when)),
          borders,
        );
      // An earlier event may already have been found: is this one before it?
      const limit: Seconds = event ?? to;
      const atLimit = event === null ? ends[which] : g(limit);
      if (!(atLimit > 0)) continue;
      event = firstCrossing(g, from, limit, g(from), atLimit);
      thrown = which;
    }
    const upTo = event ?? to;
    while (recorder && nextSample <= upTo) {
      recorder.sample(nextSample, stateAt(at, nextSample));
      nextSample += every;
    }
    return event;
  };
  let thrown = -1;

  const closePhase = () => {
    if (time > phaseFrom) {
      phases.push({
        from: phaseFrom,
        to: time,
        coilRuns: system.mode.coilRuns,
        radiatorsRun: system.mode.radiatorsRun,
        draws: control.drawFlow > 0,
        limit: control.limit,
      });
    }
    phaseFrom = time;
  };
  const mark = (kind: Mark['kind']) => {
    const made: Mark = { at: time, kind };
    marks.push({ mark: made, snapshot: { state: [...y], calls: system.calls } });
    return until?.(made) === true;
  };
  /** Lets something change: samples before and after it, and a new phase when it changed who has the boiler. */
  const change = (act: () => Mark['kind'] | null): boolean => {
    const { mode } = system;
    const { limit, drawFlow } = control;
    recorder?.sample(time, y);
    const open = phaseFrom;
    closePhase();
    const kind = act();
    if (control.limit === limit && system.mode === mode && control.drawFlow === drawFlow) {
      if (time > open) phases.pop();
      phaseFrom = open;
    } else recorder?.sample(time, y);
    return kind !== null && mark(kind);
  };

  if (system.calls.hotWater && mark('hotWaterCalled')) outcome = { kind: 'finished', at: 0 };
  while (outcome === null) {
    // Draws that change now
    while (outcome === null && edges[0] && edges[0].at <= time) {
      const edge = edges.shift();
      if (edge === undefined) break;
      const ended = change(() => {
        system.setDraw(edge.flow, y);
        return edge.flow > 0 ? 'drawStarted' : 'drawEnded';
      });
      if (ended) outcome = { kind: 'finished', at: time };
    }
    if (outcome !== null || time >= duration) break;

    const goal = Math.min(edges[0]?.at ?? duration, duration, time + SLICE);
    const pieceSettings: IntegrateSettings = {
      ...settings,
      firstStep: Math.min(firstStep, goal - time),
      budget: BUDGET,
    };
    const piece = integrate((state) => derivative.at(state), time, y, goal, pieceSettings, observe);
    steps += piece.steps;
    restarts++;
    standing = piece.time - time < STANDING ? standing + 1 : 0;
    time = piece.time;
    y = piece.state;
    firstStep = Math.max(piece.lastStep * RESTART_SHARE, FIRST_STEP);
    if (piece.end === 'budget' || standing > PATIENCE) outcome = { kind: 'tooManySteps', at: time };
    else if (piece.end === 'notFinite') outcome = { kind: 'outOfRange', at: time };
    else if (piece.end === 'event') {
      const what = switches[thrown];
      if (what === 'merge' || what === 'part') system.throwSwitch(what, y);
      else if (change(() => system.throwSwitch(what, y))) outcome = { kind: 'finished', at: time };
    }
    yield time / duration;
  }
  closePhase();
  recorder?.sample(time, y);
  return {
    outcome: outcome ?? { kind: 'finished', at: time },
    marks,
    phases,
    start,
    end: { state: y, calls: system.calls },
    cost: { derivativeCalls: derivative.calls - callsBefore, steps, restarts },
  };
}

const alreadyEvaluated = () => {};

const RELATIVE_PER_KELVIN = 0.01; // relative tolerance for each kelvin of absolute tolerance: store water is near 50 °C
const LONGEST_STEP = 300; // s, or a twenty-fourth of a long run
const FIRST_STEP = 2; // s
const RESTART_SHARE = 0.5; // of the last step, tried after an event; a larger one leaves the next event to a coarse interpolant
const SLICE = 7200; // s of the run between two chances to stop
const BUDGET = 400_000; // derivative calls in one piece; a usual piece takes a hundred
const STANDING = 1e-3; // s
const PATIENCE = 200;
