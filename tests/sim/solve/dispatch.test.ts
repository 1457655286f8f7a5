import { describe, expect, test } from 'vitest';
import type { Mode } from '../../../shared/arrangements.ts';
import { defaultVariant } from '../../../shared/fields.ts';
import type { Arrangement, Variant } from '../../../shared/variant.ts';
import { beforeRun, type Memory, noTimers } from '../../../sim/solve/control.ts';
import { answeredCalls, dispatch, mayFire } from '../../../sim/solve/dispatch.ts';

const NEVER = Number.POSITIVE_INFINITY;
const shut: Mode = { coilRuns: false, radiatorsRun: false, limitOf: 'heating' };
const coil: Mode = { coilRuns: true, radiatorsRun: false, limitOf: 'hotWater' };
const radiators: Mode = { coilRuns: false, radiatorsRun: true, limitOf: 'heating' };
const together: Mode = { coilRuns: true, radiatorsRun: true, limitOf: 'hotWater' };

const none = { hotWater: false, heating: false };
const water = { hotWater: true, heating: false };
const rooms = { hotWater: false, heating: true };
const both = { hotWater: true, heating: true };

const base = defaultVariant('valves'); // valve 20 s, overrun 120 s, as built

function wired(arrangement: Arrangement, boiler: Partial<Variant['boiler']> = {}): Variant {
  return {
    ...base,
    boiler: { ...base.boiler, ...boiler },
    heating: { ...base.heating, arrangement },
  };
}

/** What is remembered while a circuit is open and these call. */
function during(mode: Mode, calls: Memory['calls'], rest: Partial<Memory> = {}): Memory {
  return { ...beforeRun, mode, calls, ...rest };
}

describe('a valve of 20 s, called from the radiators to the coil at 1000 s', () => {
  const priority = wired('priority');
  const left = dispatch(priority, during(radiators, both), 1000);

  test('is on its way until 1020 s, and the water keeps its old way', () => {
    expect([left.mode, left.nextMode, left.timers.valve]).toEqual([radiators, coil, 1020]);
    const later = dispatch(priority, left, 1019.999);
    expect([later.mode, later.nextMode, later.timers.valve]).toEqual([radiators, coil, 1020]);
  });

  test('arrives at 1020 s, and its timer is put away', () => {
    const there = dispatch(priority, left, 1020);
    expect([there.mode, there.nextMode, there.timers]).toEqual([coil, null, noTimers]);
  });

  test('goes back at once when hot water stops calling at 1010 s, and needs 20 s more when it calls again at 1015 s', () => {
    const back = dispatch(priority, { ...left, calls: rooms }, 1010);
    expect([back.mode, back.nextMode, back.timers.valve]).toEqual([radiators, null, NEVER]);
    const again = dispatch(priority, { ...back, calls: both }, 1015);
    expect([again.nextMode, again.timers.valve]).toEqual([coil, 1035]);
  });

  test('stays when 0 circuits call at 1010 s, and the pump runs on through the radiators until 1130 s', () => {
    const still = dispatch(priority, { ...left, calls: none }, 1010);
    expect([still.mode, still.nextMode]).toEqual([radiators, null]);
    expect([still.timers.valve, still.timers.overrun]).toEqual([NEVER, 1130]);
  });

  test('starts its 20 s anew when it is wanted elsewhere on its way', () => {
    const zones = wired('simultaneous');
    const first = dispatch(zones, during(radiators, water), 1000);
    expect([first.nextMode, first.timers.valve]).toEqual([coil, 1020]);
    const other = dispatch(zones, { ...first, calls: both }, 1012);
    expect([other.mode, other.nextMode, other.timers.valve]).toEqual([radiators, together, 1032]);
  });

  test('of 0 s is there at once', () => {
    const quick = { ...priority, primary: { ...priority.primary, valveTravel: 0 } };
    const there = dispatch(quick, during(radiators, both), 1000);
    expect([there.mode, there.nextMode, there.timers.valve]).toEqual([coil, null, NEVER]);
  });
});

describe('a pump overrun of 120 s after the last call at 500 s', () => {
  const priority = wired('priority');
  const over = dispatch(priority, during(coil, none), 500);

  test('keeps the coil open until 620 s and then shuts everything', () => {
    expect([over.mode, over.timers.overrun]).toEqual([coil, 620]);
    const later = dispatch(priority, over, 619.999);
    expect([later.mode, later.timers.overrun]).toEqual([coil, 620]);
    const ended = dispatch(priority, over, 620);
    expect([ended.mode, ended.nextMode, ended.timers]).toEqual([shut, null, noTimers]);
  });

  test('is ended by a new call at 550 s for the same circuit, without a valve’s travel', () => {
    const called = dispatch(priority, { ...over, calls: water }, 550);
    expect([called.mode, called.nextMode, called.timers]).toEqual([coil, null, noTimers]);
  });

  test('is ended by a call at 550 s for the other circuit, whose valve arrives at 570 s', () => {
    const called = dispatch(priority, { ...over, calls: rooms }, 550);
    expect([called.mode, called.nextMode]).toEqual([coil, radiators]);
    expect([called.timers.overrun, called.timers.valve]).toEqual([NEVER, 570]);
    expect(mayFire(called, rooms)).toBe(false);
  });

  test('of 0 s, or of an ideal boiler, shuts everything at 500 s', () => {
    for (const boiler of [{ postRun: 0 }, { model: 'ideal' as const }]) {
      const after = dispatch(wired('priority', boiler), during(coil, none), 500);
      expect([after.mode, after.timers]).toEqual([shut, noTimers]);
    }
  });

  test('needs an open circuit: with 0 open nothing runs on', () => {
    expect(dispatch(priority, during(shut, none), 500)).toEqual(during(shut, none));
  });
});

