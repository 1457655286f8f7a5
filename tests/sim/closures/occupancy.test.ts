import fc from 'fast-check';
import { expect, test } from 'vitest';
import { occupancy } from '../../../sim/closures/occupancy.ts';

// worked by hand from the formula, to 0.01
test.each([
  [50, 1.69],
  [75, 2.36],
  [100, 2.74],
  [150, 2.93],
])('in %d m² live %d people', (floorArea, people) => {
  expect(Math.abs(occupancy(floorArea) - people)).toBeLessThanOrEqual(0.005); // half of 0.01
});

test('one person lives in 13.9 m² and in less, and 1e-6 m² more adds less than 1e-8 people', () => {
  expect(occupancy(13.9)).toBe(1);
  expect(occupancy(5)).toBe(1);
  expect(occupancy(13.9 + 1e-6) - 1).toBeGreaterThan(0);
  expect(occupancy(13.9 + 1e-6) - 1).toBeLessThan(1e-8); // 0.0013 a square metre
});

test('the formula with the exponential of the engine gives the same in 200 homes', () => {
  fc.assert(
    fc.property(fc.double({ min: 13.9, max: 500, noNaN: true }), (floorArea) => {
      const above = floorArea - 13.9;
      const written = 1 + 1.76 * (1 - Math.exp(-0.000349 * above ** 2)) + 0.0013 * above;
      expect(Math.abs(occupancy(floorArea) - written)).toBeLessThan(1e-13); // rounding
    }),
    { numRuns: 200 },
  );
});

test('in 200 pairs of homes the larger never holds fewer people', () => {
  const area = fc.double({ min: 0, max: 500, noNaN: true });
  fc.assert(
    fc.property(area, area, (a, b) => {
      expect(occupancy(Math.max(a, b))).toBeGreaterThanOrEqual(occupancy(Math.min(a, b)));
    }),
    { numRuns: 200 },
  );
});
