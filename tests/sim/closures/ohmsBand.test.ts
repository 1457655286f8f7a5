import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { degreesBand, type Element, ohmsBand } from '../../../sim/closures/ohmsBand.ts';
import { platinumResistance } from '../../../sim/closures/platinum.ts';
import { thermistorResistance } from '../../../sim/closures/thermistor.ts';

const thermistor = (r25Tolerance: number, betaTolerance: number, beta = 3435): Element => ({
  kind: 'thermistor',
  r25: 10_000,
  beta,
  r25Tolerance,
  betaTolerance,
});
const platinum: Element = { kind: 'platinum', r0: 1000 };

describe('a thermistor of 10 kΩ', () => {
  // by hand: a share d of R25 is d / (B / T²) kelvin, with T = 333.15 K; printed to 0.01 K
  test.each([
    [3435, 0.01, 0.32],
    [3977, 0.01, 0.28],
    [3435, 0.05, 1.6],
    [3977, 0.05, 1.4],
  ])(
    'of beta %d K and %d of R25 either way has 60 °C within about %d K',
    (beta, share, kelvins) => {
      const ohms = thermistorResistance(60, 10_000, beta);
      const { low, nominal, high } = degreesBand(thermistor(share, 0, beta), ohms);
      expect(nominal).toBeCloseTo(60, 9); // rounding
      // 0.01 K as printed for 1 %; for 5 % printed to 0.1 K, and the curve bends by 0.04 K
      const printed = share < 0.05 ? 0.005 : 0.1;
      expect(Math.abs(high - 60 - kelvins)).toBeLessThanOrEqual(printed);
      expect(Math.abs(60 - low - kelvins)).toBeLessThanOrEqual(printed);
    },
  );

  test('whose beta alone is 1 % off has 60 °C from 59.61 to 60.40 °C and 25 °C exactly', () => {
    const off = thermistor(0, 0.01);
    const { low, high } = degreesBand(off, thermistorResistance(60, 10_000, 3435));
    // by hand: 1/298.15 − 3.523655e-4 / 0.99 = 1/333.5455 and 1/298.15 − 3.523655e-4 / 1.01 = 1/332.7632
    expect(high).toBeCloseTo(60.3955, 3); // by hand, to 0.0001 K of seven figures
    expect(low).toBeCloseTo(59.6132, 3); // as above
    expect(degreesBand(off, 10_000)).toEqual({ low: 25, nominal: 25, high: 25 });
    expect(ohmsBand(off, 25)).toEqual({ low: 10_000, nominal: 10_000, high: 10_000 });
  });

  test('with both 1 % off has at 60 °C 2916 to 3047 Ω, the corners worked by hand', () => {
    // 9900 exp(−3469.35 × 3.523655e-4) = 2915.5, 10 100 exp(−3400.65 × 3.523655e-4) = 3047.3
    const { low, nominal, high } = ohmsBand(thermistor(0.01, 0.01), 60);
    expect([low, nominal, high].map(Math.round)).toEqual([2916, 2981, 3047]);
  });
});

describe('a platinum element of 1000 Ω, class B', () => {
  test.each([
    // temperature, tolerance by the standard
    [-10, 0.35],
    [0, 0.3],
    [60, 0.6],
    [100, 0.8],
  ])('at %d °C has the ohms of %d K either way', (temperature, tolerance) => {
    const { low, nominal, high } = ohmsBand(platinum, temperature);
    expect(nominal).toBe(platinumResistance(temperature, 1000));
    expect(low).toBeCloseTo(platinumResistance(temperature - tolerance, 1000), 9); // rounding
    expect(high).toBeCloseTo(platinumResistance(temperature + tolerance, 1000), 9); // rounding
  });

  test('that reads 60 °C is from 59.40 to 60.60 °C', () => {
    const { low, nominal, high } = degreesBand(platinum, platinumResistance(60, 1000));
    expect(nominal).toBeCloseTo(60, 9); // rounding
    expect(low).toBeCloseTo(59.7 / 1.005, 9); // by hand: 60 − 0.3 = t (1 + 0.005)
    expect(high).toBeCloseTo(60.3 / 0.995, 9); // by hand: 60 + 0.3 = t (1 − 0.005)
  });
});

test('in 300 cases both ways agree: at either end of the degrees the ohms in hand are an end of its ohms', () => {
  const elements = fc.oneof(
    fc.record({
      kind: fc.constant('thermistor' as const),
      r25: fc.double({ min: 1000, max: 100_000, noNaN: true }),
      beta: fc.double({ min: 2500, max: 5000, noNaN: true }),
      r25Tolerance: fc.double({ min: 0, max: 0.1, noNaN: true }),
      betaTolerance: fc.double({ min: 0, max: 0.05, noNaN: true }),
    }),
    fc.record({ kind: fc.constant('platinum' as const), r0: fc.constantFrom(100, 1000) }),
  );
  const temperatures = fc.double({ min: -20, max: 120, noNaN: true });
  fc.assert(
    fc.property(elements, temperatures, (element: Element, temperature) => {
      const ohms = ohmsBand(element, temperature).nominal;
      const { low, nominal, high } = degreesBand(element, ohms);
      expect(low).toBeLessThanOrEqual(nominal);
      expect(nominal).toBeLessThanOrEqual(high);
      for (const end of [low, high]) {
        const band = ohmsBand(element, end);
        const nearest = Math.min(Math.abs(band.low / ohms - 1), Math.abs(band.high / ohms - 1));
        expect(nearest).toBeLessThan(1e-9); // rounding
      }
    }),
    { numRuns: 300 },
  );
});
