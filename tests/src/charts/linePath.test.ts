import { describe, expect, test } from 'vitest';
import { areaOf, linePieces, pathOf } from '../../../src/charts/linePath.ts';

const same = (value: number) => value;

describe('a drawn line', () => {
  test('10 000 samples on 100 pixels become at most 200 points', () => {
    const xs = Array.from({ length: 10_000 }, (_, index) => index / 100);
    const ys = xs.map((x) => Math.sin(x * 40) * 50);
    const points = linePieces(xs, ys, same, same).flat();
    expect(points.length).toBeLessThanOrEqual(200);
    expect(points.length).toBeGreaterThan(100);
  });

  test('a spike of one sample among 1000 on one pixel is kept', () => {
    const xs = Array.from({ length: 1000 }, (_, index) => index / 1000);
    const ys = xs.map((_, index) => (index === 500 ? 99 : 0));
    const [piece] = linePieces(xs, ys, same, same);
    expect(piece.map(([, y]) => y)).toContain(99);
  });

  test('a gap parts the line into 2 pieces of 2 points', () => {
    const pieces = linePieces([0, 1, 2, 3, 4], [5, 6, Number.NaN, 7, 8], same, same);
    expect(pieces).toEqual([
      [
        [0, 5],
        [1, 6],
      ],
      [
        [3, 7],
        [4, 8],
      ],
    ]);
  });

  test('a line without a single value has 0 pieces and no path', () => {
    const pieces = linePieces([0, 1], [Number.NaN, Number.NaN], same, same);
    expect(pieces).toEqual([]);
    expect(pathOf(pieces)).toBe('');
  });

  test('the path of 2 pieces starts twice, and its area closes on the level 9', () => {
    const pieces = [
      [
        [0, 1],
        [2, 3],
      ],
      [
        [5, 5],
        [6, 6],
      ],
    ] as const;
    expect(pathOf(pieces)).toBe('M0.0 1.0L2.0 3.0M5.0 5.0L6.0 6.0');
    expect(areaOf(pieces, 9)).toBe('M0.0 1.0L2.0 3.0L2.0 9L0.0 9ZM5.0 5.0L6.0 6.0L6.0 9L5.0 9Z');
  });
});
