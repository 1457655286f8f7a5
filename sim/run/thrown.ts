import type { ArrangementThrow } from '../../shared/arrangementThrow.ts';
import { type Arrangement, arrangementOf } from '../../shared/arrangements.ts';
import type { PatternDraw } from '../../shared/drawPattern.ts';
import type { Phase, Result } from '../../shared/result.ts';
import type { Seconds } from '../../shared/units.ts';
import { type Variant, withSetting } from '../../shared/variant.ts';
import { makePlant, type Plant } from '../plant/plant.ts';
import type { Memory } from '../solve/control.ts';
import { type Snapshot, System } from '../solve/system.ts';
import { isAlike } from './logbook.ts';
import { type Marched, type MarchOptions, march } from './march.ts';
import { simulate, type SimulateOptions } from './simulate.ts';

/** Where a run stood as the switch was thrown: all that it needs to go on from there. */
export interface ThrowPoint {
  readonly at: Seconds;
  /** Until then. */
  readonly plant: Plant;
  readonly snapshot: Snapshot;
  /** Draws that were not begun. */
  readonly waiting: readonly PatternDraw[];
  /** The clock as the run began, and the last of what it decided. */
  readonly origin: Seconds;
  readonly done: Seconds;
}

/**
 * Runs one variant in whose course the switch between arrangements is thrown. Until the first throw it is, bit for bit, the
 * run without it. Throws at the end or after it are none.
 * @param throws  in order of time
 * @param keep    is given where the run stands at each throw, before it
 */
export function* simulateThrown(
  variant: Variant,
  throws: readonly ArrangementThrow[],
  options: SimulateOptions = {},
  keep?: (point: ThrowPoint) => void,
): Generator<number, Result> {
  return yield* simulate(variant, {
    ...options,
    *through(system, marching) {
      const first = yield* march(system, { ...marching, cutAt: throws[0]?.at });
      if (first.outcome.kind !== 'stopped') return first;
      const later = yield* goOn(pointAtEnd(system.plant, first), throws, marching, keep);
      return joined([first, ...later]);
    },
  });
}

/**
 * Goes on from where a run stood at the first of these throws; what comes is bit for bit what it would have been if nothing
 * had been kept. Gives one piece for each throw that came to pass.
 */
export function* goOn(
  point: ThrowPoint,
  throws: readonly ArrangementThrow[],
  marching: MarchOptions,
  keep?: (point: ThrowPoint) => void,
): Generator<number, Marched[]> {
  const pieces: Marched[] = [];
  let from = point;
  for (const [index, { arrangement }] of throws.entries()) {
    keep?.(from);
    const system = new System(plantAfter(from.plant, arrangement));
    marching.recorder?.follow?.(system);
    const { state, memory } = from.snapshot;
    const piece = yield* march(system, {
      ...marching,
      from: { state, memory: memoryAfter(memory, arrangement) },
      draws: from.waiting,
      since: { time: from.at, origin: from.origin, done: from.done, mark: 'switchThrown' },
      cutAt: throws[index + 1]?.at,
    });
    pieces.push(piece);
    if (piece.outcome.kind !== 'stopped') break;
    from = pointAtEnd(system.plant, piece);
  }
  return pieces;
}

function pointAtEnd(plant: Plant, { outcome, end, waiting, origin, done }: Marched): ThrowPoint {
  return { at: outcome.at, plant, snapshot: end, waiting, origin, done };
}

/** The plant with another arrangement. One that never serves both keeps the flows of both for as long as its valve travels. */
function plantAfter(before: Plant, arrangement: Arrangement): Plant {
  const after = makePlant(withSetting(before.variant, 'heating.arrangement', arrangement));
  const { both } = arrangementOf(arrangement);
  if (both.coilRuns && both.radiatorsRun) return after;
  const { coilShared, radiatorsShared } = before;
  const { coilShared: coilFlow, radiatorsShared: radiatorFlow } = before.flows;
  const flows = { ...after.flows, coilShared: coilFlow, radiatorsShared: radiatorFlow };
  return { ...after, flows, coilShared, radiatorsShared };
}

/** Turns end with the arrangement that takes them. */
function memoryAfter(memory: Memory, arrangement: Arrangement): Memory {
  if (arrangementOf(arrangement).turn !== undefined) return memory;
  const timers = { ...memory.timers, turn: Number.POSITIVE_INFINITY };
  return { ...memory, isRoomsTurn: false, timers };
}

/** One run out of its pieces. */
function joined(pieces: readonly Marched[]): Marched {
  const [first] = pieces;
  const last = pieces[pieces.length - 1];
  const sum = (of: (piece: Marched) => number) => pieces.reduce((total, one) => total + of(one), 0);
  return {
    ...last,
    marks: pieces.flatMap(({ marks }) => marks),
    phases: pieces.reduce<Phase[]>((all, { phases }) => withPhases(all, phases), []),
    start: first.start,
    burnerStarts: first.burnerStarts === null ? null : sum((piece) => piece.burnerStarts ?? 0),
    cost: {
      derivativeCalls: sum(({ cost }) => cost.derivativeCalls),
      steps: sum(({ cost }) => cost.steps),
      restarts: sum(({ cost }) => cost.restarts),
    },
  };
}

/** Adds phases; the first goes on with the last where the throw changed nothing. */
function withPhases(all: readonly Phase[], more: readonly Phase[]): Phase[] {
  const open = all.at(-1);
  const [next, ...rest] = more;
  if (open === undefined || next === undefined) return [...all, ...more];
  return isAlike(open, next)
    ? [...all.slice(0, -1), { ...open, to: next.to }, ...rest]
    : [...all, ...more];
}
