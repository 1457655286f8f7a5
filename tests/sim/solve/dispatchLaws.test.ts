import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Arrangement, arrangements, modeFor } from '../../../shared/arrangements.ts';
import { defaultVariant } from '../../../shared/fields.ts';
import type { Variant } from '../../../shared/variant.ts';
import { beforeRun, type Memory } from '../../../sim/solve/control.ts';
import { answeredCalls, dispatch, mayFire, runs } from '../../../sim/solve/dispatch.ts';

const NEVER = Number.POSITIVE_INFINITY;
const base = defaultVariant('any valves');

const anyPlant = fc
  .record({
    arrangement: fc.constantFrom(...(Object.keys(arrangements) as Arrangement[])),
    model: fc.constantFrom('asBuilt' as const, 'ideal' as const),
    postRun: fc.constantFrom(0, 120, 600),
    valveTravel: fc.constantFrom(0, 20, 300),
  })
  .map(({ arrangement, model, postRun, valveTravel }): Variant => ({
    ...base,
    boiler: { ...base.boiler, model, postRun },
    primary: { ...base.primary, valveTravel },
    heating: { ...base.heating, arrangement, priorityLimit: 900, heatingTurn: 600 },
  }));

/** Calls that change, and how long until the next change, s. */
const anyCourse = fc.array(
  fc.record({
    hotWater: fc.boolean(),
    heating: fc.boolean(),
    lasts: fc.constantFrom(0, 5, 20, 100, 400, 1000),
  }),
  { minLength: 1, maxLength: 15 },
);

/** Goes through a course, every timer in its time, and shows each memory. */
function follow(
  variant: Variant,
  course: readonly { hotWater: boolean; heating: boolean; lasts: number }[],
  look: (now: Memory, clock: number, before: Memory) => void,
): void {
  let memory = beforeRun;
  let clock = 0;
  const act = (at: number, changed: Memory) => {
    clock = at;
    const next = dispatch(variant, changed, clock);
    look(next, clock, changed);
    memory = next;
  };
  for (const { hotWater, heating, lasts } of course) {
    const until = clock + lasts;
    act(clock, { ...memory, calls: { hotWater, heating } });
    for (;;) {
      const due = Math.min(memory.timers.valve, memory.timers.overrun, memory.timers.turn);
      if (due > until) break;
      expect(due).toBeGreaterThan(clock); // a timer that has run out is put away or set anew
      act(due, memory);
    }
    clock = until;
  }
}

test('in 300 courses of calls a valve has a time and a goal or neither, and a second look at the same time changes nothing', () => {
  fc.assert(
    fc.property(anyPlant, anyCourse, (variant, course) => {
      follow(variant, course, (now, clock) => {
        expect(now.nextMode === null).toBe(now.timers.valve === NEVER);
        if (now.nextMode !== null) expect(runs(now.nextMode)).toBe(true);
        expect(dispatch(variant, now, clock)).toEqual(now);
      });
    }),
    { numRuns: 300 },
  );
});

test('in 300 courses what is open is what the calls want, or was open before', () => {
  fc.assert(
    fc.property(anyPlant, anyCourse, (variant, course) => {
      follow(variant, course, (now, clock, before) => {
        const calls = answeredCalls(variant, now, clock);
        const wanted = modeFor(variant.heating.arrangement, calls, now.isRoomsTurn);
        expect([wanted, before.mode]).toContainEqual(now.mode);
        if (runs(wanted)) {
          // open now, or on its way to just that
          expect(now.nextMode ?? now.mode).toEqual(wanted);
          expect(now.timers.overrun).toBe(NEVER);
        } else {
          expect(now.nextMode).toBe(null);
          expect(runs(now.mode)).toBe(now.timers.overrun !== NEVER);
          expect(mayFire(now, calls)).toBe(false);
        }
      });
    }),
    { numRuns: 300 },
  );
});

test('in 300 courses no timer is set further ahead than 300 s of valve, 600 s of overrun or 900 s of turn', () => {
  fc.assert(
    fc.property(anyPlant, anyCourse, (variant, course) => {
      const { valveTravel } = variant.primary;
      follow(variant, course, ({ timers, isRoomsTurn }, clock) => {
        const ahead = (timer: number) => (timer === NEVER ? 0 : timer - clock);
        expect(ahead(timers.valve)).toBeLessThanOrEqual(valveTravel);
        expect(ahead(timers.overrun)).toBeLessThanOrEqual(variant.boiler.postRun);
        expect(ahead(timers.turn)).toBeLessThanOrEqual(isRoomsTurn ? 600 : 900);
      });
    }),
    { numRuns: 300 },
  );
});

test('what is remembered is not written on: a frozen memory goes through 4 pairs of calls', () => {
  const frozen = (calls: Memory['calls']): Memory =>
    Object.freeze({
      ...beforeRun,
      calls: Object.freeze(calls),
      timers: Object.freeze(beforeRun.timers),
    });
  for (const hotWater of [false, true]) {
    for (const heating of [false, true]) {
      const before = frozen({ hotWater, heating });
      expect(dispatch(base, before, 7).calls).toEqual({ hotWater, heating });
    }
  }
});
