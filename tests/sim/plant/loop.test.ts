import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Variant } from '../../../shared/variant.ts';
import type { CoilPath, LoopSlots } from '../../../sim/plant/loop.ts';
import { coilPathRates, mixAtCoil } from '../../../sim/plant/loop.ts';
import { makePlant, type Plant } from '../../../sim/plant/plant.ts';
import { alongPipe } from '../../../sim/plant/primary.ts';
import { anyRun } from '../../make/anyRun.ts';
import { givenFlow, loopOf } from '../../make/loopOf.ts';
import { heldByPrimary } from '../../../sim/measure/primaryHeat.ts';
import { serviceFor } from '../../../sim/plant/service.ts';
import { System } from '../../../sim/solve/system.ts';

/** A known flow in l/min, a run in m, and what its pipes lose, W/(m K). */
function run(litres: number, length: number, heatLoss = 0): Variant {
  const given = givenFlow(litres, length);
  return { ...given, primary: { ...given.primary, lossFrom: 'given', heatLoss } };
}

const emptyPath = (): CoilPath => ({
  coilInlet: 0,
  coilOutlet: 0,
  coilHeat: 0,
  pipeLoss: 0,
  coilReturn: 0,
});

/** Rates, heats and path of the loop of a plant at a state. */
function ratesAt(plant: Plant, y: readonly number[], flows: boolean) {
  const { loop, slots, count } = loopOf(plant);
  const net = new Float64Array(plant.cylinder.layers);
  const rates = new Array<number>(count).fill(0);
  const path = emptyPath();
  coilPathRates(loop, slots, flows ? plant.coilAlone : null, y, net, rates, path);
  return { net, rates, path };
}

const sum = (values: ArrayLike<number>) => Array.from(values).reduce((all, one) => all + one, 0);

describe('energy of 200 plants as built at any state', () => {
  const anyPlant = anyRun.map((variant) =>
    makePlant({ ...variant, boiler: { ...variant.boiler, model: 'asBuilt' } }),
  );
  const anyState = fc.array(fc.double({ min: 5, max: 95, noNaN: true }), {
    minLength: 120,
    maxLength: 120,
  });
  const circuits = fc.constantFrom(
    { coilRuns: true, radiatorsRun: false },
    { coilRuns: false, radiatorsRun: true },
    { coilRuns: false, radiatorsRun: false },
  );

  test('capacity × rate is heat in less heat of the coil, losses and radiators, whatever is open', () => {
    fc.assert(
      fc.property(anyPlant, anyState, circuits, fc.boolean(), (plant, state, open, lit) => {
        const system = new System(plant);
        const { slots, control, derivative } = system;
        if (plant.built === null) throw new Error('an ideal boiler');
        control.service = serviceFor(plant, { ...open, limitOf: 'hotWater' });
        control.firing = lit ? 'most' : 'off';
        const y = Array.from({ length: slots.count }, (_, slot) => state[slot % 120]);
        if (open.coilRuns) mixAtCoil(plant.built.loop, slots.loop, y); // as where it begins to flow
        const rates = derivative.at(y);
        const { boilerHeat, coilHeat, pipeLoss, toRadiators } = derivative.flows;
        const gained = heldByPrimary(plant.built.loop, slots, (slot) => rates[slot]);
        const moved = [boilerHeat, coilHeat, pipeLoss, toRadiators].map(Math.abs);
        const left = boilerHeat - coilHeat - pipeLoss - toRadiators;
        // heat goes round at up to 60 l/min × 90 K, which is 0.4 MW: rounding of that
        expect(Math.abs(gained - left)).toBeLessThan(1e-9 * (sum(moved) + 4e5));
      }),
      { numRuns: 200 },
    );
  });

  test('what the layers get from the coil is what the coil has given, W for W', () => {
    fc.assert(
      fc.property(anyPlant, anyState, fc.boolean(), (plant, state, flows) => {
        const { count } = loopOf(plant);
        const y = Array.from({ length: count }, (_, slot) => state[slot % 120]);
        const { net, path } = ratesAt(plant, y, flows);
        const size = Array.from(net, Math.abs);
        // the way in and out of the coil is a difference of two large heats
        const round = 1e-12 * plant.coilAlone.heatRate * 100;
        expect(Math.abs(sum(net) - path.coilHeat)).toBeLessThan(1e-9 * sum(size) + round);
      }),
      { numRuns: 200 },
    );
  });
});

