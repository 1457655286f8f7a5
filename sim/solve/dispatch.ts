import { type Calls, type Mode, modeFor, arrangementOf } from '../../shared/arrangements.ts';
import type { Seconds } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { isAllowed } from '../../shared/programme.ts';
import type { Memory } from './control.ts';

/** What is left of the stats' calls once programme, faults and the immersion heater have had their say. */
export function answeredCalls(
  variant: Variant,
  memory: Pick<Memory, 'calls' | 'hasFault' | 'isHeatingThrough'>,
  clock: Seconds,
): Calls {
  const { programme, immersion, heating } = variant;
  return {
    hotWater:
      memory.calls.hotWater &&
      !memory.hasFault &&
      immersion.used !== 'insteadOfBoiler' &&
      (memory.isHeatingThrough || isAllowed(programme, 'hotWater', clock)),
    heating:
      memory.calls.heating &&
      arrangementOf(heating.arrangement).heated &&
      isAllowed(programme, 'heating', clock),
  };
}

/**
 * Sends the valves where the calls want them: takes turns, lets the circulator run on after the last call, and gives a valve
 * its travel time, during which the water keeps its old way.
 * @param clock  s after the midnight before the run
 */
export function dispatch(variant: Variant, memory: Memory, clock: Seconds): Memory {
  const answered = answeredCalls(variant, memory, clock);
  const turned = takeTurns(variant, memory, answered, clock);
  const wanted = modeFor(variant.heating.arrangement, answered, turned.isRoomsTurn);
  return runs(wanted)
    ? travel(variant, turned, wanted, clock)
    : runOn(variant, turned, wanted, clock);
}

/** Whether a mode opens anything. */
export function runs({ coilRuns, radiatorsRun }: Mode): boolean {
  return coilRuns || radiatorsRun;
}

/** Whether the burner may be lit: water moves through a circuit that calls. */
export function mayFire({ mode }: Memory, calls: Calls): boolean {
  return (mode.coilRuns && calls.hotWater) || (mode.radiatorsRun && calls.heating);
}

function takeTurns(variant: Variant, memory: Memory, calls: Calls, clock: Seconds): Memory {
  const { arrangement, priorityLimit, heatingTurn } = variant.heating;
  if (arrangementOf(arrangement).turn === undefined) return memory;
  const { timers, isRoomsTurn } = memory;
  if (!(calls.hotWater && calls.heating)) {
    return { ...memory, isRoomsTurn: false, timers: { ...timers, turn: NEVER } };
  }
  if (timers.turn === NEVER) {
    return { ...memory, timers: { ...timers, turn: clock + priorityLimit } };
  }
  if (clock < timers.turn) return memory;
  return {
    ...memory,
    isRoomsTurn: !isRoomsTurn,
    timers: { ...timers, turn: clock + (isRoomsTurn ? priorityLimit : heatingTurn) },
  };
}

/** A circuit is wanted: opened at once without a motorised valve's travel, else once the valve arrives. */
function travel(variant: Variant, memory: Memory, wanted: Mode, clock: Seconds): Memory {
  const { valveTravel } = variant.primary;
  const timers = { ...memory.timers, overrun: NEVER };
  if (isSame(memory.mode, wanted)) {
    return { ...memory, mode: wanted, nextMode: null, timers: { ...timers, valve: NEVER } };
  }
  const onItsWay = memory.nextMode !== null && isSame(memory.nextMode, wanted);
  const arrives = onItsWay ? timers.valve : clock + valveTravel;
  if (clock >= arrives) {
    return { ...memory, mode: wanted, nextMode: null, timers: { ...timers, valve: NEVER } };
  }
  return { ...memory, nextMode: wanted, timers: { ...timers, valve: arrives } };
}

/** Nothing is wanted: the circulator runs on through the circuit that was open, then everything shuts. */
function runOn(variant: Variant, memory: Memory, wanted: Mode, clock: Seconds): Memory {
  const { model, postRun } = variant.boiler;
  const timers = { ...memory.timers, valve: NEVER };
  const shut = { ...memory, mode: wanted, nextMode: null, timers: { ...timers, overrun: NEVER } };
  if (!runs(memory.mode) || model === 'ideal') return shut;
  const until = timers.overrun === NEVER ? clock + postRun : timers.overrun;
  return clock >= until
    ? shut
    : { ...memory, nextMode: null, timers: { ...timers, overrun: until } };
}

function isSame(one: Mode, other: Mode): boolean {
  return one.coilRuns === other.coilRuns && one.radiatorsRun === other.radiatorsRun;
}

const NEVER = Number.POSITIVE_INFINITY;
