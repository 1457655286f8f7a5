import { describe, expect, test } from 'vitest';
import * as iapws from '../../../sim/closures/iapwsWater.ts';
import { constantWater, prandtl, tabulatedWater, type Water } from '../../../sim/closures/water.ts';
import { everyFive, releaseTable } from '../../reference/waterTable.ts';

const water = tabulatedWater();

describe('exact formulas', () => {
  test.each(releaseTable)(
    'at %f K every property is the one of the verification table',
    (K, g, s, cp, density, dvdT, viscosity, conductivity) => {
      const t = K - 273.15;
      // Printed to 9 figures; 2e-9 allows for the rounding of the last one
      const cases: [number, number][] = [
        [iapws.iapwsGibbs(t), g * 1e3],
        [iapws.iapwsEntropy(t), s * 1e3],
        [iapws.iapwsSpecificHeat(t), cp * 1e3],
        [iapws.iapwsDensity(t), density],
        [iapws.iapwsVolumeSlope(t), dvdT * 1e-7],
        [iapws.iapwsViscosity(t), viscosity * 1e-6],
        [iapws.iapwsConductivity(t), conductivity],
      ];
      // g at 260 K and s at 260 K are printed to 8 figures, hence the larger allowance there
      for (const [found, printed] of cases)
        expect(Math.abs(found / printed - 1)).toBeLessThan(4e-8);
    },
  );

  test.each(everyFive)(
    'at %f °C enthalpy and Prandtl number are the printed ones',
    (t, ...printed) => {
      const [, , , , , Pr, enthalpy] = printed;
      expect(iapws.iapwsEnthalpy(t) / 1e3).toBeCloseTo(enthalpy, 4); // printed to 0.1 J/kg
      expect(prandtl(water, t)).toBeCloseTo(Pr, 4); // printed to 1e-4
    },
  );
});

describe('tables for the run', () => {
  test.each(everyFive)('at %f °C the table gives the printed properties', (t, ...printed) => {
    const [density, cp, viscosity, conductivity, expansion] = printed;
    expect(water.density(t)).toBeCloseTo(density, 4); // printed to 1e-4 kg/m³
    // printed to 1e-3; one unit there for the table
    expect(water.specificHeat(t)).toBeCloseTo(cp, 2);
    // printed to 1e-3; one unit there for the table
    expect(water.viscosity(t) * 1e6).toBeCloseTo(viscosity, 2);
    expect(water.conductivity(t)).toBeCloseTo(conductivity, 6); // printed to 1e-6 W/(m K)
    // Printed to 1e-9 per kelvin, so half of that for rounding and 1e-9 for the table, the error it
    // states
    expect(Math.abs(water.expansion(t) - expansion * 1e-4)).toBeLessThan(1.5e-9);
  });

  test('from 0 to 100 °C they are within 0.001 % of the exact formulas, expansion within 1e-9 per kelvin', () => {
    let worst = 0;
    let worstExpansion = 0;
    for (let t = 0; t <= 100; t += 0.037) {
      worst = Math.max(
        worst,
        Math.abs(water.density(t) / iapws.iapwsDensity(t) - 1),
        Math.abs(water.specificHeat(t) / iapws.iapwsSpecificHeat(t) - 1),
        Math.abs(water.viscosity(t) / iapws.iapwsViscosity(t) - 1),
        Math.abs(water.conductivity(t) / iapws.iapwsConductivity(t) - 1),
      );
      const off = Math.abs(water.expansion(t) - iapws.iapwsExpansion(t));
      worstExpansion = Math.max(worstExpansion, off);
    }
    expect(worst).toBeLessThan(1e-5); // the stated error; 0.05 % is what the model needs
    // the stated error; at 5 °C that is 0.006 % of the coefficient
    expect(worstExpansion).toBeLessThan(1e-9);
  });

  test('their slope has no corner at any of the 54 inner knots', () => {
    const properties: (keyof Water)[] = ['density', 'viscosity', 'expansion'];
    for (const property of properties) {
      for (let t = 2; t <= 108; t += 2) {
        const at = (x: number): number => water[property](x);
        const left = (3 * at(t) - 4 * at(t - 1e-3) + at(t - 2e-3)) / 2e-3;
        const right = (4 * at(t + 1e-3) - 3 * at(t) - at(t + 2e-3)) / 2e-3;
        // Second-order differences over 1 mK: rounding leaves about 1e-12 / 1e-3 of the value
        expect(Math.abs(left - right)).toBeLessThan(1e-5 * Math.abs(left) + 1e-9 * Math.abs(at(t)));
      }
    }
  });

  test('below 0 and above 110 °C they stay at the end value', () => {
    expect(water.viscosity(-5)).toBe(water.viscosity(0));
    expect(water.viscosity(130)).toBe(water.viscosity(110));
    // a knot: the formula itself
    expect(water.density(110)).toBeCloseTo(iapws.iapwsDensity(110), 9);
  });

  test('water expands from 10 to 60 °C by 1.68 % and shrinks on warming below 4 °C', () => {
    // printed to 0.01 %
    expect((water.density(10) / water.density(60) - 1) * 100).toBeCloseTo(1.68, 2);
    expect(water.expansion(3)).toBeLessThan(0);
    expect(water.expansion(5)).toBeGreaterThan(0);
  });
});

test('constant water stores 1000 × 4180 J/(m³ K) at 10 and at 90 °C and is as thin as real water', () => {
  const plain = constantWater();
  for (const t of [10, 90]) {
    expect(plain.density(t) * plain.specificHeat(t)).toBe(4.18e6);
    expect(plain.viscosity(t)).toBe(water.viscosity(t));
  }
});
