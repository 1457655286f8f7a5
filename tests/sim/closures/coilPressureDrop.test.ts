import { describe, expect, test } from 'vitest';
import { coilFriction } from '../../../sim/closures/coilFriction.ts';
import { coilPressureDrop } from '../../../sim/closures/coilPressureDrop.ts';
import { criticalReynolds } from '../../../sim/closures/criticalReynolds.ts';
import {
  curvedFriction,
  curvedLaminarFrictionRecord,
  curvedTurbulentFrictionRecord,
} from '../../../sim/closures/curvedFriction.ts';
import { pipeFriction } from '../../../sim/closures/pipeFriction.ts';

const laminar = (Re: number, curvature: number) =>
  curvedLaminarFrictionRecord.compute({ Re, curvature });
const turbulent = (Re: number, curvature: number) =>
  curvedTurbulentFrictionRecord.compute({ Re, curvature });

/** source: schmidt, friction in both turbulent ranges on Blasius; read second-hand */
function schmidtFriction(Re: number, r: number): number {
  const straight = 0.3164 / Re ** 0.25;
  return Re < 2.2e4
    ? straight * (1 + (2.88e4 / Re) * r ** 0.62)
    : straight * (1 + 0.0823 * (1 + r) * r ** 0.53 * Re ** 0.25);
}

/** source: Ito, 1959, 0.034 < Re r² < 300, Fanning factor times 4; read second-hand */
const itoFriction = (Re: number, r: number): number =>
  4 * Math.sqrt(r) * (0.00725 + 0.076 / (Re * r * r) ** 0.25);

/** source: moriNakayama, laminar, 100 < De < 2000; read second-hand */
function moriLaminar(Re: number, r: number): number {
  const root = Math.sqrt(Re * Math.sqrt(r));
  return ((64 / Re) * 0.108 * root) / (1 - 3.253 / root);
}

/** source: schmidt, laminar; read second-hand */
const schmidtLaminar = (Re: number, r: number): number =>
  (64 / Re) * (1 + 0.14 * r ** 0.97 * Re ** (1 - 0.644 * r ** 0.312));

describe('printed checks', () => {
  test('laminar at Re 250, 0.02 m in 0.1 m: 0.40632818 here, 0.42224583 and 0.47460726 by two others', () => {
    expect(curvedFriction(250, 0.02 / 0.1)).toBeCloseTo(0.40632818, 8); // printed to 8 places
    expect(moriLaminar(250, 0.02 / 0.1)).toBeCloseTo(0.42224583, 8);
    expect(schmidtLaminar(250, 0.02 / 0.1)).toBeCloseTo(0.47460726, 8);
  });

  test('turbulent at Re 10 000, 0.01 m in 0.2 m: 0.037311802', () => {
    expect(turbulent(1e4, 0.01 / 0.2)).toBeCloseTo(0.037311802, 9); // printed to 9 places
  });
});

