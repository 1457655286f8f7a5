import fc from 'fast-check';
import { expect, test } from 'vitest';
import { firstCrossing } from '../../../sim/solve/crossing.ts';

test('the crossing of t² − 2 between 0 and 300 s is √2 s to 1e-3 s, and behind it', () => {
  const g = (t: number) => t * t - 2;
  const found = firstCrossing(g, 0, 300, g(0), g(300));
  expect(found - Math.SQRT2).toBeGreaterThanOrEqual(0);
  expect(found - Math.SQRT2).toBeLessThan(1e-3);
});

test('a function above zero from the start crosses at the start, 17 s', () => {
  expect(firstCrossing(() => 1, 17, 300, 1, 1)).toBe(17);
});

test('200 rising functions, steep, flat or bent, are found to 1e-3 s in at most 60 looks', () => {
  const anyRise = fc.record({
    root: fc.double({ min: 0.01, max: 299.99, noNaN: true }),
    scale: fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
    bend: fc.constantFrom('straight', 'cubic', 'root', 'exponential', 'step'),
  });
  fc.assert(
    fc.property(anyRise, ({ root, scale, bend }) => {
      let looks = 0;
      const g = (t: number) => {
        looks++;
        return scale * shapes[bend](t - root);
      };
      const found = firstCrossing(g, 0, 300, g(0), g(300));
      expect(Math.abs(found - root)).toBeLessThan(1e-3);
      expect(looks).toBeLessThanOrEqual(62); // two ends and 60 rounds
    }),
    { numRuns: 200 },
  );
});

test('a function that is −∞ before it applies is halved towards its edge at 123.4 s', () => {
  const g = (t: number) => (t < 123.4 ? Number.NEGATIVE_INFINITY : 1);
  expect(Math.abs(firstCrossing(g, 0, 300, g(0), g(300)) - 123.4)).toBeLessThan(1e-3);
});

const shapes: Readonly<Record<string, (x: number) => number>> = {
  straight: (x) => x,
  cubic: (x) => x ** 3,
  root: (x) => Math.cbrt(x),
  exponential: (x) => Math.exp(x / 20) - 1,
  step: (x) => (x > 0 ? 1 : -1),
};
