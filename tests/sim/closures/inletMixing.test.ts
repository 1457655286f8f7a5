import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  eddyFactorAt,
  type Inlet,
  inletEddyFactor,
  inletReynolds,
  inletRichardson,
  turbulentShare,
} from '../../../sim/closures/inletMixing.ts';
import { tabulatedWater } from '../../../sim/closures/water.ts';

const water = tabulatedWater();
const inlets: readonly Inlet[] = ['side', 'perforated', 'impingement'];

describe('inlet Richardson number', () => {
  test('10 °C into 60 °C over a height of 1.2 m at 0.5 m/s: 0.7900', () => {
    // by hand with 999.70 and 983.20 kg/m³: 9.80665 × 16.50 / 983.20 × 1.2 / 0.25
    expect(inletRichardson(water, 10, 60, 1.2, 0.5)).toBeCloseTo(0.79, 3);
  });

  test('on the bore of 20 mm it is 60 times smaller, on the rise in a 0.45 m store 256 289 times larger', () => {
    const rise = 0.5 * (0.02 / 0.45) ** 2; // m/s, same flow
    const here = inletRichardson(water, 10, 60, 1.2, 0.5);
    expect(here / inletRichardson(water, 10, 60, 0.02, 0.5)).toBeCloseTo(60, 9); // rounding
    // by hand 22.5⁴
    expect(inletRichardson(water, 10, 60, 1.2, rise) / here / 256_289).toBeCloseTo(1, 6);
  });

  test('it is 0 between equal temperatures, below 0 for 60 °C into 10 °C, infinite at rest', () => {
    expect(inletRichardson(water, 30, 30, 1.2, 0)).toBe(0);
    expect(inletRichardson(water, 60, 10, 1.2, 0.5)).toBeLessThan(0);
    expect(inletRichardson(water, 10, 60, 1.2, 0)).toBe(Number.POSITIVE_INFINITY);
  });

  test('in 300 cases twice the velocity is a quarter, and a hotter store holds better', () => {
    const velocity = fc.double({ min: 0.01, max: 3, noNaN: true });
    const store = fc.double({ min: 12, max: 85, noNaN: true });
    fc.assert(
      fc.property(velocity, store, (u, T) => {
        const Ri = inletRichardson(water, 10, T, 1.2, u);
        expect(inletRichardson(water, 10, T, 1.2, 2 * u) / Ri).toBeCloseTo(0.25, 12); // rounding
        expect(inletRichardson(water, 10, T + 1, 1.2, u)).toBeGreaterThan(Ri);
      }),
      { numRuns: 300 },
    );
  });
});

test('0.5 m/s of water at 20 °C in a bore of 20 mm has a Reynolds number of 9966', () => {
  // by hand 998.2 × 0.5 × 0.02 / 1.0016e-3 = 9966, viscosity to 0.05 %
  expect(Math.abs(inletReynolds(water, 20, 0.02, 0.5) / 9966 - 1)).toBeLessThan(1e-3);
});

describe('how much of a turbulent jet there is', () => {
  test('none up to Re 2100, half at 6050, all from 10 000 on', () => {
    for (const none of [0, 1000, 2100]) expect(turbulentShare(none)).toBe(0);
    expect(turbulentShare(6050)).toBeCloseTo(0.5, 12); // the middle, by symmetry; rounding
    for (const all of [10_000, 30_000]) expect(turbulentShare(all)).toBe(1);
  });

  test('from Re 0 to 12 000 it never falls, and its slope has no jump larger than a tenth of the steepest', () => {
    const step = 50;
    const slopes = Array.from({ length: 240 }, (_, i) => {
      return (turbulentShare((i + 1) * step) - turbulentShare(i * step)) / step;
    });
    const steepest = Math.max(...slopes);
    expect(steepest / (1.5 / 7900)).toBeCloseTo(1, 2); // by hand: 3/2 over the width, in the middle
    slopes.forEach((slope, i) => {
      expect(slope).toBeGreaterThanOrEqual(0);
      // by hand at either end 6 × 50 / 7900 of 1.5, 0.025; a corner would be 1
      if (i > 0) expect(Math.abs(slope - slopes[i - 1]) / steepest).toBeLessThan(0.1);
    });
  });
});

