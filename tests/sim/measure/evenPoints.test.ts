import { describe, expect, test } from 'vitest';
import { EvenPoints } from '../../../sim/measure/evenPoints.ts';

const coordinates = (points: EvenPoints, edge: number, count = points.count) =>
  Array.from({ length: count }, (_, index) => points.at(index, edge));

/** How many points lie in each cell of a grid over two edges. */
function cells(points: EvenPoints, [one, other]: readonly [number, number], a: number, b: number) {
  const counts = new Array<number>(a * b).fill(0);
  for (let index = 0; index < points.count; index++) {
    const column = Math.floor(points.at(index, one) * a);
    counts[column * b + Math.floor(points.at(index, other) * b)] += 1;
  }
  return counts;
}

test.each([1, 2, 4, 8, 16, 32, 64, 128, 256])(
  'the first %i of 256 points put 1 into each equal part of each of 8 edges',
  (count) => {
    const points = new EvenPoints(256, 8);
    for (let edge = 0; edge < 8; edge++) {
      const parts = coordinates(points, edge, count).map((value) => Math.floor(value * count));
      expect(parts.sort((a, b) => a - b)).toEqual([...Array(count).keys()]);
    }
  },
);

test.each([
  [256, 1],
  [128, 2],
  [64, 4],
  [32, 8],
  [16, 16],
  [8, 32],
  [2, 128],
  [1, 256],
])('each of the %i × %i cells over the first 2 edges holds 1 of 256 points', (a, b) => {
  expect(cells(new EvenPoints(256, 2), [0, 1], a, b)).toEqual(new Array(256).fill(1));
});

test('over any 2 of 5 edges each quarter of a quarter holds 16 of 256 points, 4 at most amiss', () => {
  // the quality of the pair: at worst the points of a cell four times as large are not spread in it
  const points = new EvenPoints(256, 5);
  for (let one = 0; one < 5; one++) {
    for (let other = 0; other < one; other++) {
      for (const count of cells(points, [one, other], 4, 4)) {
        expect(Math.abs(count - 16)).toBeLessThanOrEqual(4);
      }
    }
  }
});

test('its first 5 points of 2 edges are those of the published sequence, from memory', () => {
  // 0, 1/2, 3/4 and 1/4 come in some order after the origin; the second edge pairs 1/4 with 3/4 the other way round
  const points = new EvenPoints(2 ** 30, 2);
  const pairs = Array.from({ length: 4 }, (_, index) =>
    [0, 1].map((edge) => Number(points.at(index, edge).toFixed(6))),
  );
  expect(new Set(pairs.map(String))).toEqual(new Set(['0,0', '0.5,0.5', '0.75,0.25', '0.25,0.75']));
});

test('the mean of a product over 5 edges is 1 within 0.01 by 256 points; 256 drawn by lot miss by 0.08', () => {
  // ∏ (|4x − 2| + 1) / 2 has the mean 1 and, with 5 factors of variance 1/12, the deviation 0.70: 0.044 by lot
  const points = new EvenPoints(256, 5);
  let sum = 0;
  for (let index = 0; index < 256; index++) {
    let product = 1;
    for (let edge = 0; edge < 5; edge++) {
      product *= (Math.abs(4 * points.at(index, edge) - 2) + 1) / 2;
    }
    sum += product;
  }
  expect(Math.abs(sum / 256 - 1)).toBeLessThan(0.01);
});

describe('what it cannot do it says', () => {
  test('100 points are no power of two', () => {
    expect(() => new EvenPoints(100, 2)).toThrow('100 points; expected a power of two');
  });

  test('it has no 9th edge', () => {
    expect(() => new EvenPoints(4, 9)).toThrow('9 edges; expected 8 or fewer');
  });
});
