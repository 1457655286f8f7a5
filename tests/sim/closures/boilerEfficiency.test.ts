import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  boilerEfficiency,
  condensingShare,
  netFromGross,
} from '../../../sim/closures/boilerEfficiency.ts';

// source: boilerCurve
const printed: [number, number][] = [
  [30, 96.5],
  [38, 94.5],
  [43, 92.5],
  [49, 90.5],
  [54, 88],
  [60, 87],
  [71, 86],
];

const anyReturn = fc.double({ min: -20, max: 110, noNaN: true });
const anyLoad = fc.double({ min: 0, max: 1, noNaN: true });

/** Slopes of a function just left and just right of a place, 1e-4 K away. */
function slopes(f: (T: number) => number, T: number): [number, number] {
  const d = 1e-4;
  return [(f(T) - f(T - d)) / d, (f(T + d) - f(T)) / d];
}

describe('efficiency', () => {
  test.each(printed)('water returning at %f °C at full load gives %f %%', (T, percent) => {
    expect(100 * boilerEfficiency(T, 1)).toBeCloseTo(percent, 10); // rounding
  });

  test('the points read elsewhere hold: 82/71 °C at most 89 %, 49/38 °C 93 % or more, 88 % at 54 °C', () => {
    for (const load of [0, 0.3, 1]) {
      expect(boilerEfficiency(71, load)).toBeLessThanOrEqual(0.89); // source: boilerAnchors
      expect(boilerEfficiency(38, load)).toBeGreaterThanOrEqual(0.93); // source: boilerAnchors
    }
    // source: boilerAnchors, 88 % at about 55 °C; half a point for "about"
    expect(Math.abs(boilerEfficiency(55, 1) - 0.88)).toBeLessThan(0.005);
  });

  test('0.15 of 60 °C at full load and 0.85 of 30 °C at 30 % make 95.9 %, above the 86 % of the regulation', () => {
    const seasonal = 0.15 * boilerEfficiency(60, 1) + 0.85 * boilerEfficiency(30, 0.3);
    expect(seasonal).toBeCloseTo(0.15 * 0.87 + 0.85 * 0.975, 12); // by hand 0.95925; rounding
    expect(seasonal).toBeGreaterThan(0.86); // source: ecodesignBoilers, up to 70 kW
  });

  test('hotter return or more load never helps, and 98.5 % is never reached, 500 pairs', () => {
    fc.assert(
      fc.property(anyReturn, anyReturn, anyLoad, anyLoad, (a, b, load, more) => {
        const [cold, hot] = a < b ? [a, b] : [b, a];
        const [low, high] = load < more ? [load, more] : [more, load];
        // rounding
        expect(boilerEfficiency(hot, low)).toBeLessThanOrEqual(boilerEfficiency(cold, low) + 1e-15);
        expect(boilerEfficiency(cold, high)).toBeLessThanOrEqual(boilerEfficiency(cold, low));
        expect(boilerEfficiency(cold, low)).toBeLessThan(0.985);
      }),
      { numRuns: 500 },
    );
  });

  test.each(printed)('at %f °C the slopes on both sides are one', (T) => {
    const [left, right] = slopes((t) => boilerEfficiency(t, 1), T);
    // 1e-4 K of a curvature below 2e-3; straight lines between the points would differ by 8e-4 or more
    expect(Math.abs(left - right)).toBeLessThan(1e-6);
  });

  test('between 54 and 60 °C it falls all the way; at 10 °C it is that of 30 °C, at 95 °C that of 71 °C', () => {
    for (let T = 54; T < 60; T += 0.5) {
      expect(boilerEfficiency(T + 0.5, 1)).toBeLessThan(boilerEfficiency(T, 1));
    }
    expect(boilerEfficiency(10, 1)).toBe(boilerEfficiency(30, 1));
    expect(boilerEfficiency(95, 1)).toBe(boilerEfficiency(71, 1));
    expect(boilerEfficiency(49, 1.5)).toBe(boilerEfficiency(49, 1));
  });

  test('96.5 % gross is 107.1 % net', () => {
    expect(netFromGross(0.965)).toBeCloseTo(1.07115, 12); // 0.965 × 1.11
  });
});

describe('condensing', () => {
  test('heat counts whole up to 53 °C, half at 54 °C, not at all from 55 °C', () => {
    expect(condensingShare(20)).toBe(1);
    expect(condensingShare(53)).toBe(1);
    expect(condensingShare(54)).toBe(0.5);
    expect(condensingShare(55)).toBe(0);
    expect(condensingShare(80)).toBe(0);
  });

  test('its slope is nothing at 53 and 55 °C and −0.75 per kelvin at 54 °C', () => {
    for (const T of [53, 55]) {
      for (const slope of slopes(condensingShare, T)) {
        expect(Math.abs(slope)).toBeLessThan(2e-4); // 1e-4 K of a curvature of 1.5
      }
    }
    for (const slope of slopes(condensingShare, 54)) expect(slope).toBeCloseTo(-0.75, 6);
  });
});