describe('a pipe of 20 m that loses 1 W/(m K), 2 l/min at 80 °C, 20 °C around', () => {
  const plant = makePlant(run(2, 20, 1));

  /** Where the pipe settles when it is cut into cells, °C. */
  function settled(cells: number): number {
    const { loop } = loopOf(plant);
    const cut = { ...loop, pipe: { ...loop.pipe, cells }, coil: { ...loop.coil, halfCapacity: 0 } };
    const first = plant.cylinder.layers;
    const slots: LoopSlots = {
      boilerWater: first,
      out: first + 1,
      back: first + 1 + cells,
      coilIn: -1,
      coilOut: -1,
    };
    const y = new Array<number>(first + 1 + 2 * cells).fill(20);
    y[first] = 80;
    const rates = new Array<number>(y.length).fill(0);
    const path = emptyPath();
    const { heatRate } = plant.coilAlone;
    const ease = cut.pipe.capacity / (heatRate * cells + cut.pipe.lossConductance); // settles one cell in one go
    const store = new Float64Array(plant.cylinder.layers);
    for (let sweep = 0; sweep < 2 * cells; sweep++) {
      coilPathRates(cut, slots, plant.coilAlone, y, store, rates, path);
      for (let cell = 0; cell < cells; cell++)
        y[slots.out + cell] += ease * rates[slots.out + cell];
    }
    coilPathRates(cut, slots, plant.coilAlone, y, store, rates, path);
    for (let cell = 0; cell < cells; cell++) {
      expect(Math.abs(rates[slots.out + cell])).toBeLessThan(1e-9); // it stands still
    }
    return path.coilInlet;
  }

  test('ends at 71.84 °C by the exact exponential, and 1 and 10 cells are too hot by less than a² / 2N of the 60 K', () => {
    const { heatRate } = plant.coilAlone;
    const a = 20 / heatRate; // by hand: 20 W/K over 2 l/min × 0.98055 kg/l × 4187 J/(kg K) = 136.85 W/K
    expect(a).toBeCloseTo(0.14614, 4); // worked to 4 figures
    const exact = alongPipe(plant.primary, 80, heatRate);
    expect(exact).toBeCloseTo(20 + 60 * Math.exp(-a), 9); // rounding
    expect(exact).toBeCloseTo(71.84, 2);
    for (const cells of [1, 10]) {
      const end = settled(cells);
      expect(end).toBeCloseTo(20 + 60 * (1 + a / cells) ** -cells, 8); // mixed cells in a row
      expect(end).toBeGreaterThan(exact);
      expect(end - exact).toBeLessThan((60 * a * a) / (2 * cells));
    }
  });

  test('10 cells are 10 times as close as 1, within 15 %', () => {
    const exact = alongPipe(plant.primary, 80, plant.coilAlone.heatRate);
    const ratio = (settled(1) - exact) / (settled(10) - exact);
    // next term of the series: 1 − 2a / 3 against 1 − 2a / 30, 9 % at a = 0.146
    expect(Math.abs(ratio / 10 - 1)).toBeLessThan(0.15);
  });
});

describe('25 m of 22 mm at 6 l/min', () => {
  const plant = makePlant(run(6, 25));
  const { loop, slots, count } = loopOf(plant);
  const { heatRate } = plant.coilAlone;
  // by hand: bore 20.2 mm holds 0.32047 l/m, copper 59.66 mm² × 3.45 MJ/(m³ K) = 205.8 J/(m K),
  // water at 65 °C 0.32047 × 0.98055 × 4187 = 1315.7 J/(m K)
  const water = (0.32047 * 25) / 0.1;
  const copper = (water * 205.8) / 1315.7;

  test('is followed in 10 cells that hold 80.1 s of water and 12.5 s of copper', () => {
    expect(water).toBeCloseTo(80.1, 1);
    expect(copper).toBeCloseTo(12.5, 1);
    expect(loop.pipe.cells).toBe(10);
    expect(loop.pipe.capacity / heatRate).toBeCloseTo(water + copper, 1); // worked to 4 figures
  });

  test('passes a step at the boiler on to the coil after 92.6 s on the mean, and half of it by then within 10 s', () => {
    const y = new Array<number>(count).fill(20);
    y[slots.boilerWater] = 80;
    let delay = 0;
    let half = 0;
    let before = 1;
    const dt = 0.25; // a sum of Euler’s steps is exact for mixed cells, less half a step
    for (let t = 0; t < 600; t += dt) {
      const { rates, path } = ratesAt(plant, y, true);
      for (let cell = 0; cell < 10; cell++) y[slots.out + cell] += dt * rates[slots.out + cell];
      const missing = (80 - path.coilInlet) / 60;
      delay += (dt * (before + missing)) / 2;
      before = missing;
      if (half === 0 && missing < 0.5) half = t;
    }
    expect(Math.abs(delay / (water + copper) - 1)).toBeLessThan(0.01);
    expect(Math.abs(half - (water + copper))).toBeLessThan(10);
  });
});

test('a pipe that stands cools from 70 to 44.4 °C in 1 h, as exp(−UA t / C) to 1e-6 K', () => {
  const plant = makePlant(run(6, 25, 0.25));
  const { loop, slots, count } = loopOf(plant);
  const y = new Array<number>(count).fill(20);
  for (let cell = 0; cell < 10; cell++) y[slots.out + cell] = y[slots.back + cell] = 70;
  const rate = loop.pipe.lossConductance / loop.pipe.capacity;
  // by hand: 0.25 W/(m K) over 1521.5 J/(m K) is 1.6431e-4 1/s
  expect(rate).toBeCloseTo(1.6431e-4, 7);
  const { rates, path } = ratesAt(plant, y, false);
  expect(path.pipeLoss).toBeCloseTo(2 * 25 * 0.25 * 50, 9); // both pipes, 625 W
  for (const first of [slots.out, slots.back]) {
    for (let cell = 0; cell < 10; cell++) expect(rates[first + cell]).toBeCloseTo(-50 * rate, 12);
  }
  const cell = slots.out + 9;
  const dt = 10;
  for (let t = 0; t < 3600; t += dt) {
    // Heun's rule: good to (rate × dt)² / 6 of the fall
    const slope = ratesAt(plant, y, false).rates[cell];
    const there = [...y];
    there[cell] += dt * slope;
    y[cell] += (dt * (slope + ratesAt(plant, there, false).rates[cell])) / 2;
  }
  expect(Math.abs(y[cell] - (20 + 50 * Math.exp(-rate * 3600)))).toBeLessThan(5e-5);
});
