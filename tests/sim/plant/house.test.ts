import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fieldAt } from '../../../shared/fields.ts';
import { plainVariant } from '../../make/plainVariant.ts';
import { tabulatedWater } from '../../../sim/closures/water.ts';
import { fabricStart, houseLoss, heatToFabric, makeHouse } from '../../../sim/plant/house.ts';
import { makeRadiators, radiatorHeat, radiatorsStart } from '../../../sim/plant/radiators.ts';

const base = plainVariant('house');
const house = makeHouse(base);
const { outside } = base.house;

/** Any heat loss and floor area within their limits. */
const anyHouse = fc
  .record({ heatLoss: limits('house.heatLoss'), floorArea: limits('house.floorArea') })
  .map((changes) => makeHouse({ ...base, house: { ...base.house, ...changes } }));

function limits(path: 'house.heatLoss' | 'house.floorArea') {
  const field = fieldAt(path);
  if (field.kind !== 'number') throw new Error(`${path} is no number`);
  return fc.integer({ min: field.least, max: field.most });
}

describe('a house of air and fabric', () => {
  test('loses its declared 250 W/K in balance: 5 kW at 20 K', () => {
    const fabric = balanced(house, 20);
    expect(houseLoss(house, 20, fabric, outside)).toBeCloseTo(250 * 20, 6); // rounding
  });

  test('any house within its limits, 200 of them, has conductances above 0 W/K', () => {
    fc.assert(
      fc.property(anyHouse, ({ airToFabric, airToOutside, fabricToOutside }) => {
        for (const conductance of [airToFabric, airToOutside, fabricToOutside]) {
          expect(conductance).toBeGreaterThan(0);
          expect(conductance).toBeLessThan(1e6);
        }
      }),
      { numRuns: 200 },
    );
  });

  test('any house within its limits, 200 of them, starts with fabric between outside and air or a little above', () => {
    fc.assert(
      fc.property(anyHouse, (one) => {
        const fabric = fabricStart(one, 20, outside);
        expect(fabric).toBeGreaterThan(outside - 1e-9);
        expect(fabric).toBeLessThan(20 + 20); // radiation from the radiators may lift it over the air
      }),
      { numRuns: 200 },
    );
  });

  test('starts in balance: with radiators at the start neither air nor fabric moves by 1e-9 of the heat', () => {
    const fabric = fabricStart(house, 20, outside);
    const need = houseLoss(house, 20, fabric, outside);
    const radiant = house.radiantShare * need;
    const toFabric = heatToFabric(house, 20, fabric);
    expect(Math.abs(radiant + toFabric - house.fabricToOutside * (fabric - outside))).toBeLessThan(
      need * 1e-9,
    );
    const air = need - radiant - toFabric - house.airToOutside * (20 - outside);
    expect(Math.abs(air)).toBeLessThan(need * 1e-9);
  });
});

describe('radiators', () => {
  const radiators = makeRadiators(base, tabulatedWater());

  test('rated 12 kW give 12 kW at 50 K and 0 W at 0 K', () => {
    expect(radiatorHeat(radiators, 70, 20)).toBeCloseTo(12_000, 6);
    expect(radiatorHeat(radiators, 20, 20)).toBe(0);
  });

  test('start so warm that they give what the house needs, 3 and 9 kW', () => {
    for (const need of [3000, 9000]) {
      const start = radiatorsStart(radiators, 20, need);
      expect(radiatorHeat(radiators, start, 20)).toBeCloseTo(need, 6); // an inversion: rounding
    }
  });

  test('start no hotter than 80 °C however much is needed, and at room temperature for 0 W', () => {
    expect(radiatorsStart(radiators, 20, 1e6)).toBe(80);
    expect(radiatorsStart(radiators, 20, 0)).toBe(20);
  });

  test('of 80 l hold 80 × 988.03 × 4181.2 / 1000 J/K of water at 50 °C', () => {
    expect(radiators.capacity / (0.08 * 988.0345 * 4181.226)).toBeCloseTo(1, 5); // table of water, 0.001 %
  });
});

/** Fabric temperature with no radiator, only air held at one temperature. */
function balanced({ airToFabric, fabricToOutside }: typeof house, air: number): number {
  return (airToFabric * air + fabricToOutside * outside) / (airToFabric + fabricToOutside);
}