describe('friction in a coil', () => {
  const usual = [0.01, 0.03, 0.0583, 0.1];

  test('below a Dean number of 11.6 it is that of a straight tube, at 11.62 still to 4 figures, at 20 3.5 % more', () => {
    const curvature = 0.04; // De = Re / 5
    expect(curvedFriction(50, curvature)).toBe(64 / 50);
    expect(curvedFriction(57.9, curvature)).toBe(64 / 57.9);
    expect(curvedFriction(58.1, curvature) * 58.1).toBeCloseTo(64, 2);
    // By hand at De 20: 0.58^0.45 = 0.7826, 0.2174^2.2222 = 0.03368, 64 / (1 − 0.03368) = 66.23
    expect(curvedFriction(100, curvature) * 100).toBeCloseTo(66.23, 2);
  });

  test('where the flow turns turbulent the two formulas differ by 2 to 9 %, with that of Schmidt by 41 to 45 %', () => {
    for (const curvature of [...usual, 0.2]) {
      const Re = criticalReynolds(curvature);
      const ours = turbulent(Re, curvature) / laminar(Re, curvature);
      expect(ours).toBeGreaterThan(1.015); // 2 %, in whole per cent
      expect(ours).toBeLessThan(1.095);
      const schmidt = schmidtFriction(Re, curvature) / laminar(Re, curvature);
      expect(schmidt).toBeGreaterThan(1.405);
      expect(schmidt).toBeLessThan(1.455);
    }
  });

  test.each([2.2e4, 4e4, 1e5])(
    'at Re %f it is within 7 per cent of Schmidt and Ito, and 11 per cent of the friction the heat is worked out with',
    (Re) => {
      for (const curvature of usual) {
        const f = curvedFriction(Re, curvature);
        // The spread of the published formulas
        expect(Math.abs(f / schmidtFriction(Re, curvature) - 1)).toBeLessThan(0.07);
        expect(Math.abs(f / itoFriction(Re, curvature) - 1)).toBeLessThan(0.07);
        expect(Math.abs(f / coilFriction(Re, curvature) - 1)).toBeLessThan(0.11);
      }
    },
  );

  test('in a tight coil of curvature 0.2 at Re 100 000 it is within a sixth of Schmidt and Ito', () => {
    // The spread of the published formulas at the end of the range
    expect(Math.abs(curvedFriction(1e5, 0.2) / schmidtFriction(1e5, 0.2) - 1)).toBeLessThan(1 / 6);
    expect(Math.abs(curvedFriction(1e5, 0.2) / itoFriction(1e5, 0.2) - 1)).toBeLessThan(1 / 6);
  });

  test('a usual coil, curvature 0.03 to 0.1, has 1.15 to 1.4 times the friction of a straight tube at Re 22 000 to 100 000', () => {
    const ratios = [0.03, 0.0583, 0.1].flatMap((curvature) =>
      [2.2e4, 5e4, 1e5].map((Re) => curvedFriction(Re, curvature) / pipeFriction(Re, 0)),
    );
    expect(Math.min(...ratios)).toBeGreaterThan(1.15);
    expect(Math.max(...ratios)).toBeLessThan(1.4);
    expect(Math.max(...ratios) - Math.min(...ratios)).toBeGreaterThan(0.15); // tighter turns cost more
  });

  test.each([...usual, 0.2])(
    'at curvature %f the pressure rises with every 0.3 per cent more flow from Re 1 to 200 000, without a jump',
    (curvature) => {
      let last = 0;
      for (let Re = 1; Re < 2e5; Re *= 1.003) {
        const now = curvedFriction(Re, curvature) * Re * Re;
        expect(now).toBeGreaterThan(last);
        // Pressure rises at most as flow², 0.6 % for 0.3 %
        if (last > 0) expect(now / last).toBeLessThan(1.0061);
        last = now;
      }
    },
  );
});

describe('pressure lost along a coil', () => {
  const density = 974.84; // water at 75 °C
  const viscosity = 377.411e-6;
  const coil = { bore: 0.0204, coilDiameter: 0.35, length: 10 };

  test('15 l/min at 75 °C through 10 m of 20.4 mm bore wound at 350 mm lose 3943 Pa, worked by hand', () => {
    // v = 0.00025 / (π / 4 × 0.0204²) = 0.76487 m/s, Re = 40 303, Re (d / D)² = 136.92, X = 0.37386,
    // f = 0.3 × 0.24142 × 0.37386 × (1 + 0.041872) = 0.028211; × 490.20 × 974.84 × 0.58504 / 2
    expect(coilPressureDrop(coil, 15 / 60_000, density, viscosity)).toBeCloseTo(3943, -1);
  });

  test('twice the length loses twice as much, half the flow between a quarter and a half, no flow 0 Pa', () => {
    const flow = 15 / 60_000;
    const full = coilPressureDrop(coil, flow, density, viscosity);
    const long = coilPressureDrop({ ...coil, length: 20 }, flow, density, viscosity);
    expect(long / full).toBeCloseTo(2, 12); // rounding
    const half = coilPressureDrop(coil, flow / 2, density, viscosity);
    expect(half / full).toBeGreaterThan(1 / 4);
    expect(half / full).toBeLessThan(1 / 3); // flow^1.8 gives 0.287
    expect(coilPressureDrop(coil, 0, density, viscosity)).toBe(0);
  });
});
