import { describe, expect, test } from 'vitest';
import { clearSpot, freeSpot, overlaps } from '../../../src/charts/clearSpot.ts';

const box = (x: number, y: number) => ({ x, y, width: 20, height: 10 });
const level = [
  [0, 5],
  [100, 5],
] as const;

describe('a place for a text', () => {
  test('the first of 3 places that no line crosses is taken', () => {
    expect(clearSpot([box(0, 0), box(30, 20), box(60, 40)], [level])).toEqual(box(30, 20));
  });

  test('with a line through every place the one with 1 crossing is better than the one with 2', () => {
    const steep = [
      [10, 0],
      [10, 9],
    ] as const;
    expect(clearSpot([box(0, 0), box(40, 0)], [level, steep])).toEqual(box(40, 0));
    expect(freeSpot([box(0, 0), box(40, 0)], [level, steep])).toBeNull();
  });

  test('a place where a text stands already is left alone', () => {
    expect(freeSpot([box(0, 20), box(50, 20)], [], [box(5, 25)])).toEqual(box(50, 20));
  });

  test('a line that runs to the left is seen as well as one to the right', () => {
    expect(freeSpot([box(0, 0)], [[...level].reverse()])).toBeNull();
  });

  test('2 rectangles that share an edge do not overlap', () => {
    expect(overlaps(box(0, 0), box(20, 0))).toBe(false);
    expect(overlaps(box(0, 0), box(19, 9))).toBe(true);
  });
});
