import { describe, expect, test } from 'vitest';
import { EvenPoints } from '../../../sim/measure/evenPoints.ts';
import { firstOrder } from '../../../sim/measure/firstOrder.ts';

/** The indices of a function of points in the unit box, from so many even points. */
function indicesOf(f: (x: readonly number[]) => number, edges: number, count: number) {
  const points = new EvenPoints(count, edges);
  const inputs = Array.from({ length: edges }, (_, edge) =>
    Float64Array.from({ length: count }, (_run, index) => points.at(index, edge)),
  );
  const output = Float64Array.from({ length: count }, (_, run) =>
    f(inputs.map((input) => input[run])),
  );
  return firstOrder(inputs, output);
}

/** By the plain definition: the variance of the mean over all other inputs, on a grid of midpoints. */
function byGrid(f: (x: readonly number[]) => number, edges: number, grid: number) {
  const runs = grid ** edges;
  const sums = Array.from({ length: edges }, () => new Float64Array(grid));
  let sum = 0;
  let squares = 0;
  for (let run = 0; run < runs; run++) {
    const cell = Array.from({ length: edges }, (_, edge) => Math.floor(run / grid ** edge) % grid);
    const value = f(cell.map((at) => (at + 0.5) / grid));
    sum += value;
    squares += value * value;
    cell.forEach((at, edge) => {
      sums[edge][at] += value;
    });
  }
  const mean = sum / runs;
  return sums.map(
    (row) =>
      row.reduce((all, one) => all + (one / (runs / grid) - mean) ** 2, 0) /
      grid /
      (squares / runs - mean * mean),
  );
}

describe('a straight function 3, 2, 1 and 0 times its inputs', () => {
  // variances 9, 4, 1, 0 of 14
  const exact = [9 / 14, 4 / 14, 1 / 14, 0];
  const straight = ([a, b, c]: readonly number[]) => 3 * a + 2 * b + c;

  test.each([
    [64, 0.02],
    [256, 0.01],
    [4096, 0.002],
  ])('by %i runs within %d, far less than the 0.06 of 256 runs drawn by lot', (count, close) => {
    const found = indicesOf(straight, 4, count);
    found.forEach((share, input) => {
      expect(Math.abs(share - exact[input])).toBeLessThan(close);
    });
  });

  test('shifted and stretched it has the same indices, to rounding', () => {
    const found = indicesOf(straight, 4, 256);
    const stretched = indicesOf((x) => 5000 - 60 * straight(x), 4, 256);
    stretched.forEach((share, input) => {
      expect(share).toBeCloseTo(found[input], 9);
    });
  });
});

describe('the Ishigami function, whose third input acts only with the first', () => {
  // f = sin x₁ + 7 sin² x₂ + 0.1 x₃⁴ sin x₁ on −π to π; published first-order indices, from memory: 0.314, 0.442 and 0;
  // the first and third together leave 0.244
  const ishigami = (x: readonly number[]) => {
    const [a, b, c] = x.map((share) => Math.PI * (2 * share - 1));
    return Math.sin(a) + 7 * Math.sin(b) ** 2 + 0.1 * c ** 4 * Math.sin(a);
  };
  const published = [0.314, 0.442, 0];

  test('on a grid of 48 the plain definition gives the published indices within 0.003', () => {
    byGrid(ishigami, 3, 48).forEach((share, input) => {
      expect(Math.abs(share - published[input])).toBeLessThan(0.003);
    });
  });

  test.each([
    // two standard deviations of a sample by lot, 4 √(0.442 × 0.244 / runs): even points promise nothing less for what acts
    // only together
    [256, 0.082],
    [1024, 0.041],
    [4096, 0.021],
  ])('by %i runs within %d', (count, close) => {
    indicesOf(ishigami, 3, count).forEach((share, input) => {
      expect(Math.abs(share - published[input])).toBeLessThan(close);
    });
  });

  test('what no input explains alone is 0.24, within 0.08 by 256 runs, for the same reason', () => {
    const rest = 1 - indicesOf(ishigami, 3, 256).reduce((sum, share) => sum + share, 0);
    expect(Math.abs(rest - 0.244)).toBeLessThan(0.082);
  });
});

test('a product of 2 centred inputs: each alone explains less than 0.02, for all is in the two together', () => {
  const found = indicesOf(([a, b]) => (a - 0.5) * (b - 0.5), 2, 256);
  for (const share of found) expect(share).toBeLessThan(0.02);
});

test('where nothing scatters every index is 0', () => {
  expect(indicesOf(() => 2576.9, 3, 64)).toEqual([0, 0, 0]);
});

test('one input alone, by 32 runs in 4 bins, explains all of a straight line, within 0.01', () => {
  // the bins alone would miss 1/16; what is left is a part of the line inside the bins that is taken for chance
  const [share] = indicesOf(([a]) => a, 1, 32);
  expect(share).toBeGreaterThan(0.99);
});
