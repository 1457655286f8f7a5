import { describe, expect } from 'vitest';
import type { Result } from '../../shared/result.ts';
import { churchillChu } from '../../sim/closures/coilOutside.ts';
import { WALL_METALS } from '../../sim/closures/conduction.ts';
import { rayleigh } from '../../sim/closures/rayleigh.ts';
import { scaleResistance } from '../../sim/closures/scale.ts';
import { TUBE_METALS, tubeWall } from '../../sim/closures/tubeWall.ts';
import { tabulatedWater } from '../../sim/closures/water.ts';
import { type CoilParts, coilParts } from '../../src/explain/coilParts.ts';
import { inside } from '../../src/explain/physics/inside.ts';
import { outside } from '../../src/explain/physics/outside.ts';
import { passes } from '../../src/explain/physics/passes.ts';
import { rule } from '../../src/explain/physics/rule.ts';
import { readingAt } from '../../src/explain/reading.ts';
import { claim } from '../support/claim.ts';
import { expectMoves } from '../support/expectMoves.ts';
import { expectFalling, expectRising } from '../support/expectOrder.ts';
import { runWith, sampled, type Settings } from '../support/houseWith.ts';
import { resultOf } from '../support/recordOf.ts';
import { toldOf } from '../support/toldOf.ts';

const alone: Settings = { 'heating.arrangement': 'hotWaterOnly', 'run.layers': 16 };
const given = (flow: number): Settings => ({ 'primary.flowFrom': 'given', 'primary.flow': flow });
const run = (settings: Settings = {}) => runWith({ ...alone, ...settings });
const water = tabulatedWater();

/** What the coil's conductance is made of at a moment. @param at  s */
function partsOf(result: Result, at: number): CoilParts {
  const parts = coilParts(result, readingAt(result, at));
  if (!parts) throw new Error('the coil rests; expected it to run');
  return parts;
}

/** The same at a part of the time until the stat is satisfied. */
function partsAt(share: number, settings: Settings = {}): CoilParts {
  const result = run(settings);
  return partsOf(result, share * (result.measures.recovery ?? Number.NaN));
}

describe('inside', () => {
  claim('hands its heat to the wall through a thin layer of slow water', () => {
    // a layer of still water that held back as much would be a small part of the bore
    const layer = (settings: Settings) => {
      const { hi, primary, tube } = partsAt(0.5, settings);
      return water.conductivity(primary) / hi / tube.insideDiameter;
    };
    const layers = [5, 10, 20].map((flow) => layer(given(flow)));
    for (const share of layers) expect(share).toBeLessThan(0.05);
    expectFalling(layers);
  });

  claim(
    'The turns of the coil keep stirring it, so that the flow stays laminar to a higher speed than in a straight tube and yet carries more heat.',
    () => {
      for (const curvature of [0.02, 0.058, 0.15]) {
        expect(resultOf('criticalReynolds', { curvature })).toBeGreaterThan(2300);
        for (const Re of [500, 1000, 2000]) {
          const straight = 4.36; // developed laminar flow at constant heat, the larger of the two
          expect(resultOf('curvedLaminar', { Re, Pr: 3, curvature })).toBeGreaterThan(straight);
        }
      }
    },
  );

  claim(
    [
      'here it is the outside that holds the heat back more.',
      'here it is the inside that holds the heat back more.',
    ],
    () => {
      const sides = new Set<string>();
      for (const settings of [{}, given(1.5), { ...given(1.5), 'coil.enhancement': 4 }]) {
        const result = run(settings);
        const parts = partsOf(result, 900);
        const reading = readingAt(result, 900);
        const whole = parts.primary - reading.of('coilWater');
        // what is left of the difference once film outside, wall and scale have had theirs
        const within = whole * (1 - parts.U * (parts.Rw + parts.Rs)) - parts.difference;
        const side = within < parts.difference ? 'outside' : 'inside';
        expect(toldOf(inside, result, reading.at)).toContain(`it is the ${side} that holds`);
        sides.add(side);
      }
      expect(sides.size).toBe(2);
    },
  );
});

