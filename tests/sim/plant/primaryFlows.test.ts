import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import type { Variant } from '../../../shared/variant.ts';
import { coilPressureDrop } from '../../../sim/closures/coilPressureDrop.ts';
import { tabulatedWater } from '../../../sim/closures/water.ts';
import {
  type PrimaryFlows,
  primaryFlows,
  primaryVelocity,
} from '../../../sim/plant/primaryFlows.ts';
import { anyVariant } from '../../make/anyVariant.ts';

const base = defaultVariant('flows');
const water = tabulatedWater();
const litre = 1 / 60_000; // m³/s in a litre per minute

const flowsOf = (variant: Variant) => primaryFlows(variant, water);
const withPrimary = (primary: Partial<Variant['primary']>): Variant => ({
  ...base,
  primary: { ...base.primary, ...primary },
});
const arranged = (arrangement: Variant['heating']['arrangement']): Variant => ({
  ...base,
  heating: { ...base.heating, arrangement },
});

// IAPWS at 65 °C, as printed in tables: 980.55 kg/m³ and 433.2 µPa s
const density = water.density(65);
const viscosity = water.viscosity(65);

/** Pressure of the default circulator, 5 m at no flow and none at 50 l/min, Pa. */
const pump = (q: number) => density * 9.80665 * 5 * (1 - (q / (50 * litre)) ** 2);

/** What a part of so many pascals at 15 l/min loses, Pa. */
const part = (pascals: number, q: number) => pascals * (q / (15 * litre)) ** 2;

/** Friction of 22 mm copper, bore 20.2 mm, by Haaland’s formula with a roughness of 1.5 µm, Pa. */
function copper22(length: number, q: number): number {
  const bore = 0.0202;
  const velocity = q / ((Math.PI / 4) * bore ** 2);
  const Re = (density * velocity * bore) / viscosity;
  const root = -1.8 * Math.log10((1.5e-6 / bore / 3.7) ** 1.11 + 6.9 / Re);
  return ((length / bore) * density * velocity ** 2) / 2 / root ** 2;
}

/** The coil branch of the default: valve, 10 m of pipe and 8 elbows of 30 bores, the coil’s tube, Pa. */
function coilBranch(q: number, valve: number): number {
  const { tubeOutside, tubeWall, coilDiameter, length } = base.coil;
  const tube = { bore: tubeOutside - 2 * tubeWall, coilDiameter, length };
  return (
    part(valve, q) +
    copper22(10 + 8 * 30 * 0.0202, q) +
    coilPressureDrop(tube, q, density, viscosity)
  );
}

test('water at 65 °C is that of the tables: 980.6 kg/m³ and 433 µPa s', () => {
  expect(density).toBeCloseTo(980.55, 1); // printed digits
  expect(viscosity * 1e6).toBeCloseTo(433.2, 0);
});

describe('the default plant', () => {
  const flows = flowsOf(base);

  test('sends 16.24 l/min through the coil, where boiler, valve, pipe and coil lose what the pump adds, to 1e-6', () => {
    const q = flows.coilAlone;
    expect(q / litre).toBeCloseTo(16.24, 2); // printed digits
    const lost = part(25_000, q) + coilBranch(q, 2000);
    expect(lost / pump(q)).toBeCloseTo(1, 6);
  });

  test('sends 15.28 l/min through the radiators, by hand where 42 kPa at 15 l/min meet the pump', () => {
    // p₀ (1 − (Q / 50)²) = 42 000 (Q / 15)², p₀ = 980.55 × 9.80665 × 5 = 48 080 Pa
    const exact = Math.sqrt(48_080 / (48_080 / 50 ** 2 + 42_000 / 15 ** 2));
    expect(exact).toBeCloseTo(15.28, 2);
    expect(flows.radiatorsAlone / litre).toBeCloseTo(exact, 3); // worked to 5 figures
  });

  test('divides 18.1 l/min when both run, with the same pressure across both branches to 1e-6', () => {
    const { coilShared, radiatorsShared } = flowsOf(arranged('simultaneous'));
    const whole = coilShared + radiatorsShared;
    expect(whole / litre).toBeCloseTo(18.1, 1); // printed digits
    const across = pump(whole) - part(25_000, whole);
    expect(coilBranch(coilShared, 2000) / across).toBeCloseTo(1, 6);
    expect(part(17_000, radiatorsShared) / across).toBeCloseTo(1, 6);
  });

  test('gives less to the coil and in all through a mid-position valve of 6 kPa than through two zone valves of 2 kPa: 17.8 of 18.1 l/min', () => {
    const middle = flowsOf(arranged('midPosition'));
    const zones = flowsOf(arranged('simultaneous'));
    expect(middle.coilShared).toBeLessThan(zones.coilShared);
    expect(middle.coilShared + middle.radiatorsShared).toBeLessThan(
      zones.coilShared + zones.radiatorsShared,
    );
    const whole = middle.coilShared + middle.radiatorsShared;
    expect(whole / litre).toBeCloseTo(17.8, 1); // printed digits
    const across = pump(whole) - part(25_000, whole);
    expect(coilBranch(middle.coilShared, 6000) / across).toBeCloseTo(1, 6);
    expect(part(21_000, middle.radiatorsShared) / across).toBeCloseTo(1, 6);
    // one circuit at a time finds the valve wide open
    expect(middle.coilAlone).toBe(zones.coilAlone);
    expect(middle.radiatorsAlone).toBe(zones.radiatorsAlone);
  });

  test('turns slower with 20 elbows, 30 m of pipe or pipe of 15 mm, faster with 0 elbows', () => {
    const coilFlow = (primary: Partial<Variant['primary']>) =>
      flowsOf(withPrimary(primary)).coilAlone;
    for (const worse of [{ bends: 20 }, { length: 30 }, { size: '15' as const }]) {
      expect(coilFlow(worse)).toBeLessThan(flows.coilAlone);
    }
    expect(coilFlow({ bends: 0 })).toBeGreaterThan(flows.coilAlone);
  });

  test('loses flow to a second coil in the same branch: its tube adds to the 1st', () => {
    const secondCoil = { ...base.secondCoil, fitted: 'inSeries' as const };
    const two = flowsOf({ ...base, secondCoil });
    expect(two.coilAlone).toBeLessThan(flows.coilAlone);
    expect(two.radiatorsAlone).toBe(flows.radiatorsAlone);
  });
});

