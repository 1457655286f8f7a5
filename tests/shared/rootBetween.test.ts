import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rootBetween } from '../../shared/rootBetween.ts';

/** The function, and how often it was asked. */
function counted(f: (x: number) => number) {
  const count = { asked: 0 };
  return {
    count,
    f: (x: number) => {
      count.asked++;
      return f(x);
    },
  };
}

describe('the zero of a function between two places', () => {
  // [name, function, low, high, zero, most calls]; the zeros are closed forms or known constants
  test.each<[string, (x: number) => number, number, number, number, number]>([
    ['x² − 2', (x) => x * x - 2, 0, 2, Math.SQRT2, 12],
    ['cos x − x', (x) => Math.cos(x) - x, 0, 1, 0.7390851332151607, 12],
    ['x³ − 2x − 5', (x) => x * x * x - 2 * x - 5, 2, 3, 2.0945514815423265, 12],
    ['eˣ − 10⁶', (x) => Math.exp(x) - 1e6, -50, 50, Math.log(1e6), 40],
    ['1 / x − 1000', (x) => 1 / x - 1000, 1e-9, 1, 1e-3, 70],
    ['√x − 10⁻⁶', (x) => Math.sqrt(x) - 1e-6, 0, 1, 1e-12, 70],
  ])('of %s is found to 1e-14', (_, f, low, high, zero, most) => {
    const spy = counted(f);
    // 1e-14 asked for, and the rounding of the function itself
    expect(Math.abs(rootBetween(spy.f, low, high, 1e-14) - zero)).toBeLessThan(
      1e-14 + 4e-15 * Math.abs(zero),
    );
    expect(spy.count.asked).toBeLessThanOrEqual(most); // halving alone takes 47 and more
    expect(Math.abs(rootBetween(f, high, low, 1e-14) - zero)).toBeLessThan(
      1e-14 + 4e-15 * Math.abs(zero),
    );
  });

  test('of a ninth power, flat at its zero 0.3, is as close as asked in under 100 calls', () => {
    const spy = counted((x) => (x - 0.3) ** 9);
    expect(Math.abs(rootBetween(spy.f, 0, 1, 1e-9) - 0.3)).toBeLessThan(1e-9);
    expect(spy.count.asked).toBeLessThan(100);
  });

  test('of a step from −1 to 1 at 0.7 and of one that is infinite at both ends is found to 1e-12', () => {
    expect(Math.abs(rootBetween((x) => (x < 0.7 ? -1 : 1), 0, 1, 1e-12) - 0.7)).toBeLessThan(1e-12);
    const poles = (x: number) => 1 / (1 - x) - 1 / x; // −∞ at 0, ∞ at 1, 0 half way
    expect(poles(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(Math.abs(rootBetween(poles, 0, 1, 1e-12) - 0.5)).toBeLessThan(1e-12);
  });

  test('at an end is that end', () => {
    expect(rootBetween((x) => x, 0, 1, 1e-12)).toBe(0);
    expect(rootBetween((x) => x - 1, 0, 1, 1e-12)).toBe(1);
  });

  test('is no further than asked, for 500 cubics that rise', () => {
    const settings = fc.record({
      zero: fc.double({ min: -100, max: 100, noNaN: true }),
      cubic: fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
      linear: fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
      closeness: fc.constantFrom(1e-3, 1e-6, 1e-9),
    });
    fc.assert(
      fc.property(settings, ({ zero, cubic, linear, closeness }) => {
        const f = (x: number) => (x - zero) * (cubic * (x - zero) * (x - zero) + linear);
        const found = rootBetween(f, -101, 102, closeness);
        expect(Math.abs(found - zero)).toBeLessThanOrEqual(closeness + 5e-16 * Math.abs(zero));
      }),
      { numRuns: 500 },
    );
  });
});

describe('faults', () => {
  test('the same sign at both ends, 1 and 4, is refused with both values', () => {
    expect(() => rootBetween((x) => x * x, 1, 2, 1e-9)).toThrow(
      'f is 1 at 1 and 4 at 2; expected opposite signs',
    );
  });

  test('tiny values of one sign are refused too, although their product is 0', () => {
    expect(1e-200 * 1e-200).toBe(0);
    expect(() => rootBetween(() => 1e-200, 0, 1, 1e-9)).toThrow('expected opposite signs');
  });

  test('no number at an end or inside, and a closeness of 0, are refused', () => {
    expect(() => rootBetween(() => Number.NaN, 0, 1, 1e-9)).toThrow('expected opposite signs');
    const hole = (x: number) => (x === 0 ? -1 : x === 1 ? 1 : Number.NaN);
    expect(() => rootBetween(hole, 0, 1, 1e-9)).toThrow('f is NaN at 0.5; expected a number');
    expect(() => rootBetween((x) => x - 0.5, 0, 1, 0)).toThrow('closeness is 0; expected above 0');
  });
});
