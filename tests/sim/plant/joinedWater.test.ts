import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import { coilPathRates, mixAtCoil } from '../../../sim/plant/loop.ts';
import { makePlant, type Plant } from '../../../sim/plant/plant.ts';
import { reheatTime } from '../../../sim/run/reheatTime.ts';
import { toEnd } from '../../../sim/run/toEnd.ts';
import { givenFlow, loopIn, loopOf } from '../../make/loopOf.ts';
import { marchToEnd } from '../../make/marchToEnd.ts';

const base = defaultVariant('joined');

/** The same installation with its pipes cut into so many cells. */
function cutInto(cells: number, plant: Plant): Plant {
  const { built, loop } = loopOf(plant);
  return { ...plant, built: { ...built, loop: { ...loop, pipe: { ...loop.pipe, cells } } } };
}

describe('water that begins to flow through a pipe of one cell and the coil beside it', () => {
  const { loop, slots, count } = loopIn(givenFlow(15, 5));
  const y = new Array<number>(count).fill(20);
  y[slots.out] = 70;
  y[slots.coilIn] = 50;
  y[slots.back] = 30;
  const held = () =>
    loop.pipe.capacity * (y[slots.out] + y[slots.back]) +
    loop.coil.halfCapacity * (y[slots.coilIn] + y[slots.coilOut]);

  test('has one temperature on each side of the coil, and the heat it had', () => {
    const before = held();
    mixAtCoil(loop, slots, y);
    expect(y[slots.out]).toBe(y[slots.coilIn]);
    expect(y[slots.back]).toBe(y[slots.coilOut]);
    expect(y[slots.out]).toBeGreaterThan(50);
    expect(y[slots.out]).toBeLessThan(70);
    expect(held() / before).toBeCloseTo(1, 14);
  });

  test('is left alone to the last bit once it is mixed', () => {
    y[slots.out] = y[slots.coilIn] = 61.7;
    y[slots.back] = y[slots.coilOut] = 43.3;
    const before = [...y];
    mixAtCoil(loop, slots, y);
    expect(y).toEqual(before);
  });

  test('stays one to the last bit all the while it flows: after 10 min', () => {
    const plant = makePlant(givenFlow(15, 5));
    const { end } = marchToEnd(plant, { duration: 600 });
    expect(end.memory.mode.coilRuns).toBe(true);
    expect(end.state[slots.out]).toBe(end.state[slots.coilIn]);
    expect(end.state[slots.back]).toBe(end.state[slots.coilOut]);
    expect(end.state[slots.out]).not.toBe(end.state[slots.back]);
  });

  test('reaches the coil 8.9 s late, as long as half a coil of 9155 J/K lasts at 15 l/min', () => {
    const { plant } = loopIn(givenFlow(15, 5));
    // by hand: 0.25 l/s × 0.98055 kg/l × 4187 J/(kg K) = 1026.4 W/K
    expect(loop.coil.halfCapacity / 1026.4).toBeCloseTo(8.92, 2);
    const state = new Array<number>(count).fill(20);
    state[slots.boilerWater] = 80;
    const rates = new Array<number>(count).fill(0);
    const path = { coilInlet: 0, coilOutlet: 0, coilHeat: 0, pipeLoss: 0, coilReturn: 0 };
    const net = new Float64Array(plant.cylinder.layers);
    const lossless = { ...loop, pipe: { ...loop.pipe, lossConductance: 0 } };
    let delay = 0;
    const dt = 0.01; // a sum of Euler’s steps is exact for a mixed cell, less half a step
    for (let t = 0; t < 200; t += dt) {
      coilPathRates(lossless, slots, plant.coilAlone, state, net, rates, path);
      delay += (dt * (80 - path.coilInlet)) / 60;
      for (const slot of [slots.out, slots.coilIn]) state[slot] += dt * rates[slot];
    }
    const pipe = loop.pipe.capacity / plant.coilAlone.heatRate;
    expect(delay - pipe).toBeCloseTo(8.92, 1);
  });

  test('is not mixed in a longer pipe, beside a coil of which only the conductance is known, or without a loop', () => {
    const known = { ...givenFlow(15, 5), coil: { ...base.coil, given: 'conductance' as const } };
    for (const variant of [givenFlow(15, 12), known]) {
      const other = loopIn(variant);
      const apart = Array.from({ length: other.count }, (_, slot) => 20 + slot);
      const before = [...apart];
      mixAtCoil(other.loop, other.slots, apart);
      expect(apart).toEqual(before);
    }
    const before = [...y];
    mixAtCoil(undefined, null, y);
    expect(y).toEqual(before);
  });
});

describe('the recovery time', () => {
  const recovery = (plant: Plant) => {
    const { time } = toEnd(reheatTime(plant, 4 * 3600));
    if (time === null) throw new Error('it is not satisfied');
    return time;
  };

  test.each([
    ['15 l/min and 4 m', givenFlow(15, 4)],
    ['15 l/min and 6 m', givenFlow(15, 6)],
    ['6 l/min and 2 m', givenFlow(6, 2)],
    ['25 l/min and 8 m', givenFlow(25, 8)],
    ['the flow of its circulator', base],
    [
      'rooms that are heated along with it',
      { ...givenFlow(15, 5), heating: { ...base.heating, arrangement: 'simultaneous' as const } },
    ],
  ])(
    'with %s is that of pipes cut into 12 cells that are not joined, to 0.04 %%',
    (_name, variant) => {
      const plant = makePlant(variant);
      expect(loopOf(plant).loop.pipe.cells).toBe(1);
      expect(Math.abs(recovery(plant) / recovery(cutInto(12, plant)) - 1)).toBeLessThan(4e-4);
    },
  );
});
