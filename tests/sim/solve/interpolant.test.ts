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
  inside.begin(0, exact(0));
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
    inside.begin(0, exact(0));
    inside.advance(0, 30, exact(30));
    inside.advance(30, 70, exact(70));
    expect(inside.value(0, 30)).toBeCloseTo(exact(30)[0], 12);
    expect(inside.value(0, 70)).toBeCloseTo(exact(70)[0], 12);
  });

  test('keeps a sum of two states that the rates keep: 60 K to rounding at 99 places', () => {
    const inside = new Interpolant(2, decay);
    inside.begin(0, exact(0));
    inside.advance(0, 80, exact(80));
    for (let i = 1; i < 100; i++) {
      const [left, gone] = inside.stateAt(0.8 * i);
      expect(Math.abs(left + gone - 60)).toBeLessThan(1e-12);
    }
  });

  test('says where a ball thrown up at 10 m/s turns, and nothing for one that only rises or that has turned', () => {
    // height and speed: y' = v, v' = −10; the turn is after 1 s
    const thrown = (y: ArrayLike<number>) => [y[1], -10];
    const at = (time: number) => [10 * time - 5 * time * time, 10 - 10 * time];
    const inside = new Interpolant(2, thrown);
    inside.begin(0, at(0));
    inside.advance(0, 1.7, at(1.7));
    expect(inside.turningTime(0)).toBeCloseTo(1, 12);
    expect(inside.turningTime(1)).toBeNull(); // the speed falls all the way
    inside.begin(0, at(0));
    inside.advance(0, 0.9, at(0.9));
    expect(inside.turningTime(0)).toBeNull();
    inside.begin(1.1, at(1.1));
    inside.advance(1.1, 3, at(3));
    expect(inside.turningTime(0)).toBeNull();
  });

  test('finds the turn of a swing of one turn in 60 s within 2 % of it in steps of 8 and 13 s', () => {
    const turn = (2 * Math.PI) / 60;
    const swing = (y: ArrayLike<number>) => [y[1] * turn, -y[0] * turn];
    const at = (time: number) => [Math.sin(turn * time), Math.cos(turn * time)];
    for (let from = 10; from < 14.9; from += 0.7) {
      for (const length of [8, 13]) {
        const inside = new Interpolant(2, swing);
        inside.begin(from, at(from));
        inside.advance(from, from + length, at(from + length));
        expect(Math.abs((inside.turningTime(0) ?? Number.NaN) - 15)).toBeLessThan(0.02 * length);
      }
    }
  });
});
