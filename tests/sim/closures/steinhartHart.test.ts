import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isSolvable, type SteinhartHart } from '../../../shared/steinhartHart.ts';
import {
  steinhartHartResistance,
  steinhartHartTemperature,
} from '../../../sim/closures/steinhartHart.ts';
import { thermistorResistance } from '../../../sim/closures/thermistor.ts';

/** Coefficients of a usual 10 kΩ thermistor; from memory. */
const usual: SteinhartHart = { A: 1.129148e-3, B: 2.34125e-4, C: 8.76741e-8 };

/** The three coefficients through three points of ohms and °C: three equations, by elimination. */
function through(points: readonly (readonly [ohms: number, celsius: number])[]): SteinhartHart {
  const [[L1, Y1], [L2, Y2], [L3, Y3]] = points.map(([R, t]) => [Math.log(R), 1 / (t + 273.15)]);
  const slope2 = (Y2 - Y1) / (L2 - L1);
  const slope3 = (Y3 - Y1) / (L3 - L1);
  const C = (slope3 - slope2) / (L3 - L2) / (L1 + L2 + L3);
  const B = slope2 - C * (L1 * L1 + L1 * L2 + L2 * L2);
  return { A: Y1 - L1 * (B + C * L1 * L1), B, C };
}

/** Ohms by the closed form of the cubic, for B and C above 0. */
function byClosedForm(temperature: number, { A, B, C }: SteinhartHart): number {
  const x = (A - 1 / (temperature + 273.15)) / C;
  const y = Math.sqrt((B / (3 * C)) ** 3 + (x * x) / 4);
  return Math.exp(Math.cbrt(y - x / 2) - Math.cbrt(y + x / 2));
}

describe('coefficients of a usual 10 kΩ thermistor', () => {
  test('give 25 °C for 10 000 Ω within 0.001 K', () => {
    // by hand: 1.129148e-3 + 2.34125e-4 × 9.21034 + 8.76741e-8 × 781.3166 = 1/298.1497
    expect(steinhartHartTemperature(10_000, usual)).toBeCloseTo(25, 3); // coefficients have 6 figures
  });

  test('give the ohms of the closed form of the cubic within 1e-11, −20 to 120 °C in steps of 1 K', () => {
    for (let T = -20; T <= 120; T++) {
      const found = steinhartHartResistance(T, usual) ?? Number.NaN;
      // the closed form takes two cube roots of about 27 apart, which costs it two figures
      expect(Math.abs(found / byClosedForm(T, usual) - 1)).toBeLessThan(1e-11);
    }
  });

  test('through 3 points of the two-point law with beta 3977 K give 3 coefficients, the last near 0, and its ohms', () => {
    const ohms = (T: number) => thermistorResistance(T, 10_000, 3977);
    const curve = through([0, 25, 70].map((T) => [ohms(T), T]));
    expect(Math.abs(curve.B * 3977 - 1)).toBeLessThan(1e-8); // B is 1/beta; elimination rounds
    expect(Math.abs(curve.C)).toBeLessThan(1e-14);
    for (const T of [-20, 10, 60, 100, 120]) {
      const found = steinhartHartResistance(T, curve) ?? Number.NaN;
      expect(Math.abs(found / ohms(T) - 1)).toBeLessThan(1e-9); // as C
    }
  });
});

describe('which coefficients describe a thermistor', () => {
  const cases: readonly (readonly [string, SteinhartHart, boolean])[] = [
    ['a usual thermistor', usual, true],
    ['no cubic part', { A: 1e-3, B: 2.5e-4, C: 0 }, true],
    ['a small cubic part below 0', { A: 1e-3, B: 2.5e-4, C: -1e-7 }, true],
    [
      'a cubic part so far below 0 that the ohms turn before −20 °C',
      { A: 1e-3, B: 2.5e-4, C: -1e-6 },
      false,
    ],
    ['a cubic part alone', { A: 2.4e-3, B: 0, C: 1e-6 }, true],
    ['B below 0, but falling from 120 °C down', { A: 2e-3, B: -1e-5, C: 1e-6 }, true],
    ['B below 0 that turns between', { A: 3.5e-3, B: -2e-4, C: 1.5e-6 }, false],
    ['B below 0 and no cubic part', { A: 5e-3, B: -2e-4, C: 0 }, false],
    ['all 0', { A: 0, B: 0, C: 0 }, false],
    ['A so high that 120 °C needs less than 1 Ω', { A: 2.6e-3, B: 2e-4, C: 1e-7 }, false],
    ['so flat that −20 °C needs more than 100 MΩ', { A: 1e-3, B: 1e-5, C: 1e-9 }, false],
    ['coefficients ten times too small', { A: 1.129148e-4, B: 2.34125e-5, C: 8.76741e-9 }, false],
    ['no number', { A: Number.NaN, B: 2e-4, C: 1e-7 }, false],
  ];
  test.each(cases)('%s: %o is solvable: %s', (_what, curve, solvable) => {
    expect(isSolvable(curve)).toBe(solvable);
  });

  test('what is not solvable has no ohms at −20 °C or at 120 °C', () => {
    for (const [, curve, solvable] of cases) {
      const ends = [-20, 120].map((T) => steinhartHartResistance(T, curve));
      expect(ends.includes(null)).toBe(!solvable);
    }
  });

  test('beyond the turn at exp(18.3) Ω the temperature stays at its end, −25.8 °C', () => {
    const curve: SteinhartHart = { A: 1e-3, B: 2.5e-4, C: -2.5e-7 };
    const turn = Math.sqrt(2.5e-4 / 7.5e-7); // where the slope B + 3 C L² is nothing
    const end = 1 / (1e-3 + 2.5e-4 * turn - 2.5e-7 * turn ** 3) - 273.15;
    expect(steinhartHartTemperature(Math.exp(turn + 1), curve)).toBeCloseTo(end, 9); // rounding
    expect(end).toBeCloseTo(-25.8, 1); // by hand, to 0.1 K
    expect(isSolvable(curve)).toBe(true);
  });

  test('1 Ω of a curve with A below 0 is beyond all temperatures', () => {
    expect(steinhartHartTemperature(1, { A: -1e-4, B: 4e-4, C: 0 })).toBe(Number.POSITIVE_INFINITY);
  });
});

test('300 solvable sets of coefficients fall all the way and lead back within 1e-8 K', () => {
  const coefficients = fc
    .record({
      A: fc.double({ min: -1e-3, max: 2.5e-3, noNaN: true }),
      B: fc.double({ min: -1e-4, max: 5e-4, noNaN: true }),
      C: fc.double({ min: -5e-7, max: 2e-6, noNaN: true }),
    })
    .filter(isSolvable);
  fc.assert(
    fc.property(coefficients, (curve) => {
      let before = Number.POSITIVE_INFINITY;
      for (let T = -20; T <= 120; T += 10) {
        const ohms = steinhartHartResistance(T, curve);
        if (ohms === null) return false;
        // near a turn of the curve a kelvin is next to nothing in ohms, so their last bits weigh more
        if (!(ohms < before && Math.abs(steinhartHartTemperature(ohms, curve) - T) < 1e-8))
          return false;
        before = ohms;
      }
      return true;
    }),
    { numRuns: 300 },
  );
});
