import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import type { Variant } from '../../../shared/variant.ts';
import { passCoil } from '../../../sim/plant/coil.ts';
import { coilPathRates } from '../../../sim/plant/loop.ts';
import { givenFlow, loopIn } from '../../make/loopOf.ts';
import { marchToEnd } from '../../make/marchToEnd.ts';
import { System } from '../../../sim/solve/system.ts';

const base = defaultVariant('coil at rest');

describe('a coil at rest with 70 °C in it and 20 °C around it', () => {
  const { plant, loop, slots, count } = loopIn(givenFlow(15, 5));
  const { layers } = plant.cylinder;
  const y = new Array<number>(count).fill(20);
  y[slots.coilIn] = y[slots.coilOut] = 70;
  const net = new Float64Array(layers);
  const rates = new Array<number>(count).fill(0);
  const path = { coilInlet: 0, coilOutlet: 0, coilHeat: 0, pipeLoss: 0, coilReturn: 0 };
  coilPathRates(loop, slots, null, y, net, rates, path);

  test('gives the store what its 2 halves lose, to rounding, and 0 W to pipes and boiler', () => {
    const lost = -loop.coil.halfCapacity * (rates[slots.coilIn] + rates[slots.coilOut]);
    expect(path.coilHeat).toBeGreaterThan(1000);
    expect(lost / path.coilHeat).toBeCloseTo(1, 12);
    expect(net.reduce((sum, heat) => sum + heat, 0) / path.coilHeat).toBeCloseTo(1, 12);
    expect(path.pipeLoss).toBe(0);
    const moving = rates.flatMap((rate, slot) => (rate === 0 ? [] : [slot]));
    expect(moving).toEqual([slots.coilIn, slots.coilOut].sort((a, b) => a - b));
  });

  test('warms the layers it lies in and 0 others', () => {
    const warmed = Array.from(net.keys()).filter((layer) => net[layer] !== 0);
    expect(new Set(warmed)).toEqual(new Set(plant.coilAlone.layer));
  });

  test('passes at each half half of the whole, within one piece', () => {
    const [first, second] = loop.coil.conductance.map((half) =>
      half.reduce((sum, piece) => sum + piece, 0),
    );
    const piece = Math.max(...loop.coil.conductance[0]);
    expect(Math.abs(first - second)).toBeLessThanOrEqual(piece * (1 + 1e-9));
  });

  test('holds 18.31 kJ/K and passes 76.5 W/K, by hand for 12 m of 22 mm copper tube of 0.8 mm', () => {
    // bore 20.4 mm: 3.9222 l × 4.1056 MJ/(m³ K) + 0.6394 l of copper × 3.45 MJ/(m³ K)
    expect(2 * loop.coil.halfCapacity).toBeCloseTo(18_309, -1); // worked to 4 figures
    // 0.8294 m² over 22 / 20.4 / (3.66 × 0.655 / 0.0204) and 1 / 600 m² K/W
    const whole = 0.8294 / (22 / 20.4 / ((3.66 * 0.655) / 0.0204) + 1 / 600);
    expect(whole).toBeCloseTo(76.5, 1);
    expect(path.coilHeat / 50 / whole).toBeCloseTo(1, 2); // conductivity to 3 figures
  });

  test('with 70 °C in one half and 20 °C in the other cools in the first alone', () => {
    for (const [warm, cold] of [
      [slots.coilIn, slots.coilOut],
      [slots.coilOut, slots.coilIn],
    ]) {
      const one = new Array<number>(count).fill(20);
      one[warm] = 70;
      const changes = new Array<number>(count).fill(0);
      coilPathRates(loop, slots, null, one, new Float64Array(layers), changes, { ...path });
      expect(changes[warm]).toBeLessThan(-0.1);
      expect(Math.abs(changes[cold])).toBe(0);
    }
  });

  test('as warm as the water around gives 0 W', () => {
    y.fill(45);
    coilPathRates(loop, slots, null, y, net.fill(0), rates, path);
    expect(path.coilHeat).toBe(0);
  });
});

