import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import type { Variant } from '../../../shared/variant.ts';
import { flowTarget } from '../../../sim/control/flowTarget.ts';

const base = defaultVariant('targets'); // 80 °C for hot water, 60 °C for heating

/** A variant with 55 °C for heating, not below 30 °C, and its control. */
function controlled(
  control: Variant['heating']['control'],
  targets: Variant['boiler']['targets'] = 'separate',
): Variant {
  return {
    ...base,
    boiler: { ...base.boiler, heatingFlow: 55, targets },
    heating: { ...base.heating, control, designOutside: -5, lowestFlow: 30 },
  };
}

describe('a room stat', () => {
  test('has 80 °C for hot water and 60 °C for heating when each has its own, whatever the weather', () => {
    for (const outside of [-20, 0, 30]) {
      expect(flowTarget(base, 'hotWater', 20, outside)).toBe(80);
      expect(flowTarget(base, 'heating', 20, outside)).toBe(60);
    }
  });

  test('has 60 °C for both when the target is shared', () => {
    const shared = { ...base, boiler: { ...base.boiler, targets: 'shared' as const } };
    expect(flowTarget(shared, 'hotWater', 20, 0)).toBe(60);
    expect(flowTarget(shared, 'heating', 20, 0)).toBe(60);
  });
});

describe('load compensation over 2 K round 20 °C, from 30 to 55 °C', () => {
  const at = (air: number) => flowTarget(controlled('loadCompensation'), 'heating', air, 0);

  test('is 55 °C at 19 °C and below, 42.5 °C at 20 °C, 30 °C at 21 °C and above', () => {
    expect([10, 19, 20, 21, 30].map(at)).toEqual([55, 55, 42.5, 30, 30]);
  });

  test('is 33.906 °C at 20.5 °C, by hand 30 + 25 × 0.25² × (3 − 0.5)', () => {
    expect(at(20.5)).toBeCloseTo(33.906, 3); // printed digits
  });

  test('does not ask what the weather is: the same at −20 and 20 °C outside', () => {
    const variant = controlled('loadCompensation');
    expect(flowTarget(variant, 'heating', 19.8, -20)).toBe(
      flowTarget(variant, 'heating', 19.8, 20),
    );
  });

  test('leaves hot water at 80 °C, and rules it when the target is shared: 42.5 °C at 20 °C', () => {
    expect(flowTarget(controlled('loadCompensation'), 'hotWater', 20, 0)).toBe(80);
    expect(flowTarget(controlled('loadCompensation', 'shared'), 'hotWater', 20, 0)).toBe(42.5);
  });
});

describe('weather compensation for 55 °C at −5 °C outside and 20 °C in', () => {
  const at = (outside: number) =>
    flowTarget(controlled('weatherCompensation'), 'heating', 20, outside);

  test('is 55 °C at −5 °C and does not pass it at −30 °C', () => {
    expect(at(-5)).toBeCloseTo(55, 12); // rounding
    expect(at(-30)).toBe(55);
  });

  test('is 36.826 °C at 10 °C, by hand 20 + 30 × 0.4^(1/1.3) + 0.4 × 5', () => {
    expect(at(10)).toBeCloseTo(20 + 30 * 0.4 ** (1 / 1.3) + 2, 9); // rounding
    expect(at(10)).toBeCloseTo(36.826, 3); // printed digits
  });

  test('does not fall below 30 °C, which the curve passes between 14 and 15 °C, nor at 25 °C outside', () => {
    // by hand at 14 °C: 20 + 30 × 0.24^(1/1.3) + 1.2 = 31.2; at 15 °C: 20 + 30 × 0.2^(1/1.3) + 1 = 29.7
    expect(at(14)).toBeCloseTo(31.2, 1); // worked to 0.1 K
    expect([15, 20, 25].map(at)).toEqual([30, 30, 30]);
  });

  test('does not ask how warm the rooms are: the same at 15 and 25 °C', () => {
    const variant = controlled('weatherCompensation');
    expect(flowTarget(variant, 'heating', 15, 3)).toBe(flowTarget(variant, 'heating', 25, 3));
  });

  test('leaves hot water at 80 °C, and rules it when the target is shared: 36.826 °C at 10 °C', () => {
    expect(flowTarget(controlled('weatherCompensation'), 'hotWater', 20, 10)).toBe(80);
    const shared = controlled('weatherCompensation', 'shared');
    expect(flowTarget(shared, 'hotWater', 20, 10)).toBeCloseTo(36.826, 3);
  });
});

test('300 compensated targets lie between the lowest and the heating flow, and never rise with the room or the weather', () => {
  const anyControl = fc.constantFrom('loadCompensation' as const, 'weatherCompensation' as const);
  fc.assert(
    fc.property(
      anyControl,
      fc.double({ min: 25, max: 85, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 10, max: 26, noNaN: true }),
      fc.double({ min: -40, max: 35, noNaN: true }),
      fc.double({ min: 0, max: 20, noNaN: true }),
      (control, heatingFlow, share, air, outside, warmer) => {
        const lowestFlow = 20 + share * (heatingFlow - 20);
        const variant = {
          ...base,
          boiler: { ...base.boiler, heatingFlow },
          heating: { ...base.heating, control, lowestFlow },
        };
        const target = flowTarget(variant, 'heating', air, outside);
        expect(target).toBeGreaterThanOrEqual(lowestFlow);
        expect(target).toBeLessThanOrEqual(heatingFlow + 1e-9); // rounding at the top of the curve
        const later = flowTarget(variant, 'heating', air + warmer, outside + warmer);
        expect(later).toBeLessThanOrEqual(target + 1e-9);
      },
    ),
    { numRuns: 300 },
  );
});
