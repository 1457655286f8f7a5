import { describe, expect, test } from 'vitest';
import type { Variant } from '../../../shared/variant.ts';
import { constantWater } from '../../../sim/closures/water.ts';
import { makeCylinder } from '../../../sim/plant/cylinder.ts';
import { immersionRates, makeImmersion } from '../../../sim/plant/immersion.ts';
import { idealVariant } from '../../make/idealVariant.ts';

/** 3 kW at a height in a store of 1.2 m in 20 layers of 60 mm. */
function at(height: number, used: Variant['immersion']['used'] = 'withBoiler') {
  const ideal = idealVariant({ layers: 20 });
  const variant = { ...ideal, immersion: { ...ideal.immersion, used, height, output: 3000 } };
  return makeImmersion(variant, makeCylinder(variant, constantWater()));
}

describe('in 20 layers of 60 mm', () => {
  test.each([
    [0.02, 0],
    [0.07, 1],
    [0.33, 5],
    [0.35, 5],
    [0.37, 6],
    [1.19, 19],
  ])('an element at %d m is in layer %d, whose water is around it', (height, layer) => {
    expect(at(height)?.layer).toBe(layer);
  });

  test('an element at 3 m, above the store, is in the top layer, 19', () => {
    expect(at(3)?.layer).toBe(19);
  });

  test('one that is off is none', () => {
    expect(at(0.33, 'no')).toBe(null);
  });
});

describe('heat', () => {
  test('of 3000 W goes to its layer on top of what is there, and is returned', () => {
    const net = new Float64Array(20).fill(10);
    expect(immersionRates(at(0.33), true, net)).toBe(3000);
    expect(net[5]).toBe(3010);
    expect(net.reduce((sum, one) => sum + one, 0)).toBe(3200);
  });

  test('is 0 W while it is off or when there is none', () => {
    const net = new Float64Array(20);
    expect(immersionRates(at(0.33), false, net)).toBe(0);
    expect(immersionRates(null, true, net)).toBe(0);
    expect(Math.max(...net)).toBe(0);
  });
});