describe('outside', () => {
  claim(
    [
      'Outside the tube nothing drives the water, … here, but its own warmth: what touches the tube grows lighter and rises.',
      'Outside the tube nothing drives the water but its own warmth: what touches the tube grows lighter and rises.',
    ],
    () => {
      expectFalling([5, 10, 20, 40, 60, 80].map((T) => water.density(T)));
      expectMoves('rayleigh', { difference: [0.1, 60] }, { difference: 'up' });
      expect(resultOf('rayleigh', { difference: 0 })).toBe(0);
    },
  );

  claim(['hotter', 'colder'], () => {
    const warming = run();
    expect(toldOf(outside, warming, 900)).toMatch(/K hotter than the water around it/);
    const cooling = run({
      'start.hotShare': 100,
      'start.hotTemperature': 64,
      'stat.setPoint': 70,
      'boiler.hotWaterFlow': 55,
      'run.duration': 0.5,
    });
    const moments = [600, 1200, 1700].filter((at) => sampled(cooling, 'coilHeat', at) < -100);
    expect(moments).not.toEqual([]);
    for (const at of moments) {
      expect(toldOf(outside, cooling, at)).toMatch(/K colder than the water around it/);
    }
  });

  claim(
    'As the store warms the difference shrinks, but warmer water expands more and is thinner, which makes up for much of that.',
    () => {
      for (const settings of [{}, { 'coil.length': 6 }, { 'boiler.hotWaterFlow': 70 }]) {
        const shares = [0.15, 0.4, 0.7, 0.98].map((share) => partsAt(share, settings));
        expectFalling(shares.map(({ difference }) => difference));
        expectRising(shares.map(({ film }) => water.expansion(film)));
        expectFalling(shares.map(({ film }) => water.viscosity(film)));
        // the film at the end, and what it would be had the water stayed as at first
        const [first, , , last] = shares;
        const as = (difference: number) =>
          churchillChu(
            rayleigh(water, first.tube.outsideDiameter, first.film, difference),
            first.Pr,
          );
        const lost = 1 - last.ho / first.ho;
        expect(lost).toBeLessThan(0.5 * (1 - as(last.difference) / as(first.difference)));
      }
    },
  );
});

describe('wall and scale', () => {
  claim('It conducts far less than copper would.', () => {
    for (const k of [TUBE_METALS.stainlessSteel, WALL_METALS.carbonSteel]) {
      expect(k).toBeLessThan(TUBE_METALS.copper / 5);
    }
  });

  claim(
    'A millimetre of scale would hold back more than the whole wall does, for stone conducts less than a hundredth of what copper does.',
    () => {
      for (const k of [0.5, 1.1, 2.2]) {
        expect(k).toBeLessThan(TUBE_METALS.copper / 100);
        for (const [wall, metal] of [
          [0.8e-3, TUBE_METALS.copper],
          [4e-3, TUBE_METALS.copper],
          [1e-3, TUBE_METALS.stainlessSteel],
          [4e-3, TUBE_METALS.stainlessSteel], // the thickest that can be set
        ]) {
          const held = tubeWall(0.022, 0.022 - 2 * wall, metal);
          expect(scaleResistance(1e-3, k)).toBeGreaterThan(held);
        }
      }
    },
  );
});

describe('what the coil passes', () => {
  claim(
    [
      'The coil never runs here: … go through it.',
      'What reaches the water is what the coil passes, and here the coil never runs: … go through it.',
    ],
    () => {
      const still = run({ 'start.hotShare': 100, 'run.duration': 1 });
      expect(still.marks.map(({ kind }) => kind)).not.toContain('hotWaterCalled');
      const { coilFlow } = still.trace.of;
      expect([...coilFlow.subarray(0, still.trace.samples)].some((flow) => flow > 0)).toBe(false);
      expect(still.measures.coilHeat).toBeLessThan(0.01 * run().measures.coilHeat);
      for (const section of [passes, rule]) {
        expect(toldOf(section, still, 1800)).toMatch(/coil never runs/);
        expect(toldOf(section, run(), 900)).not.toContain('never');
      }
    },
  );

  claim(
    'At full output the flow settles where the coil can pass all of …: more surface would change hardly anything, here for ….',
    () => {
      const lengths = [12, 16, 20];
      for (const minutes of [8, 11, 14]) {
        const heat = lengths.map((length) =>
          sampled(run({ 'coil.length': length }), 'coilHeat', 60 * minutes),
        );
        // two thirds more surface, a fiftieth more heat
        expect(heat[2] / heat[0] - 1).toBeLessThan(0.02);
        const flow = lengths.map((length) =>
          sampled(run({ 'coil.length': length }), 'flow', 60 * minutes),
        );
        expectFalling(flow);
      }
      // past the flow limit it would
      expect(sampled(run({ 'coil.length': 20 }), 'coilHeat', 1680)).toBeGreaterThan(
        1.1 * sampled(run(), 'coilHeat', 1680),
      );
    },
  );
});
