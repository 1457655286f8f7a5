import { describe, expect } from 'vitest';
import { tabulatedWater } from '../../sim/closures/water.ts';
import { makeInletJet, jetShares } from '../../sim/plant/inletJet.ts';
import { heatUpWorking } from '../../src/explain/heatUpWorking.ts';
import { readingAt } from '../../src/explain/reading.ts';
import { mixingWorking } from '../../src/explain/storeWorkings.ts';
import { claim } from '../support/claim.ts';
import { expectMoves } from '../support/expectMoves.ts';
import { expectFalling, expectRising } from '../support/expectOrder.ts';
import { houseWith, runWith, type Settings } from '../support/houseWith.ts';

const alone: Settings = { 'heating.arrangement': 'hotWaterOnly' };
const water = tabulatedWater();
/** A store that is hot above and cold about its coil. */
const halfHot: Settings = { ...alone, 'start.hotShare': 50, 'start.hotTemperature': 58 };

/** The layers that lie wholly between two heights at a moment, °C. @param at  s */
function between(settings: Settings, at: number, from: number, to: number): number[] {
  const result = runWith(settings);
  const { layers } = readingAt(result, at);
  const thick = result.variant.cylinder.height / layers.length;
  return layers.filter((_, i) => i * thick >= from && (i + 1) * thick <= to);
}
const spread = (temperatures: readonly number[]) =>
  Math.max(...temperatures) - Math.min(...temperatures);

describe('layers', () => {
  claim(
    [
      'What the coil warms is lighter than what stands above it, so it … until nothing cooler lies over it, and the water above the coil warms as one body.',
      'rises and mixes',
    ],
    () => {
      expectFalling([5, 10, 20, 40, 60, 80].map((T) => water.density(T)));
      for (const minutes of [5, 10, 20]) {
        const cold = between(alone, 60 * minutes, 0.48, 1.32);
        expect(spread(cold)).toBeLessThan(0.5);
        expect(cold[0]).toBeGreaterThan(10 + 0.8 * minutes); // and it warms: 24 kW on 0.13 m³ and more
      }
      // with hot water above it the body ends where that begins, at 0.66 m, which stays as it was
      const upTo = (from: number, to: number) => between(halfHot, 300, from, to);
      expect(spread(upTo(0.48, 0.62))).toBeLessThan(0.5);
      expect(upTo(0.48, 0.62)[0]).toBeGreaterThan(15);
      expect(Math.min(...upTo(0.8, 1.32))).toBeGreaterThan(57);
    },
  );
  claim(
    [
      'Layer above: the mean of all that stands higher; it stays apart where it is warmer.',
      'what the coil warms rises and mixes',
    ],
    () => {
      expectMoves('mixing', { T1: [41, 80], T2: [10, 40] }, { T1: 'up', T2: 'up' });
      const worked = (settings: Settings, at: number) => {
        const result = runWith(settings);
        return mixingWorking(result, readingAt(result, at), 'then');
      };
      for (const at of [300, 900, 1500]) {
        expect(worked(alone, at).title).toBe('then what the coil warms rises and mixes');
      }
      const apart = worked(halfHot, 300);
      expect(apart.title).toBe('then what stands above the coil stays there');
      expect(apart.steps[0].values.result).toBeUndefined();
    },
  );

  claim(
    'With the mean coil output of this run both times come near its own; with the boiler’s output the trade’s is as much too short as the coil is slower than the boiler.',
    () => {
      for (const settings of [{}, { 'coil.length': 6 }, { 'boiler.output': 12 }]) {
        const result = runWith({ ...alone, ...settings });
        const { recovery, waitingTime, meanCoilHeat } = result.measures;
        const own = (recovery ?? Number.NaN) - waitingTime;
        const [, time, trade] = heatUpWorking(result).steps;
        // the wall and the loss take what the formulas leave out
        for (const { values } of [time, trade]) {
          expect((values.result ?? Number.NaN) / own).toBeGreaterThan(0.93);
          expect((values.result ?? Number.NaN) / own).toBeLessThan(1.01);
        }
        const { output } = result.variant.boiler;
        const { volume, rise } = trade.values;
        const byBoiler = trade.record.compute({ volume, rise, power: output });
        const short = byBoiler / own / ((meanCoilHeat ?? Number.NaN) / output);
        expect(short).toBeGreaterThan(0.93);
        expect(short).toBeLessThan(1.01);
      }
    },
  );
});

describe('the jet of cold water', () => {
  const height = 1.32;
  /** How far up nine tenths of what enters stay, m, in a store at one temperature. */
  function reach(hot: number, flow: number, cold = 10) {
    const jet = makeInletJet(houseWith({ 'draw.inlet': 'plain' }), water);
    if (!jet) throw new Error('expected a jet');
    const share = new Float64Array(200);
    jetShares(jet, flow / 60_000, cold, new Float64Array(200).fill(hot), share);
    let [layer, sum] = [0, 0];
    while (sum < 0.9) sum += share[layer++];
    return (layer * height) / 200;
  }

  claim(
    [
      'A jet would stir the deeper the faster it is and the less it differs from what it meets.',
      'Such a jet stirs the deeper the faster it is and the less it differs from what it meets',
    ],
    () => {
      for (const hot of [40, 60]) expectRising([6, 10, 15, 25].map((flow) => reach(hot, flow)));
      for (const flow of [10, 20]) expectRising([70, 50, 30, 15].map((hot) => reach(hot, flow)));
    },
  );
  claim(
    'against hot water it soon sinks back, among water as cold as itself it stirs all of it',
    () => {
      for (const flow of [8, 12, 16]) {
        expect(reach(60, flow)).toBeLessThan(height / 3);
        for (const cold of [5, 10, 20]) {
          expect(reach(cold, flow, cold)).toBeCloseTo(0.05 + 0.9 * (height - 0.05), 1); // alike at every height
        }
      }
    },
  );
});