test('a given flow of 12 l/min passes through: whole alone, shared 40 to 60 as set, whatever the pump', () => {
  const given = withPrimary({ flowFrom: 'given', flow: 12 * litre, coilShare: 0.4 });
  const weak = { ...given, circulator: { ...given.circulator, shutOffHead: 0.2 } };
  for (const variant of [given, weak]) {
    const flows = flowsOf(variant);
    expect(flows.coilAlone).toBe(12 * litre);
    expect(flows.radiatorsAlone).toBe(12 * litre);
    expect(flows.coilShared / litre).toBeCloseTo(4.8, 12); // rounding
    expect(flows.radiatorsShared / litre).toBeCloseTo(7.2, 12);
  }
});

test('15 l/min run at 0.780 m/s in 22 mm and at 1.724 m/s in 15 mm, by hand over a bore of 20.2 and 13.6 mm', () => {
  const speed = (size: '15' | '22') => primaryVelocity(withPrimary({ size }), 15 * litre);
  // 250 ml/s over 3.2047 cm² and over 1.4527 cm²
  expect(speed('22')).toBeCloseTo(250 / 320.47, 4); // worked to 5 figures
  expect(speed('22')).toBeCloseTo(0.78, 3);
  expect(speed('15')).toBeCloseTo(250 / 145.27, 4);
  expect(primaryVelocity(base, 0)).toBe(0);
});

describe('200 networks', () => {
  const anyNetwork = anyVariant.map((variant): Variant => {
    return { ...variant, primary: { ...variant.primary, flowFrom: 'network' } };
  });
  const close = 1 + 1e-6; // how closely a flow is found

  test('pass more with both open than with either alone, and less than both alone together', () => {
    fc.assert(
      fc.property(anyNetwork, (variant) => {
        const { coilAlone, radiatorsAlone, coilShared, radiatorsShared }: PrimaryFlows = flowsOf({
          ...variant,
          heating: { ...variant.heating, arrangement: 'simultaneous' },
        });
        const whole = coilShared + radiatorsShared;
        expect(whole).toBeLessThan((coilAlone + radiatorsAlone) * close);
        expect(whole * close).toBeGreaterThan(Math.max(coilAlone, radiatorsAlone));
        expect(coilShared).toBeLessThan(coilAlone * close);
        expect(radiatorsShared).toBeLessThan(radiatorsAlone * close);
        expect(Math.min(coilShared, radiatorsShared)).toBeGreaterThan(0);
      }),
      { numRuns: 200 },
    );
  });

  test('never send more through the coil for 0 to 2000 kPa in its way, nor less through the radiators', () => {
    fc.assert(
      fc.property(anyNetwork, fc.double({ min: 0, max: 2e6, noNaN: true }), (variant, more) => {
        const { coilBranchDrop } = variant.primary;
        const before = flowsOf(variant);
        const after = flowsOf({
          ...variant,
          primary: { ...variant.primary, coilBranchDrop: coilBranchDrop + more },
        });
        expect(after.coilAlone).toBeLessThanOrEqual(before.coilAlone * close);
        expect(after.coilShared).toBeLessThanOrEqual(before.coilShared * close);
        expect(after.radiatorsShared * close).toBeGreaterThanOrEqual(before.radiatorsShared);
        expect(after.radiatorsAlone).toBe(before.radiatorsAlone);
      }),
      { numRuns: 200 },
    );
  });

  test('pass in all no more through a mid-position valve than through two zone valves', () => {
    fc.assert(
      fc.property(anyNetwork, (variant) => {
        const whole = (arrangement: 'midPosition' | 'simultaneous') => {
          const heating = { ...variant.heating, arrangement };
          const { coilShared, radiatorsShared } = flowsOf({ ...variant, heating });
          return coilShared + radiatorsShared;
        };
        expect(whole('midPosition')).toBeLessThan(whole('simultaneous') * close);
      }),
      { numRuns: 200 },
    );
  });
});
