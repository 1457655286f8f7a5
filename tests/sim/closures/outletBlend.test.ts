import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mixedShare } from '../../../sim/closures/mixedLitres.ts';
import { hotPart, outletBlend } from '../../../sim/closures/outletBlend.ts';
import { mixtures } from '../../reference/workedExamples.ts';

test.each(mixtures)(
  '$total kg at $mixed °C from $hot and $cold °C take $hotPart kg of hot',
  (example) => {
    const { total, mixed, hot, cold, hotPart: printed, rounding } = example;
    expect(Math.abs(hotPart(total, hot, cold, mixed) - printed)).toBeLessThanOrEqual(rounding);
  },
);

test('191 kg at 36 °C from 49 and 13 °C leave 69 kg of cold', () => {
  expect(Math.round(191 - hotPart(191, 49, 13, 36))).toBe(69);
});

test('a shower of 10 l/min at 41 °C takes 6 l/min at 60 °C with cold at 12.5 °C', () => {
  expect(hotPart(10, 60, 12.5, 41)).toBeCloseTo(6, 12); // by hand 28.5 / 47.5, rounding
});

describe('when the wanted temperature is out of reach', () => {
  test('hot at 35 °C comes out alone at 35 °C when 40 °C are wanted', () => {
    expect(outletBlend(35, 10, 40)).toEqual({ hotShare: 1, temperature: 35 });
    expect(hotPart(0.2, 35, 10, 40)).toBe(0.2);
  });

  test('cold at 25 °C comes out alone when 20 °C are wanted', () => {
    expect(outletBlend(60, 25, 20)).toEqual({ hotShare: 0, temperature: 25 });
  });

  test('hot and cold both at 40 °C are 40 °C, all hot', () => {
    expect(outletBlend(40, 40, 40)).toEqual({ hotShare: 1, temperature: 40 });
  });
});

const degrees = fc.double({ min: 0, max: 100, noNaN: true });

test('in 500 blends the heat of both parts is the heat of the mixed, and the share is 0 to 1', () => {
  fc.assert(
    fc.property(degrees, degrees, degrees, (hot, cold, wanted) => {
      const { hotShare, temperature } = outletBlend(hot, cold, wanted);
      expect(hotShare).toBeGreaterThanOrEqual(0);
      expect(hotShare).toBeLessThanOrEqual(1);
      // rounding, of up to 100 °C
      expect(Math.abs(hotShare * hot + (1 - hotShare) * cold - temperature)).toBeLessThan(
        1e-12 * 100,
      );
    }),
    { numRuns: 500 },
  );
});

test('in 500 blends cooler hot never takes a smaller share, up to all of it without a jump', () => {
  fc.assert(
    fc.property(degrees, degrees, (a, b) => {
      const cooler = outletBlend(Math.min(a, b), 10, 40).hotShare;
      expect(cooler).toBeGreaterThanOrEqual(outletBlend(Math.max(a, b), 10, 40).hotShare);
    }),
    { numRuns: 500 },
  );
  expect(outletBlend(40 + 1e-9, 10, 40).hotShare).toBeCloseTo(1, 9); // 1e-9 K of 30 K
});

test('one litre of hot at 60 °C makes as much at 40 °C as the count of usable litres says', () => {
  expect(1 / outletBlend(60, 10, 40).hotShare).toBeCloseTo(mixedShare(60, 10, 40), 12); // rounding
});
