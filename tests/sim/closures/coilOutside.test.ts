import { describe, expect, test } from 'vitest';
import {
  churchillChu,
  coilOutside,
  DEFAULT_ENHANCEMENT,
  morgan,
} from '../../../sim/closures/coilOutside.ts';
import { OutsideFilm } from '../../../sim/closures/outsideFilm.ts';
import { rayleigh } from '../../../sim/closures/rayleigh.ts';
import { prandtl, tabulatedWater } from '../../../sim/closures/water.ts';

const water = tabulatedWater();

test('a tube in water at Ra 4.217e6 and Pr 10 has Nu 27.70', () => {
  expect(churchillChu(4.217e6, 10)).toBeCloseTo(27.7, 2); // worked example, printed to 0.01
});

test('Nu is 0.36 without a difference and never falls with Ra', () => {
  expect(churchillChu(0, 5)).toBeCloseTo(0.36, 15); // 0.6²
  let last = 0;
  for (let e = -6; e < 13; e += 0.5) {
    const Nu = churchillChu(10 ** e, 5);
    expect(Nu).toBeGreaterThan(last);
    last = Nu;
  }
});

test.each([
  [1e-2, 0.02],
  [1e2, 0.02],
  [1e4, 0.1],
  [1e7, 0.05],
])('Morgan at its border Ra %f jumps by less than %f', (Ra, jump) => {
  // Its pieces were fitted apart; the size of each jump is a property of the printed constants
  expect(Math.abs(morgan(Ra * (1 + 1e-12)) / morgan(Ra * (1 - 1e-12)) - 1)).toBeLessThan(jump);
});

test.each([15, 40, 60])(
  'with 1.25 in a tank at %f °C it is 1.3 to 1.8 times Morgan, as four exchangers measured',
  (tank) => {
    // share of the difference outside the coil, from its resistances
    const surface = tank + 0.84 * (75 - tank);
    const film = (surface + tank) / 2;
    const Ra = rayleigh(water, 0.022, film, surface - tank);
    const times = (DEFAULT_ENHANCEMENT * churchillChu(Ra, prandtl(water, film))) / morgan(Ra);
    expect(times).toBeGreaterThan(1.3); // source: mates, abstract
    expect(times).toBeLessThan(1.8);
  },
);

describe('prepared for a run', () => {
  test('from 8 to 95 °C and 0.01 to 80 K it is within 1e-4 of the formula for 10, 22 and 35 mm tubes', () => {
    for (const diameter of [0.01, 0.022, 0.035]) {
      const film = new OutsideFilm(water, diameter, 1.25);
      let worst = 0;
      for (let t = 8; t <= 95; t += 0.13) {
        for (const difference of [0.01, 0.1, 1, 5, 20, 80]) {
          const direct = coilOutside(water, diameter, t, difference, 1.25);
          worst = Math.max(worst, Math.abs(film.coefficient(t, difference) / direct - 1));
        }
      }
      expect(worst).toBeLessThan(1e-4); // the stated error
    }
  });

  test('at 4 °C, where water stops expanding, it stays above zero and has no corner', () => {
    const film = new OutsideFilm(water, 0.022, 1);
    const at = (t: number): number => film.coefficient(t, 5);
    expect(at(4)).toBeGreaterThan(film.coefficient(4, 0)); // some convection is left
    for (const t of [3, 4, 5]) {
      const left = (3 * at(t) - 4 * at(t - 1e-4) + at(t - 2e-4)) / 2e-4;
      const right = (4 * at(t + 1e-4) - 3 * at(t) - at(t + 2e-4)) / 2e-4;
      // of slopes up to 100 W/(m² K²); differences leave 1e-3
      expect(Math.abs(left - right)).toBeLessThan(1e-2);
    }
  });

  test('rounding off the passage through 4 °C adds 0.4 % at 8 °C and less than 0.1 % from 14 °C', () => {
    const plain = (t: number): number => {
      const nu = water.viscosity(t) / water.density(t);
      const alpha = water.conductivity(t) / water.density(t) / water.specificHeat(t);
      const Ra = (9.80665 * Math.abs(water.expansion(t)) * 20 * 0.022 ** 3) / (nu * alpha);
      return (churchillChu(Ra, prandtl(water, t)) * water.conductivity(t)) / 0.022;
    };
    const extra = (t: number): number => coilOutside(water, 0.022, t, 20, 1) / plain(t) - 1;
    expect(extra(8)).toBeCloseTo(0.004, 3); // stated to one figure
    expect(extra(14)).toBeLessThan(0.001);
    expect(extra(14)).toBeGreaterThan(0);
  });
});

describe('what the words say', () => {
  test('for the same difference Ra is about 5 times as large in a film at 60 °C as at 20 °C', () => {
    const ratio = rayleigh(water, 0.022, 60, 10) / rayleigh(water, 0.022, 20, 10);
    expect(ratio).toBeCloseTo(4.84, 1); // by hand from the printed properties: 2.530 × 2.149 × 0.9186 × 0.970
  });

  test('water at 80 °C has 27 % of its viscosity at 10 °C, and stores 2.6 % less per litre than 4186 kJ/(m³ K)', () => {
    expect(water.viscosity(80) / water.viscosity(10)).toBeCloseTo(0.2711, 3); // 354.046 / 1305.902
    const capacity = (t: number): number => water.density(t) * water.specificHeat(t);
    expect(capacity(80) / 4.186e6).toBeCloseTo(0.9743, 3); // 971.790 × 4196.86 / 4.186e6
    for (let t = 10; t <= 80; t += 5)
      expect(Math.abs(capacity(t) / 4.186e6 - 1)).toBeLessThan(0.03);
  });
});
