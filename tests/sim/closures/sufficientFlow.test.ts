import fc from 'fast-check';
import { expect, test } from 'vitest';
import { weatherFlow } from '../../../sim/closures/heatingCurve.ts';
import { radiatorOutput } from '../../../sim/closures/radiator.ts';
import { sufficientFlow } from '../../../sim/closures/sufficientFlow.ts';

test.each([
  [0.304, 20],
  [0.406, 25],
  [0.515, 30],
  [0.629, 35],
  [0.748, 40],
  [0.872, 45],
  [1, 50],
  [1.267, 60],
])('a need of %f of the rated output takes mean water %i K above the room', (factor, excess) => {
  // factors printed to 0.001, of which half is 0.04 K at 20 K and less above
  const found = sufficientFlow(factor * 1000, 1000, 0, 0, 1.3);
  expect(Math.abs(found - excess)).toBeLessThan(0.04);
});

test('10 kW at 20 °C and 10 K spread: 75 °C from 10 kW of radiators, 61.6 from 15, 54.3 from 20', () => {
  const flow = (rated: number): number => sufficientFlow(10_000, rated, 20, 10, 1.3);
  expect(flow(10_000)).toBe(75);
  expect(flow(15_000)).toBeCloseTo(61.603, 3); // 20 + 50 × 0.73206 + 5
  expect(flow(20_000)).toBeCloseTo(54.3365, 4); // 20 + 50 × 0.586730 + 5
});

test('no need takes water at room temperature', () => {
  expect(sufficientFlow(0, 10_000, 20, 0, 1.3)).toBe(20);
});

test('radiators at that flow give the need, 300 houses', () => {
  const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(
      range(100, 20_000),
      range(1000, 40_000),
      range(15, 25),
      range(0, 20),
      range(1.1, 1.5),
      (need, rated, room, spread, n) => {
        const mean = sufficientFlow(need, rated, room, spread, n) - spread / 2;
        expect(radiatorOutput(rated, mean - room, n) / need).toBeCloseTo(1, 10); // rounding
      },
    ),
    { numRuns: 300 },
  );
});

test('at 10 °C outside it is the flow of the weather curve, 40 % of the need and of the spread', () => {
  const design = sufficientFlow(8000, 12_000, 20, 10, 1.3);
  const today = sufficientFlow(0.4 * 8000, 12_000, 20, 0.4 * 10, 1.3);
  expect(weatherFlow(10, 20, -5, design, 1.3, 10)).toBeCloseTo(today, 10); // rounding
});
