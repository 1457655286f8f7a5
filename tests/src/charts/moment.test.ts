import { describe, expect, test } from 'vitest';
import { settledMoment, steppedMoment } from '../../../src/charts/moment.ts';

describe('the moment a scrub lands on', () => {
  test('1814 s on an axis of 60 min is 30 min, on one of 10 min it is held to the end', () => {
    expect(settledMoment(1814, 3600)).toBe(1800);
    expect(settledMoment(1814, 600)).toBe(600);
  });

  test('on an axis of 10 min it lands on tenths of a minute: 100 s becomes 102 s', () => {
    expect(settledMoment(100, 600)).toBe(102);
  });

  test('left of the axis is 0 s', () => {
    expect(settledMoment(-50, 3600)).toBe(0);
  });
});

describe('the moment a key steps to', () => {
  test.each([
    [1800, 1, 1860],
    [1800, -1, 1740],
    [1814, 1, 1860],
    [1814, -1, 1800],
    [30, -1, 0],
    [0, -1, 0],
    [3590, 1, 3600],
    [1800, 10, 2400],
  ])('from %i s, %i min on the axis of 60 min leads to %i s', (from, by, to) => {
    expect(steppedMoment(from, by, 3600)).toBe(to);
  });
});
