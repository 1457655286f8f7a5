import fc from 'fast-check';
import { expect, test } from 'vitest';
import { MonotoneCurve } from '../../../sim/closures/monotoneCurve.ts';
import { smoothStep } from '../../../sim/closures/smoothStep.ts';

const step = fc.double({ min: 0.1, max: 20, noNaN: true });
const rise = fc.double({ min: 0, max: 50, noNaN: true });

test('a curve through 2 to 8 points that rise never turns, 300 curves at 100 places each', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(step, rise), { minLength: 2, maxLength: 8 }), (steps) => {
      let x = 0;
      let y = 0;
      const points = steps.map(([dx, dy]): [number, number] => {
        x += dx;
        y += dy;
        return [x, y];
      });
      const curve = new MonotoneCurve(points);
      let before = Number.NEGATIVE_INFINITY;
      for (let i = 0; i <= 100; i++) {
        const here = curve.at(points[0][0] + ((x - points[0][0]) * i) / 100);
        expect(here).toBeGreaterThanOrEqual(before - 1e-11); // rounding, values up to 400
        before = here;
      }
      // rounding
      for (const [place, value] of points) expect(curve.at(place)).toBeCloseTo(value, 10);
    }),
    { numRuns: 300 },
  );
});

test('4 points of which the second is highest: level at the peak, at both ends and beyond them', () => {
  const curve = new MonotoneCurve([
    [0, 0],
    [1, 5],
    [3, 2],
    [4, 1],
  ]);
  expect(curve.at(-7)).toBe(0);
  expect(curve.at(9)).toBeCloseTo(1, 12); // rounding
  for (const place of [0, 1, 4]) {
    const slope = (curve.at(place + 1e-5) - curve.at(place - 1e-5)) / 2e-5;
    expect(Math.abs(slope)).toBeLessThan(2e-4); // 1e-5 of a curvature up to 30
  }
  expect(Math.max(...Array.from({ length: 401 }, (_, i) => curve.at(i / 100)))).toBe(5);
});

test('the point half-way between 0 and 1 of a curve of 2 points is 0.5, as on the smooth step', () => {
  const curve = new MonotoneCurve([
    [0, 0],
    [1, 1],
  ]);
  for (const u of [-1, 0, 0.25, 0.5, 0.9, 1, 2]) {
    expect(curve.at(u)).toBeCloseTo(smoothStep(u), 15); // rounding: both are 3 u² − 2 u³
  }
  expect(smoothStep(0.25)).toBe(0.15625); // 0.0625 × 2.5
});
