import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { constantWater } from '../../../sim/closures/water.ts';
import { makeCylinder } from '../../../sim/plant/cylinder.ts';
import { makePools, regroup } from '../../../sim/solve/pools.ts';
import { layerHeats, storeRates } from '../../../sim/solve/storeRates.ts';
import { plainVariant } from '../../make/plainVariant.ts';

const LAYERS = 40;
const base = plainVariant('store');
const cylinder = makeCylinder({ ...base, run: { ...base.run, layers: LAYERS } }, constantWater());
const { layerCapacity, conductance, lossConductance, surroundings } = cylinder;

const profile = fc.array(fc.double({ min: 5, max: 85, noNaN: true }), {
  minLength: LAYERS,
  maxLength: LAYERS,
});
const heat = fc.array(fc.double({ min: -5000, max: 5000, noNaN: true }), {
  minLength: LAYERS,
  maxLength: LAYERS,
});

describe('rates of a store that stirs itself', () => {
  test('four layers at 20 °C in surroundings of 20 °C, 100 W into the lowest: each warms by 25 W over its heat', () => {
    const four = makeCylinder({ ...base, run: { ...base.run, layers: 4 } }, constantWater());
    const pools = makePools(4);
    pools.first.set([0, 4]);
    pools.count = 1;
    const rates = [0, 0, 0, 0];
    const lost = storeRates(
      pools,
      { ...four, surroundings: 20 },
      [20, 20, 20, 20],
      Float64Array.of(100, 0, 0, 0),
      rates,
    );
    expect(lost).toBe(0);
    for (const rate of rates) expect(rate).toBeCloseTo(25 / four.layerCapacity, 12);
  });

  test('200 profiles: a pool has the mean rate of what its layers would have alone, and the loss is that of all layers', () => {
    fc.assert(
      fc.property(profile, heat, (temperatures, heats) => {
        const net = Float64Array.from(heats);
        const T = [...temperatures];
        const pools = makePools(LAYERS);
        const alone = new Float64Array(LAYERS);
        const heatsAt = () => {
          layerHeats(cylinder, T, net, alone);
          return alone;
        };
        regroup(pools, T, heatsAt, LAYERS);
        heatsAt();
        const rates = new Array<number>(LAYERS).fill(0);
        const lost = storeRates(pools, cylinder, T, net, rates);
        let loss = 0;
        for (let layer = 0; layer < LAYERS; layer++) {
          loss += lossConductance[layer] * (T[layer] - surroundings);
        }
        expect(lost).toBeCloseTo(loss, 9);
        for (let pool = 0; pool < pools.count; pool++) {
          const from = pools.first[pool];
          const to = pools.first[pool + 1];
          let sum = 0;
          for (let layer = from; layer < to; layer++) sum += alone[layer];
          for (let layer = from; layer < to; layer++) {
            // rounding of 5 kW
            expect(Math.abs(rates[layer] * layerCapacity * (to - from) - sum)).toBeLessThan(1e-8);
          }
        }
      }),
      { numRuns: 200 },
    );
  });

  test('heat into a layer by itself: from outside, from both neighbours, less its own loss', () => {
    const T = Array.from({ length: LAYERS }, (_, layer) => 20 + layer * layer * 0.02);
    const into = new Float64Array(LAYERS);
    layerHeats(cylinder, T, new Float64Array(LAYERS).fill(7), into);
    const k = 11;
    const byHand =
      7 +
      conductance * (T[k - 1] - 2 * T[k] + T[k + 1]) -
      lossConductance[k] * (T[k] - surroundings);
    expect(into[k]).toBeCloseTo(byHand, 10);
  });
});
