import { describe, expect, test } from 'vitest';
import { Interpolant } from '../../../sim/solve/interpolant.ts';

/** T' = −T / 100 s and S' = +T / 100 s: T falls from 60 K, and T + S stays 60. */
const decay = (y: ArrayLike<number>) => [-y[0] / 100, y[0] / 100];
const exact = (time: number) => {
  const left = 60 * Math.exp(-time / 100);
  return [left, 60 - left];
};

/** Largest error at ten places inside one exact step from 0. */
function worstIn(length: number): number {
  const inside = new Interpolant(2, decay);
  inside.begin(exact(0));
  inside.advance(0, length, exact(length));
  const times = Array.from({ length: 9 }, (_, i) => ((i + 1) * length) / 10);
  return Math.max(...times.map((time) => Math.abs(inside.value(0, time) - exact(time)[0])));
}

describe('the state inside a step', () => {
  test('of 10, 50 and 100 s of a decay of 100 s is within 60 K / 1200 times the fifth power of the share', () => {
    // the term of the fifth power that a quartic leaves out is 60 K / 120; of that a tenth is left between the ends
    for (const length of [10, 50, 100]) {
      expect(worstIn(length)).toBeLessThan((60 / 1200) * (length / 100) ** 5);
    }
  });

  test('has an error that falls with the fifth power of the step: 24 to 40 times for half of it', () => {
    const ratio = worstIn(20) / worstIn(10);
    expect(ratio).toBeGreaterThan(24);
    expect(ratio).toBeLessThan(40);
  });

  test('meets both ends of the step, also of the second of two', () => {
    const inside = new Interpolant(2, decay);
    inside.begin(exact(0));
    inside.advance(0, 30, exact(30));
    inside.advance(30, 70, exact(70));
    expect(inside.value(0, 30)).toBeCloseTo(exact(30)[0], 12);
    expect(inside.value(0, 70)).toBeCloseTo(exact(70)[0], 12);
  });

  test('keeps a sum of two states that the rates keep: 60 K to rounding at 99 places', () => {
    const inside = new Interpolant(2, decay);
    inside.begin(exact(0));
    inside.advance(0, 80, exact(80));
    for (let i = 1; i < 100; i++) {
      const [left, gone] = inside.stateAt(0.8 * i);
      expect(Math.abs(left + gone - 60)).toBeLessThan(1e-12);
    }
  });
});
