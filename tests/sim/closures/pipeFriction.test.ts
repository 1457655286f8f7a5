import { describe, expect, test } from 'vitest';
import { copperTubes } from '../../../sim/closures/copperTube.ts';
import {
  boreVelocity,
  COPPER_ROUGHNESS,
  pipeFriction,
  pipePressureDrop,
} from '../../../sim/closures/pipeFriction.ts';

/** The implicit equation the formula stands for. source: Colebrook, 1939; from memory */
function colebrook(Re: number, roughness: number): number {
  let f = 0.02;
  for (let turn = 0; turn < 60; turn++) {
    f = (-2 * Math.log10(roughness / 3.7 + 2.51 / (Re * Math.sqrt(f)))) ** -2;
  }
  return f;
}

describe('friction factor of a straight pipe', () => {
  // source: whiteFluid, table of the smooth pipe and of the fully rough one; from memory
  test.each([
    [4e3, 0, 0.0399],
    [1e4, 0, 0.0309],
    [1e5, 0, 0.018],
    [1e6, 0, 0.0116],
    [1e7, 0, 0.0081],
    [1e9, 1e-4, 0.012],
    [1e9, 1e-3, 0.0196],
    [1e9, 0.01, 0.0379],
    [1e9, 0.05, 0.0716],
  ])('at Re %f and roughness %f it is %f as tabled', (Re, roughness, printed) => {
    // 1.4 % is the greatest difference from Colebrook; printed to 3 figures, 0.6 % at 0.0081
    expect(Math.abs(pipeFriction(Re, roughness) / printed - 1)).toBeLessThan(0.02);
  });

  test('from Re 4000 to 1e8 and roughness 0 to 0.05 it is within 1.4 % of Colebrook, and as far off somewhere', () => {
    let worst = 0;
    for (const roughness of [0, 1e-6, 1e-5, 1e-4, 1e-3, 0.01, 0.05]) {
      for (let Re = 4000; Re < 1e8; Re *= 1.1) {
        const off = Math.abs(pipeFriction(Re, roughness) / colebrook(Re, roughness) - 1);
        worst = Math.max(worst, off);
      }
    }
    expect(worst).toBeLessThan(0.0145); // stated as 1.4 %, under the 2 % its author gives
    expect(worst).toBeGreaterThan(0.0125);
  });

  test('a smooth pipe is within 3.3 % of Blasius from Re 4000 to 100 000', () => {
    for (let Re = 4000; Re < 1e5; Re *= 1.05) {
      // Blasius: 0.3164 Re^−0.25, from memory; the two are fits to the same pipes
      expect(Math.abs(pipeFriction(Re, 0) / (0.3164 / Re ** 0.25) - 1)).toBeLessThan(0.033);
    }
  });

  test('laminar flow has 64 / Re: 0.064 at Re 1000, whatever the roughness', () => {
    expect(pipeFriction(1000, 0)).toBe(0.064);
    expect(pipeFriction(1000, 0.05)).toBe(0.064);
  });

  test('half way between Re 2300 and 4000 it is half way between 64 / 2300 and the turbulent value', () => {
    const middle = (64 / 2300 + pipeFriction(4000, 1e-4)) / 2;
    expect(pipeFriction(3150, 1e-4)).toBeCloseTo(middle, 12); // rounding
  });
});

describe('pressure lost along a straight pipe', () => {
  const density = 974.84; // water at 75 °C
  const viscosity = 377.411e-6;

  test('15 l/min at 75 °C in 22 mm copper run at 0.780 m/s and lose 321.4 Pa/m, worked by hand', () => {
    const { bore } = copperTubes['22'];
    const flow = 15 / 60_000;
    // 0.00025 / (π / 4 × 0.0202²) = 0.78009 m/s; Re = 974.84 × 0.78009 × 0.0202 / 377.411e-6 = 40 702;
    // k / d = 7.426e-5, (k / d / 3.7)^1.11 = 6.107e-6, 6.9 / Re = 1.69525e-4, sum 1.75632e-4, its
    // logarithm −3.75540, f = 1 / (1.8 × 3.75540)² = 0.021885; × 974.84 × 0.78009² / 2 / 0.0202
    expect(boreVelocity(bore, flow)).toBeCloseTo(0.78009, 5);
    const perMetre = pipePressureDrop(1, bore, COPPER_ROUGHNESS, flow, density, viscosity);
    expect(perMetre).toBeCloseTo(321.36, 1); // worked to 5 figures
    const run = pipePressureDrop(24, bore, COPPER_ROUGHNESS, flow, density, viscosity);
    expect(run / perMetre).toBeCloseTo(24, 9); // in proportion to length
  });

  test('a textbook pipe of 200 ft and 6 in with 6 ft/s loses 280 lbf/ft², 13.4 kPa, within 3 %', () => {
    // source: whiteFluid, example of the asphalted cast-iron pipe, roughness 0.0004 ft; from memory
    const foot = 0.3048; // m
    const bore = 0.5 * foot;
    const flow = 6 * foot * (Math.PI / 4) * bore * bore;
    const slugPerCubicFoot = 515.379; // kg/m³
    const poundSecondPerSquareFoot = 47.8803; // Pa s
    const found = pipePressureDrop(
      200 * foot,
      bore,
      0.0004 * foot,
      flow,
      1.94 * slugPerCubicFoot,
      2.09e-5 * poundSecondPerSquareFoot,
    );
    // Printed with f read off a chart as 0.02, where Colebrook has 0.0198, ours 0.0197
    expect(Math.abs(found / (280 * 47.8803) - 1)).toBeLessThan(0.03);
  });

  test('0.8 l/min at 75 °C in 22 mm is laminar and follows 128 μ L Q / (π d⁴)', () => {
    const { bore } = copperTubes['22'];
    const flow = 0.8 / 60_000; // Re 2170
    const exact = (128 * viscosity * 10 * flow) / (Math.PI * bore ** 4);
    const found = pipePressureDrop(10, bore, COPPER_ROUGHNESS, flow, density, viscosity);
    expect(found / exact).toBeCloseTo(1, 12); // rounding
  });

  test.each(['8', '15', '22', '35'] as const)(
    'in %s mm it is 0 Pa without flow, and rises with every 0.3 % more flow, without a jump',
    (size) => {
      const { bore } = copperTubes[size];
      const drop = (flow: number) =>
        pipePressureDrop(1, bore, COPPER_ROUGHNESS, flow, density, viscosity);
      expect(drop(0)).toBe(0);
      let last = 0;
      for (let flow = 1e-9; flow < 0.002; flow *= 1.003) {
        const now = drop(flow);
        expect(now).toBeGreaterThan(last);
        // Steepest in the transition: as flow^2.75 there, 0.83 % for 0.3 %
        if (last > 0) expect(now / last).toBeLessThan(1.009);
        last = now;
      }
    },
  );
});
