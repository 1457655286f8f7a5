import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  decimalReductionBand,
  published,
  reductionRate,
} from '../../../sim/closures/decimalReduction.ts';

const MINUTE = 60; // s

test.each([
  // °C, shortest and longest in minutes, as printed. source: reductionTests; reductionPages;
  // reductionStrains
  [45, 2500, 2500],
  [50, 80, 380],
  [60, 0.74, 25 / 8],
])('at %i °C the band is the printed %f to %f min, exactly', (temperature, shortest, longest) => {
  expect(decimalReductionBand(temperature)).toEqual({
    shortest: shortest * MINUTE,
    longest: longest * MINUTE,
  });
});

test.each([
  // source: reductionTests
  [45, 2500],
  [50, 380],
  [55, 13.93],
  [60, 0.74],
  [66, 0.45],
])(
  'the time of the first work at %i °C, %f min, is an edge of the band, exactly',
  (at, minutes) => {
    const { shortest, longest } = decimalReductionBand(at);
    expect([shortest, longest]).toContain(minutes * MINUTE);
  },
);

test.each([
  // source: reductionStrains, from memory, and reductionPages
  [54, 27],
  [58, 6],
  [70, 10 / 8],
  [80, 5 / 8],
])('at %i °C the longest is the printed %f min, exactly', (at, minutes) => {
  expect(decimalReductionBand(at).longest).toBe(minutes * MINUTE);
});

test('all 14 published times lie inside the band', () => {
  expect(published.length).toBe(14);
  for (const [temperature, time] of published) {
    const { shortest, longest } = decimalReductionBand(temperature);
    expect(time).toBeGreaterThanOrEqual(shortest);
    expect(time).toBeLessThanOrEqual(longest);
  }
});

test('the pooled 2 min at 60 °C with 5.29 K for a tenth keep to it from 50 to 60 °C', () => {
  // source: reductionPages; "about 2 min" is one figure, hence the 1 %: 27.2 min against 27 at 54 °C
  for (let at = 50; at <= 60; at += 0.5) {
    const pooled = 2 * MINUTE * 10 ** ((60 - at) / 5.29);
    expect(pooled).toBeGreaterThan(decimalReductionBand(at).shortest);
    expect(pooled).toBeLessThan(decimalReductionBand(at).longest * 1.01);
  }
});

test('the times in which "most die", 32 min at 60 °C and 5 h at 55 °C, are no tenfold reduction: 10 or more', () => {
  expect((32 * MINUTE) / decimalReductionBand(60).longest).toBeGreaterThan(10);
  expect((5 * 60 * MINUTE) / decimalReductionBand(55).longest).toBeGreaterThan(10);
});

test('half way from 55 to 60 °C the shortest is the geometric mean, √(13.93 × 0.74) = 3.2106 min', () => {
  expect(decimalReductionBand(57.5).shortest / MINUTE).toBeCloseTo(3.2106, 4); // by hand, five figures
});

describe('outside', () => {
  test('below 45 °C no kill is claimed: infinite times, a rate of 0', () => {
    for (const at of [-5, 20, 37, 44.999]) {
      const never = Number.POSITIVE_INFINITY;
      expect(decimalReductionBand(at)).toEqual({ shortest: never, longest: never });
      expect(reductionRate(at)).toEqual({ slowest: 0, fastest: 0 });
    }
  });

  test('above 80 °C no faster kill is claimed than 0.45 to 0.625 min', () => {
    expect(decimalReductionBand(95)).toEqual({ shortest: 0.45 * MINUTE, longest: 0.625 * MINUTE });
  });
});

test('in 500 pairs of temperatures the hotter is never slower, and the band is open above 45 °C', () => {
  const temperature = fc.double({ min: 30, max: 100, noNaN: true });
  fc.assert(
    fc.property(temperature, temperature, (a, b) => {
      const cool = decimalReductionBand(Math.min(a, b));
      const hot = decimalReductionBand(Math.max(a, b));
      const slack = 1 + 1e-12; // rounding where two pieces meet
      expect(hot.shortest).toBeLessThanOrEqual(cool.shortest * slack);
      expect(hot.longest).toBeLessThanOrEqual(cool.longest * slack);
      if (Math.min(a, b) > 45.001) expect(cool.shortest).toBeLessThan(cool.longest);
    }),
    { numRuns: 500 },
  );
});

test('an hour at 60 °C is 19.2 to 81.1 tenfold reductions', () => {
  const { slowest, fastest } = reductionRate(60);
  expect(slowest * 3600).toBeCloseTo(60 / 3.125, 9); // rounding
  expect(fastest * 3600).toBeCloseTo(60 / 0.74, 9); // rounding
});

test('on a ramp from 20 to 70 °C at 1 K a minute both sums only grow, and that of a slower ramp is larger', () => {
  const sums = (seconds: number) => {
    let slow = 0;
    let fast = 0;
    for (let t = 0; t < 50 * seconds; t += 10) {
      const { slowest, fastest } = reductionRate(20 + t / seconds);
      expect(slowest).toBeGreaterThanOrEqual(0);
      expect(fastest).toBeGreaterThanOrEqual(slowest);
      slow += slowest * 10;
      fast += fastest * 10;
    }
    return { slow, fast };
  };
  const once = sums(60);
  const twice = sums(120);
  expect(once.fast).toBeGreaterThan(once.slow);
  // twice as long at every temperature; steps of 10 s, hence 2 %
  expect(twice.slow / once.slow).toBeCloseTo(2, 1);
  expect(twice.fast / once.fast).toBeCloseTo(2, 1);
});
