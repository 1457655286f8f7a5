import { describe, expect, test } from 'vitest';
import { integrate } from '../../../sim/solve/integrate.ts';
import { Pooled } from '../../../sim/solve/pooled.ts';
import { makePools } from '../../../sim/solve/pools.ts';

/** Four layers, the two in the middle one pool, and a sum of what they lose. */
const pools = makePools(4);
pools.first.set([0, 1, 3, 4]);
pools.count = 3;
const start = [20, 35, 35, 60, 0];
const settings = {
  absoluteTolerance: [1e-4, 1e-4, 1e-4, 1e-4, 1],
  relativeTolerance: 1e-6,
  firstStep: 1,
  longestStep: 200,
  budget: 10_000,
};

/** Each layer cools towards 15 °C, bottom and top faster than the pool between them. */
function cooling(y: ArrayLike<number>): number[] {
  const rates = [300, 700, 700, 200].map((lag, layer) => (15 - y[layer]) / lag);
  return [...rates, -rates.reduce((sum, rate) => sum + rate, 0)];
}

describe('integration with one number for each pool', () => {
  test('takes the steps of the whole state, and finds it within 1e-9 K', () => {
    const times: number[][] = [[], []];
    const plain = integrate(cooling, 0, start, 900, settings, (_, to) => {
      times[0].push(to);
      return null;
    });
    const pooled = new Pooled(4, 5).integrate(
      pools,
      [],
      cooling,
      0,
      start,
      900,
      settings,
      (_, to) => {
        times[1].push(to);
        return null;
      },
    );
    expect(times[1]).toHaveLength(times[0].length);
    times[0].forEach((time, step) => {
      expect(Math.abs(times[1][step] - time)).toBeLessThan(1e-6); // errors are weighed alike to rounding
    });
    expect(pooled.state).toHaveLength(5);
    pooled.state.forEach((value, slot) => {
      expect(Math.abs(value - plain.state[slot])).toBeLessThan(1e-9);
    });
  });

  test('keeps the two layers of a pool equal to the last bit, in each step and at an event', () => {
    const pooled = new Pooled(4, 5);
    const piece = pooled.integrate(pools, [], cooling, 0, start, 900, settings, (from, to, y) => {
      expect(y[2]).toBe(y[1]);
      return to > 400 ? { time: (from + to) / 2, state: [...y] } : null;
    });
    expect(piece.end).toBe('event');
    expect(piece.state[2]).toBe(piece.state[1]);
    expect(piece.state[1]).not.toBe(piece.state[0]);
  });

  test('a slot that stands still is not carried: it comes back to the last bit, and the others within 1e-9', () => {
    const still = { ...settings, absoluteTolerance: [...settings.absoluteTolerance, 1] };
    const derivative = (y: ArrayLike<number>) => [...cooling(y), 0];
    const carried: number[] = [];
    const run = (standing: readonly number[]) =>
      new Pooled(4, 6).integrate(
        pools,
        standing,
        (y) => {
          carried.push(y[5]);
          return derivative(y);
        },
        0,
        [...start, 1 / 3],
        900,
        still,
        () => null,
      ).state;
    const all = run([]);
    const without = run([5]);
    expect(without[5]).toBe(1 / 3);
    expect(new Set(carried)).toEqual(new Set([1 / 3])); // the derivative sees it all the while
    without.forEach((value, slot) => {
      expect(Math.abs(value - all[slot])).toBeLessThan(1e-9);
    });
  });
});