describe('turns of 40 min for hot water and 20 min for the rooms, valve 20 s', () => {
  const turns = wired('priorityWithLimit');

  /** What is open from when on, [s, mode], as the timers run out one after the other. */
  function course(variant: Variant, memory: Memory, until: number): [number, Mode][] {
    const openings: [number, Mode][] = [];
    let now = dispatch(variant, memory, 0);
    for (let clock = 0; clock <= until;) {
      if (openings.at(-1)?.[1] !== now.mode) openings.push([clock, now.mode]);
      clock = Math.min(now.timers.turn, now.timers.valve, now.timers.overrun);
      now = dispatch(variant, now, clock);
    }
    return openings;
  }

  test('while both call: coil to 2420 s, rooms to 3620 s, coil to 6020 s, rooms again', () => {
    expect(course(turns, during(coil, both), 6020)).toEqual([
      [0, coil],
      [2420, radiators],
      [3620, coil],
      [6020, radiators],
    ]);
  });

  test('with the limit at 5 min and the turn at 10 min the rooms have it from 320 to 920 s', () => {
    const heating = { ...turns.heating, priorityLimit: 300, heatingTurn: 600 };
    expect(course({ ...turns, heating }, during(coil, both), 920)).toEqual([
      [0, coil],
      [320, radiators],
      [920, coil],
    ]);
  });

  test('a room call that pauses at 2000 s and comes back at 2100 s waits the whole 40 min again, until 4500 s', () => {
    const first = dispatch(turns, during(coil, both), 0);
    expect(first.timers.turn).toBe(2400);
    const paused = dispatch(turns, { ...first, calls: water }, 2000);
    expect([paused.timers.turn, paused.isRoomsTurn]).toEqual([NEVER, false]);
    expect(dispatch(turns, { ...paused, calls: both }, 2100).timers.turn).toBe(4500);
  });

  test('a turn of the rooms ends when hot water stops calling: at its next call at 3000 s it goes first, until 5400 s', () => {
    const inTurn = during(radiators, both, {
      isRoomsTurn: true,
      timers: { ...noTimers, turn: 3600 },
    });
    const alone = dispatch(turns, { ...inTurn, calls: rooms }, 2900);
    expect([alone.mode, alone.isRoomsTurn, alone.timers.turn]).toEqual([radiators, false, NEVER]);
    const again = dispatch(turns, { ...alone, calls: both }, 3000);
    expect([again.nextMode, again.timers.turn]).toEqual([coil, 5400]);
  });

  test('the other arrangements take 0 turns: no timer is ever set', () => {
    for (const arrangement of ['priority', 'simultaneous', 'midPosition'] as const) {
      const { timers, isRoomsTurn } = dispatch(wired(arrangement), during(coil, both), 0);
      expect([timers.turn, isRoomsTurn]).toEqual([NEVER, false]);
    }
  });
});

describe('what is left of 2 calls', () => {
  const noon = 12 * 3600; // outside the default hours of hot water and heating
  const timed = (service: 'hotWater' | 'heating'): Variant => ({
    ...base,
    programme: { ...base.programme, [service]: 'timed' },
  });
  const calling = during(shut, both);

  test('is both when nothing is in the way, and 0 of 0 calls', () => {
    expect(answeredCalls(base, calling, noon)).toEqual(both);
    expect(answeredCalls(base, during(shut, none), noon)).toEqual(none);
  });

  test('is heating alone at 12:00 under a hot-water programme that opens at 17:00, and both at 17:00', () => {
    expect(answeredCalls(timed('hotWater'), calling, noon)).toEqual(rooms);
    expect(answeredCalls(timed('hotWater'), calling, 17 * 3600)).toEqual(both);
    expect(answeredCalls(timed('hotWater'), calling, 18 * 3600)).toEqual(rooms); // 60 min later
  });

  test('is hot water alone at 12:00 under a heating programme from 6:00 for 3 h', () => {
    expect(answeredCalls(timed('heating'), calling, noon)).toEqual(water);
    expect(answeredCalls(timed('heating'), calling, 8.5 * 3600)).toEqual(both);
  });

  test('is heating alone with 1 sensor fault or with the immersion heater in place of the boiler', () => {
    expect(answeredCalls(base, { ...calling, hasFault: true }, noon)).toEqual(rooms);
    const instead = {
      ...base,
      immersion: { ...base.immersion, used: 'insteadOfBoiler' as const },
    };
    expect(answeredCalls(instead, calling, noon)).toEqual(rooms);
    const helping = { ...base, immersion: { ...base.immersion, used: 'withBoiler' as const } };
    expect(answeredCalls(helping, calling, noon)).toEqual(both);
  });

  test('is hot water alone without radiators: 2 calls open the coil, a heating call opens nothing', () => {
    const alone = wired('hotWaterOnly');
    expect(answeredCalls(alone, calling, noon)).toEqual(water);
    expect(dispatch(alone, during(shut, both), 100).nextMode).toEqual(coil);
    expect(dispatch(alone, during(shut, rooms), 100)).toEqual(during(shut, rooms));
  });
});

test('the burner may be lit in 7 of 16 pairs of circuits and calls: where an open one calls', () => {
  const lit = [shut, coil, radiators, together].map((mode) =>
    [none, water, rooms, both].map((calls) => mayFire(during(mode, calls), calls)),
  );
  expect(lit).toEqual([
    [false, false, false, false],
    [false, true, false, true],
    [false, false, true, true],
    [false, true, true, true],
  ]);
});
