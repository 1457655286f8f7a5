import { scaleLinear } from 'd3';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { linearScale } from '../../../src/charts/scale.ts';

test('0 to 3600 s on 40 to 400 pixels puts 900 s at 130 pixels, and 130 pixels at 900 s', () => {
  const x = linearScale([0, 3600], [40, 400]);
  expect(x(900)).toBe(130);
  expect(x.invert(130)).toBe(900);
  expect(x(0)).toBe(40);
  expect(x(3600)).toBe(400);
});

test('in 200 cases it is the linear scale of d3, both ways and upside down too', () => {
  const number = fc.double({ min: -1000, max: 1000, noNaN: true });
  fc.assert(
    fc.property(number, number, number, number, number, (a, b, c, d, value) => {
      fc.pre(Math.abs(a - b) > 1e-3 && Math.abs(c - d) > 1e-3);
      const [ours, theirs] = [linearScale([a, b], [c, d]), scaleLinear([a, b], [c, d])];
      const size = 1 + Math.abs(theirs(value));
      expect(Math.abs(ours(value) - theirs(value)) / size).toBeLessThan(1e-9); // rounding
      const back = 1 + Math.abs(theirs.invert(value));
      expect(Math.abs(ours.invert(value) - theirs.invert(value)) / back).toBeLessThan(1e-9);
    }),
    { numRuns: 200 },
  );
});
