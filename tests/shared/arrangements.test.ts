import { describe, expect, test } from 'vitest';
import {
  type Arrangement,
  arrangementOf,
  arrangements,
  type Mode,
  modeFor,
} from '../../shared/arrangements.ts';
import { fieldAt } from '../../shared/fields.ts';

const both = { hotWater: true, heating: true };
const water = { hotWater: true, heating: false };
const rooms = { hotWater: false, heating: true };
const none = { hotWater: false, heating: false };

const shut: Mode = { coilRuns: false, radiatorsRun: false, limitOf: 'heating' };
const coil: Mode = { coilRuns: true, radiatorsRun: false, limitOf: 'hotWater' };
const radiators: Mode = { coilRuns: false, radiatorsRun: true, limitOf: 'heating' };
const together: Mode = { coilRuns: true, radiatorsRun: true, limitOf: 'hotWater' };

/** What hot water alone, heating alone, both, and both in the rooms' turn open; whether it heats. */
const expected: Record<Arrangement, readonly [Mode, Mode, Mode, Mode, boolean]> = {
  priority: [coil, radiators, coil, coil, true],
  priorityWithLimit: [coil, radiators, coil, radiators, true],
  simultaneous: [coil, radiators, together, together, true],
  midPosition: [coil, radiators, together, together, true],
  heatingFirst: [coil, radiators, radiators, radiators, true],
  hotWaterOnly: [coil, shut, coil, coil, false],
};
const names = Object.keys(arrangements) as Arrangement[];

test('each of 6 arrangements has its row of expectations here', () => {
  expect(Object.keys(expected).sort()).toEqual([...names].sort());
});

describe.each(names)('%s', (name) => {
  const [forWater, forRooms, forBoth, inTurn, heated] = expected[name];

  test('opens for 3 pairs of calls what its row says, in the turn of the rooms too', () => {
    expect(modeFor(name, water)).toEqual(forWater);
    expect(modeFor(name, rooms)).toEqual(forRooms);
    expect(modeFor(name, both)).toEqual(forBoth);
    expect(modeFor(name, both, true)).toEqual(inTurn);
    expect(arrangements[name].heated).toBe(heated);
  });

  test('opens 0 circuits for 0 calls', () => {
    expect(modeFor(name, none)).toEqual(shut);
    expect(modeFor(name, none, true)).toEqual(shut);
  });

  test('a turn changes nothing for 1 call alone', () => {
    expect(modeFor(name, water, true)).toEqual(modeFor(name, water));
    expect(modeFor(name, rooms, true)).toEqual(modeFor(name, rooms));
  });

  test('opens no circuit that does not call, and the target is hot water’s exactly while the coil runs', () => {
    for (const calls of [none, water, rooms, both]) {
      for (const turn of [false, true]) {
        const mode = modeFor(name, calls, turn);
        if (mode.coilRuns) expect(calls.hotWater).toBe(true);
        if (mode.radiatorsRun) expect(calls.heating).toBe(true);
        expect(mode.limitOf).toBe(mode.coilRuns ? 'hotWater' : 'heating');
      }
    }
  });
});

test('6 labels and 6 help texts differ, and each help is 1 sentence or 2', () => {
  const rows = names.map((name) => arrangements[name]);
  expect(new Set(rows.map(({ label }) => label)).size).toBe(names.length);
  expect(new Set(rows.map(({ help }) => help)).size).toBe(names.length);
  for (const { help } of rows) expect(help).toMatch(/^[A-Z].*\.$/);
});

test('the field offers the 6 arrangements under their labels and no others', () => {
  const field = fieldAt('heating.arrangement');
  if (field.kind !== 'choice') throw new Error('the arrangement is a number; expected a choice');
  expect(field.choices).toEqual(
    names.map((value) => ({ value, label: arrangements[value].label })),
  );
});

test('only the mid-position valve resists more when it serves both, 3 times as much', () => {
  const shared = names.map((name) => [name, arrangementOf(name).sharedValve ?? 1]);
  expect(shared.filter(([, valve]) => valve !== 1)).toEqual([['midPosition', 3]]);
});
