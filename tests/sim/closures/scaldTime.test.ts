import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  FULL,
  fittedScaldTime,
  longestScaldRecord,
  PARTIAL,
  scaldTimeBand,
  shortestScaldRecord,
} from '../../../sim/closures/scaldTime.ts';

test.each([
  // °C, s derived from the printed curve by hand
  [49, 284, 0],
  [52, 75, 9], // 2675 − 2600
  [55, 25.025, 9], // 4359.025 − 9251 + 4917
  [60, 7.772, 9], // 191.592 − 446.22 + 262.4
])('the curve has at %i °C %f s', (temperature, seconds, digits) => {
  expect(fittedScaldTime(temperature)).toBeCloseTo(seconds, digits); // of the figures printed here
});

test.each([
  // °C; s, sooner: curve or partial burn; s, later: curve or full burn. source: scaldTimes
  [45, 3242, 10_800],
  [47, 879, 2700],
  [48, 489, 1200],
  [49, 284, 600],
  [51, 107.6, 252],
  [55, 17, 30],
  [60, 3, 7.772],
])('the band at %i °C is %f to %f s', (temperature, shortest, longest) => {
  const band = scaldTimeBand(temperature);
  // the logarithms by hand to five figures: 0.1 % of 3242 s
  expect(Math.abs(band.shortest / shortest - 1)).toBeLessThan(2e-3);
  expect(band.longest).toBeCloseTo(longest, 9); // printed
});

test('at 49 °C the curve has less than half of the 10 min in the table', () => {
  const { shortest, longest } = scaldTimeBand(49);
  expect(longest / shortest).toBeGreaterThan(2);
});

test('all of the 7 tabled times of either depth, and the curve, lie inside the band', () => {
  const printed = [...FULL, ...PARTIAL].filter(([at]) => at >= 45 && at <= 60);
  expect(printed.length).toBe(14);
  for (const [at, seconds] of printed) {
    const band = scaldTimeBand(at);
    for (const time of [seconds, fittedScaldTime(at)]) {
      expect(time).toBeGreaterThanOrEqual(band.shortest);
      expect(time).toBeLessThanOrEqual(band.longest);
    }
  }
});

test('below 44 °C no time is printed, above 71.1 °C it is held at half a second to 2.6 s', () => {
  const never = Number.POSITIVE_INFINITY;
  expect(scaldTimeBand(43.9)).toEqual({ shortest: never, longest: never });
  expect(scaldTimeBand(44).longest).toBe(6 * 3600);
  const { shortest, longest } = scaldTimeBand(90);
  expect(shortest).toBe(0.5);
  expect(longest).toBeCloseTo(2.5871, 4); // by hand 262.4 − 55.308969 / 0.21288
});

test('in 500 pairs of temperatures hotter water never takes longer, though the curve jumps at 51.3 and 58.3 °C', () => {
  expect(fittedScaldTime(51.3)).toBeGreaterThan(fittedScaldTime(51.299));
  expect(fittedScaldTime(58.3)).toBeGreaterThan(fittedScaldTime(58.299));
  const anywhere = fc.double({ min: 43, max: 75, noNaN: true });
  const atJoint = fc
    .tuple(fc.constantFrom(51.3, 52.1, 58.3), fc.double({ min: -1, max: 1, noNaN: true }))
    .map(([joint, away]) => joint + away);
  const temperature = fc.oneof(anywhere, atJoint);
  fc.assert(
    fc.property(temperature, temperature, (a, b) => {
      const cool = scaldTimeBand(Math.min(a, b));
      const hot = scaldTimeBand(Math.max(a, b));
      const slack = 1 + 1e-12; // rounding where two pieces meet
      expect(hot.shortest).toBeLessThanOrEqual(cool.shortest * slack);
      expect(hot.longest).toBeLessThanOrEqual(cool.longest * slack);
      expect(hot.shortest).toBeLessThanOrEqual(hot.longest);
    }),
    { numRuns: 500 },
  );
});

test('both records caution that children burn sooner', () => {
  for (const { sentence } of [shortestScaldRecord, longestScaldRecord]) {
    expect(sentence).toMatch(/^Caution:.*children.*sooner/);
  }
});
