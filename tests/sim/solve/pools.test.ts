import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  invertedBorders,
  largestInversion,
  largestSinking,
  makePools,
  type Pools,
  regroup,
} from '../../../sim/solve/pools.ts';

/** Regroups a profile under given net heats, [layer] W. */
function regrouped(profile: readonly number[], net: readonly number[] = profile.map(() => 0)) {
  const T = [...profile];
  const pools = makePools(T.length);
  const heats = Float64Array.from(net);
  regroup(pools, T, () => heats, T.length);
  return { T, pools, heats, firsts: Array.from(pools.first.slice(0, pools.count)) };
}

/** Rate of each layer when its pool shares the heat of its layers, K/s. */
function meanRates({ first, count }: Pools, heats: Float64Array, capacity: number): number[] {
  const rates = new Array<number>(heats.length).fill(0);
  for (let pool = 0; pool < count; pool++) {
    const part = heats.slice(first[pool], first[pool + 1]);
    rates.fill(sum(part) / (capacity * part.length), first[pool], first[pool + 1]);
  }
  return rates;
}

const sum = (values: ArrayLike<number>) => Array.from(values).reduce((a, b) => a + b, 0);
const anyProfile = fc.array(fc.double({ min: 5, max: 85, noNaN: true }), {
  minLength: 2,
  maxLength: 40,
});
const anyNet = fc.array(fc.double({ min: -5000, max: 5000, noNaN: true }), {
  minLength: 40,
  maxLength: 40,
});

describe('mixing of what is inverted', () => {
  test('50, 20, 40, 30, 60 °C from the base mix to 35, 35, 35, 35, 60 °C', () => {
    expect(regrouped([50, 20, 40, 30, 60]).T).toEqual([35, 35, 35, 35, 60]);
  });

  test('70, 10, 10, 10, 60 °C mix to four at 25 °C under 60 °C', () => {
    // 70, 10, 10, 60 weighted 1, 2, 1, 1: layers are equal, so the double one is two
    expect(regrouped([70, 10, 10, 10, 60]).T).toEqual([25, 25, 25, 25, 60]);
  });

  test('200 profiles come out rising, with their heat, and the same when mixed again', () => {
    fc.assert(
      fc.property(anyProfile, (profile) => {
        const { T } = regrouped(profile);
        for (let i = 1; i < T.length; i++) expect(T[i]).toBeGreaterThanOrEqual(T[i - 1]);
        expect(Math.abs(sum(T) - sum(profile))).toBeLessThan(1e-10); // rounding of 3400
        const again = regrouped(T).T;
        // a mean of equal numbers may differ in the last place
        for (let i = 0; i < T.length; i++) expect(Math.abs(again[i] - T[i])).toBeLessThan(1e-12);
      }),
      { numRuns: 200 },
    );
  });

  test('200 profiles never lose entropy: the sum of ln T does not fall', () => {
    const entropy = (T: readonly number[]) => sum(T.map((t) => Math.log(t + 273.15)));
    fc.assert(
      fc.property(anyProfile, (profile) => {
        expect(entropy(regrouped(profile).T)).toBeGreaterThan(entropy(profile) - 1e-11); // rounding of 230
      }),
      { numRuns: 200 },
    );
  });

  test('200 profiles turned over and read below zero mix to the same, turned over', () => {
    fc.assert(
      fc.property(anyProfile, (profile) => {
        const turned = (T: readonly number[]) => [...T].reverse().map((t) => -t);
        const one = turned(regrouped(profile).T);
        const other = regrouped(turned(profile)).T;
        // sums are taken from the other end; the 1e-6 K within which layers count as equal may pool one pair more
        for (let i = 0; i < one.length; i++) expect(Math.abs(other[i] - one[i])).toBeLessThan(2e-6);
      }),
      { numRuns: 200 },
    );
  });
});

describe('pools of what convects together', () => {
  test('four equal layers heated by 100 W at the base warm as one', () => {
    expect(regrouped([20, 20, 20, 20], [100, 0, 0, 0]).firsts).toEqual([0]);
  });

  test('four equal layers heated by 100 W at the third leave the two below alone', () => {
    expect(regrouped([20, 20, 20, 20], [0, 0, 100, 0]).firsts).toEqual([0, 1, 2]);
  });

  test('four equal layers cooled by 100 W at the top sink as one', () => {
    expect(regrouped([20, 20, 20, 20], [0, 0, 0, -100]).firsts).toEqual([0]);
  });

  test('200 heats into 40 equal layers: no heat sinks inside a pool and rates rise upwards', () => {
    fc.assert(
      fc.property(anyNet, (net) => {
        const { pools, heats } = regrouped(new Array(40).fill(30), net);
        const rates = meanRates(pools, heats, 18_000);
        expect(largestSinking(pools, heats, rates, 18_000)).toBeLessThan(1e-8); // rounding of 5 kW
        for (let i = 1; i < 40; i++) expect(rates[i]).toBeGreaterThanOrEqual(rates[i - 1]);
        expect(Math.abs(18_000 * sum(rates) - sum(net))).toBeLessThan(1e-7); // no heat lost
      }),
      { numRuns: 200 },
    );
  });

  test('the largest inversion between three pools is the 2 K of the upper two', () => {
    const pools = makePools(3);
    const T = [30, 29, 27];
    expect(largestInversion(pools, (i) => T[i])).toBe(2);
    expect(largestInversion(pools, (i) => T[i], [1])).toBe(1);
    expect(invertedBorders(pools, T)).toEqual([1, 2]);
    expect(invertedBorders(pools, [20, 30, 25])).toEqual([2]);
  });
});
