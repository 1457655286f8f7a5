import { describe, expect, test } from 'vitest';
import { insulationLoss, useFactor } from '../../../sim/closures/insulationLoss.ts';
import {
  CLASSES,
  classBound,
  energyClassOf,
  guideLimit,
  lossConductance,
} from '../../../sim/closures/standingLoss.ts';

const KWH = 3.6e6; // J

describe('by insulation, source: sap, Tables 2 and 2a', () => {
  test.each([
    // litres, mm, kWh in 24 h worked from the tables to 0.01
    [120, 25, 2.88],
    [120, 50, 1.82],
    [120, 80, 1.39],
    [150, 25, 3.34],
    [150, 50, 2.11],
    [150, 80, 1.61],
    [210, 25, 4.18],
    [210, 50, 2.65],
    [210, 80, 2.01],
  ])('%i l with %i mm of foam lose %f kWh a day', (litres, thickness, loss) => {
    const found = insulationLoss('factory', thickness / 1000, litres / 1000) / KWH;
    expect(Math.abs(found - loss)).toBeLessThanOrEqual(0.005); // half the last printed digit
  });

  test('120 l under a loose jacket of 80 mm lose 2.88 kWh a day, as with 25 mm of foam', () => {
    const jacket = insulationLoss('jacket', 0.08, 0.12);
    expect(Math.abs(jacket / KWH - 2.88)).toBeLessThanOrEqual(0.005); // half the last printed digit
    // 1.76 / 92.8 = 0.55 / 29: exactly
    expect(jacket / insulationLoss('factory', 0.025, 0.12)).toBeCloseTo(1, 12);
  });

  test('an indirect cylinder counts 0.6 of it in use, 0.54 timed apart, 0.78 without a stat', () => {
    expect(useFactor(true, false)).toBe(0.6);
    expect(useFactor(true, true)).toBeCloseTo(0.54, 12); // rounding, as the next two
    expect(useFactor(false, false)).toBeCloseTo(0.78, 12);
    expect(useFactor(false, true)).toBeCloseTo(0.702, 12);
  });

  test('thicker is always less, larger always more, from 0 to 200 mm and 80 to 500 l', () => {
    for (const insulation of ['factory', 'jacket'] as const) {
      for (let mm = 0; mm < 200; mm += 10) {
        for (let litres = 80; litres < 500; litres += 60) {
          const here = insulationLoss(insulation, mm / 1000, litres / 1000);
          expect(insulationLoss(insulation, (mm + 10) / 1000, litres / 1000)).toBeLessThan(here);
          expect(insulationLoss(insulation, mm / 1000, (litres + 60) / 1000)).toBeGreaterThan(here);
        }
      }
    }
  });
});

describe('by class, source: labelTanks, Annex II Table 2', () => {
  const litres = [120, 150, 180, 210, 250, 300, 500];
  // W, worked from the formulas to 0.1
  const printed = {
    'A+': [26.9, 28.9, 30.7, 32.3, 34.3, 36.4, 43.5],
    A: [37.3, 40.0, 42.4, 44.6, 47.2, 50.1, 59.5],
    B: [52.2, 56.0, 59.3, 62.3, 66.0, 70.1, 83.2],
    C: [73.2, 78.5, 83.1, 87.4, 92.5, 98.2, 116.7],
    D: [91.1, 97.7, 103.5, 108.7, 115.0, 122.1, 145.1],
    E: [118.7, 127.4, 135.0, 142.0, 150.3, 159.8, 190.1],
    F: [144.1, 154.6, 164.0, 172.4, 182.7, 194.1, 231.1],
  };
  const cells = CLASSES.flatMap((energyClass) =>
    printed[energyClass].map((bound, i) => [energyClass, litres[i], bound] as const),
  );

  test('the table has 49 cells', () => {
    expect(cells.length).toBe(49);
  });

  test.each(cells)('class %s at %i l is below %f W', (energyClass, size, bound) => {
    // half the last printed digit
    expect(Math.abs(classBound(energyClass, size / 1000) - bound)).toBeLessThanOrEqual(0.05);
  });

  test.each(cells)('the bound of class %s at %i l parts it from the next', (energyClass, size) => {
    const bound = classBound(energyClass, size / 1000);
    expect(energyClassOf(bound * (1 - 1e-9), size / 1000)).toBe(energyClass);
    const next = CLASSES[CLASSES.indexOf(energyClass) + 1] ?? 'G';
    expect(energyClassOf(bound, size / 1000)).toBe(next);
  });

  test('an A+ store of 500 l reported at 43 W is in class A+', () => {
    expect(energyClassOf(43, 0.5)).toBe('A+');
  });
});

test.each([
  // litres, Wh in 24 h and W worked from the formula. source: ukServicesGuide, from memory
  [100, 1494, 62],
  [120, 1657, 69],
  [150, 1886, 79],
  [180, 2100, 87],
  [210, 2302, 96],
  [250, 2558, 107],
  [300, 2858, 119],
])('the United Kingdom guides allow %i l %i Wh a day, %i W', (litres, daily, watts) => {
  const limit = guideLimit(litres / 1000);
  // half the last printed digit
  expect(Math.abs(limit / 3600 - daily)).toBeLessThanOrEqual(0.5);
  expect(Math.abs(limit / 86_400 - watts)).toBeLessThanOrEqual(0.5);
});

test('a loss of 2.4 kWh a day is 2.22 W/K tested at 45 K and 1.82 W/K at 55 K', () => {
  expect(lossConductance(2.4 * KWH)).toBeCloseTo(100 / 45, 12); // rounding
  expect(lossConductance(2.4 * KWH, 55)).toBeCloseTo(100 / 55, 12); // rounding
});