describe('eddy factor at the inlet', () => {
  test.each([
    // by hand: a 10^(4b) with four figures
    ['side', 0.344 * 3767],
    ['perforated', 3.54 * 220.8],
    ['impingement', 4.75 * 122.5],
  ] as const)('%s at Re/Ri 10 000: %f', (inlet, factor) => {
    expect(Math.abs(inletEddyFactor(inlet, 1e4, 1) / factor - 1)).toBeLessThan(5e-4);
  });

  test('the three disagree: at Re/Ri 100 the side inlet is the gentlest, at 10 000 the roughest', () => {
    const at = (ratio: number) => inlets.map((inlet) => inletEddyFactor(inlet, ratio, 1));
    const [gentle, ...others] = at(100);
    expect(gentle).toBeLessThan(Math.min(...others) / 2);
    const [rough, ...rest] = at(10_000);
    expect(rough).toBeGreaterThan(Math.max(...rest) * 1.5);
    // side and perforated meet where (Re/Ri)^0.308 = 3.54 / 0.344, at 1940 by hand
    const meet = (3.54 / 0.344) ** (1 / 0.308);
    expect(Math.round(meet / 10)).toBe(194);
    expect(inletEddyFactor('side', meet, 1) / inletEddyFactor('perforated', meet, 1)).toBeCloseTo(
      1,
      9,
    ); // rounding
  });

  test('a plain inlet and one against a plate meet at Re/Ri 1161: below it the plate stirs more', () => {
    const meet = (4.75 / 0.344) ** (1 / (0.894 - 0.522)); // by hand
    expect(Math.round(meet)).toBe(1161);
    const ratio = (at: number) =>
      inletEddyFactor('side', at, 1) / inletEddyFactor('impingement', at, 1);
    expect(ratio(meet)).toBeCloseTo(1, 9); // rounding
    expect(ratio(meet / 2)).toBeLessThan(0.8); // 2^0.372 is 1.294
    expect(ratio(2 * meet)).toBeGreaterThan(1.25);
  });

  test('it is 1 at rest and infinite when nothing holds the layers apart', () => {
    for (const inlet of inlets) {
      expect(inletEddyFactor(inlet, 0, 0)).toBe(1);
      expect(inletEddyFactor(inlet, 1e4, Number.POSITIVE_INFINITY)).toBe(1);
      expect(inletEddyFactor(inlet, 1e4, 0)).toBe(Number.POSITIVE_INFINITY);
      expect(inletEddyFactor(inlet, 1e4, -2)).toBe(Number.POSITIVE_INFINITY);
    }
  });

  test('in 500 cases it never falls with Re nor rises with Ri, and is 1 or more', () => {
    const Re = fc.double({ min: 0, max: 1e5, noNaN: true });
    const Ri = fc.double({ min: 1e-4, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...inlets), Re, Ri, (inlet, reynolds, richardson) => {
        const here = inletEddyFactor(inlet, reynolds, richardson);
        expect(here).toBeGreaterThanOrEqual(1);
        expect(inletEddyFactor(inlet, reynolds * 1.1, richardson)).toBeGreaterThanOrEqual(here);
        expect(inletEddyFactor(inlet, reynolds, richardson * 1.1)).toBeLessThanOrEqual(here);
      }),
      { numRuns: 500 },
    );
  });
});

describe('decay from 41 at the inlet over a store of ten reaches', () => {
  test.each([
    // by hand: A = 40 / 0.9 and B = 41 − A, A/n + B
    [0, 41],
    [0.1, 41],
    [0.2, 41 - 40 / 0.9 / 2],
    [0.5, 41 - (40 / 0.9) * 0.8],
    [1, 1],
    [2, 1],
  ])('at %f m of 1 m it is %f', (distance, factor) => {
    expect(eddyFactorAt(41, distance, 0.1, 1)).toBeCloseTo(factor, 12); // rounding
  });

  test('in 300 cases it falls from the inlet to 1, and is 1 all the way without mixing', () => {
    const place = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(place, place, fc.double({ min: 1, max: 1000, noNaN: true }), (a, b, atInlet) => {
        const near = eddyFactorAt(atInlet, Math.min(a, b), 0.05, 1);
        const far = eddyFactorAt(atInlet, Math.max(a, b), 0.05, 1);
        expect(near).toBeGreaterThanOrEqual(far);
        expect(near).toBeLessThanOrEqual(atInlet * (1 + 1e-12)); // rounding
        expect(far).toBeGreaterThanOrEqual(1);
        expect(eddyFactorAt(1, a, 0.05, 1)).toBe(1);
      }),
      { numRuns: 300 },
    );
  });
});
