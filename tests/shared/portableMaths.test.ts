import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cubeRoot,
  exponential,
  exponentialLessOne,
  logarithm,
} from '../../shared/portableMaths.ts';

/** Relative difference. */
const off = (found: number, right: number): number => Math.abs(found / right - 1);
const runs = { numRuns: 2000 };
const WITHIN = 1e-15; // the stated error, about four last bits

describe('functions built from arithmetic agree with the built-in ones to 1e-15', () => {
  test('e to the power x for 2000 values from −700 to 700', () => {
    const x = fc.double({ min: -700, max: 700, noNaN: true });
    fc.assert(
      fc.property(x, (v) => off(exponential(v), Math.exp(v)) < WITHIN),
      runs,
    );
  });

  test('e to the power x less 1 for 2000 values from −30 to 30, also next to 0', () => {
    const x = fc.double({ min: -30, max: 30, noNaN: true });
    fc.assert(
      fc.property(
        x,
        (v) => Math.abs(v) < 1e-300 || off(exponentialLessOne(v), Math.expm1(v)) < WITHIN,
      ),
      runs,
    );
    expect(exponentialLessOne(0)).toBe(0);
    expect(off(exponentialLessOne(-1e-12), Math.expm1(-1e-12))).toBeLessThan(WITHIN);
  });

  test('the logarithm for 2000 powers of e from −700 to 700 and next to 1', () => {
    const x = fc.double({ min: -700, max: 700, noNaN: true }).map(Math.exp);
    fc.assert(
      fc.property(x, (v) => v === 1 || off(logarithm(v), Math.log(v)) < WITHIN),
      runs,
    );
    expect(logarithm(1)).toBe(0);
    for (const v of [1 - 1e-9, 1 + 1e-9, 0.75, 1.4, 1.5]) {
      expect(off(logarithm(v), Math.log(v))).toBeLessThan(WITHIN);
    }
  });

  test('the cube root for 2000 powers of e from −700 to 700, for 0 and for the smallest numbers', () => {
    const x = fc.double({ min: -700, max: 700, noNaN: true }).map(Math.exp);
    fc.assert(
      fc.property(x, (v) => off(cubeRoot(v), Math.cbrt(v)) < WITHIN),
      runs,
    );
    expect(cubeRoot(0)).toBe(0);
    expect(off(cubeRoot(5e-324), Math.cbrt(5e-324))).toBeLessThan(WITHIN);
    expect(off(cubeRoot(1e-295), Math.cbrt(1e-295))).toBeLessThan(WITHIN);
  });
});

test('beyond their range e to the power x is 0 or infinite, and no number stays no number', () => {
  expect(exponential(-800)).toBe(0);
  expect(exponential(710)).toBe(Number.POSITIVE_INFINITY);
  expect(exponential(Number.NaN)).toBeNaN();
  expect(exponentialLessOne(Number.NaN)).toBeNaN();
  expect(cubeRoot(Number.NaN)).toBeNaN();
});