test('while it runs each half hands on what it holds: 50 °C goes through the tube, 40 °C leaves, 80 °C comes in', () => {
  const { plant, loop, slots, count } = loopIn(givenFlow(15, 0));
  const y = new Array<number>(count).fill(20);
  y[slots.boilerWater] = 80;
  y[slots.coilIn] = 50;
  y[slots.coilOut] = 40;
  const rates = new Array<number>(count).fill(0);
  const path = { coilInlet: 0, coilOutlet: 0, coilHeat: 0, pipeLoss: 0, coilReturn: 0 };
  const net = new Float64Array(plant.cylinder.layers);
  const { coilAlone } = plant;
  coilPathRates(loop, slots, coilAlone, y, net, rates, path);
  const outlet = passCoil(coilAlone, 50, y, null);
  expect([path.coilInlet, path.coilOutlet, path.coilReturn]).toEqual([80, 40, 40]);
  expect(path.coilHeat).toBeCloseTo(coilAlone.heatRate * (50 - outlet), 8); // rounding
  const perKelvin = coilAlone.heatRate / loop.coil.halfCapacity;
  expect(rates[slots.coilIn]).toBeCloseTo(30 * perKelvin, 9);
  expect(rates[slots.coilOut]).toBeCloseTo((outlet - 40) * perKelvin, 9);
});

describe('what is emptied in under 4 s is warmed with the boiler', () => {
  // by hand at 65 °C: 980.55 kg/m³ × 4187 J/(kg K) = 4.1056 MJ/(m³ K), 6 l of it
  const water = 24_633;
  const coilHalf = (flow: number) => loopIn(givenFlow(flow, 0)).loop.coil.halfCapacity;

  test('a run of 10 m and a coil that are followed leave the boiler its 6 l, 24.63 kJ/K', () => {
    const { loop } = loopIn(givenFlow(6, 10));
    expect([loop.pipe.cells, loop.coil.halfCapacity > 0]).toEqual([8, true]);
    expect(loop.boilerCapacity / water).toBeCloseTo(1, 3); // worked to 4 figures
  });

  test('3 m of 22 mm at 15 l/min hold 3.85 s of water: both pipes go to the boiler, 4.56 kJ/K each', () => {
    // by hand: 3 × 0.32047 l / 0.25 l/s; 3 × 1521.5 J/(m K)
    const { loop } = loopIn(givenFlow(15, 3));
    expect(loop.pipe.cells).toBe(0);
    expect(loop.boilerCapacity - water).toBeCloseTo(2 * 3 * 1521.5, -1); // worked to 4 figures of the whole
    const { loop: followed } = loopIn(givenFlow(15, 3.2)); // 4.10 s
    expect(followed.pipe.cells).toBe(1);
    expect(followed.boilerCapacity / water).toBeCloseTo(1, 3);
  });

  test('a coil goes to the boiler from the flow on that empties a half in 4 s, and its heat with it', () => {
    const half = coilHalf(15);
    const perFlow = 4.1056e6 / 60_000; // W/K for each l/min
    const most = half / 4 / perFlow; // l/min
    expect(loopIn(givenFlow(most * 0.99, 0)).loop.coil.halfCapacity).toBeCloseTo(half, 6);
    const { loop } = loopIn(givenFlow(most * 1.01, 0));
    expect(loop.coil.halfCapacity).toBe(0);
    expect((loop.boilerCapacity - water) / (2 * half)).toBeCloseTo(1, 2); // worked to 4 figures of the whole
  });

  test('a coil of which only the conductance is known holds 0 J/K', () => {
    const known = { ...givenFlow(15, 0), coil: { ...base.coil, given: 'conductance' as const } };
    const { loop } = loopIn(known);
    expect(loop.coil.halfCapacity).toBe(0);
    expect(loop.boilerCapacity / water).toBeCloseTo(1, 3);
  });
});

test('left alone for 1 h a coil at 70 °C in a store at 20 °C comes to it, and the store has its heat to 1e-6', () => {
  const heating = { ...base.heating, arrangement: 'hotWaterOnly' as const };
  const cold: Variant = {
    ...givenFlow(15, 0),
    heating,
    cylinder: { ...base.cylinder, standingLoss: 0 },
    draw: { ...base.draw, incomingCold: 20 },
    stat: { ...base.stat, setPoint: 20, differential: 5 },
    run: { ...base.run, duration: 3600 },
  };
  const { plant, loop, slots } = loopIn(cold);
  const { state, memory } = new System(plant).start();
  const warm = [...state];
  warm[slots.coilIn] = warm[slots.coilOut] = 70;
  const { end } = marchToEnd(plant, { from: { state: warm, memory } });
  const { layers, layerCapacity } = plant.cylinder;
  let gained = 0;
  for (let layer = 0; layer < layers; layer++) gained += layerCapacity * (end.state[layer] - 20);
  const lost = loop.coil.halfCapacity * (140 - end.state[slots.coilIn] - end.state[slots.coilOut]);
  expect(gained / lost).toBeCloseTo(1, 6);
  expect(end.state[slots.coilIn]).toBeLessThan(25); // what is left is a thermocline in a quiet store
});
