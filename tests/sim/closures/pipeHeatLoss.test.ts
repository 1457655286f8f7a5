import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { air } from '../../../sim/closures/air.ts';
import { coilOutside, morgan } from '../../../sim/closures/coilOutside.ts';
import {
  COPPER_EMISSIVITY,
  LAGGING_EMISSIVITY,
  pipeConductance,
  pipeHeatLoss,
  type PipeSurface,
} from '../../../sim/closures/pipeHeatLoss.ts';
import { radiationCoefficient } from '../../../sim/closures/radiation.ts';
import { rayleigh } from '../../../sim/closures/rayleigh.ts';
import { prandtl } from '../../../sim/closures/water.ts';
import { bare15At45K, bareCopper, laggedCopper, primaries } from '../../reference/pipeLosses.ts';

const bare = (millimetres: number): PipeSurface => ({
  outside: millimetres / 1000,
  lagging: 0,
  laggingConductivity: 0.043,
  emissivity: COPPER_EMISSIVITY,
});

const lagged = (millimetres: number, thickness = 0.025): PipeSurface => ({
  ...bare(millimetres),
  lagging: thickness,
  emissivity: LAGGING_EMISSIVITY,
});

describe('air', () => {
  test('at 15 °C it is the standard atmosphere: 1.225 kg/m³, 17.89 µPa s, 0.02533 W/(m K)', () => {
    expect(air.density(15)).toBeCloseTo(1.225, 3); // printed to 0.001
    expect(air.viscosity(15) * 1e6).toBeCloseTo(17.894, 2); // printed to 0.01
    // another fit for conductivity, 0.1 % off
    expect(Math.abs(air.conductivity(15) / 0.025326 - 1)).toBeLessThan(0.002);
  });

  // source: incropera, table of air; from memory
  test.each([
    [250, 15.96, 22.3, 0.72],
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: a Prandtl number, not a root of ½
    [300, 18.46, 26.3, 0.707],
    [350, 20.82, 30.0, 0.7],
  ])('at %i K viscosity %f µPa s, conductivity %f mW/(m K), Pr %f within 1 %%', (K, mu, k, Pr) => {
    const T = K - 273.15;
    expect(Math.abs((air.viscosity(T) * 1e6) / mu - 1)).toBeLessThan(0.01);
    expect(Math.abs((air.conductivity(T) * 1e3) / k - 1)).toBeLessThan(0.01);
    expect(Math.abs(prandtl(air, T) / Pr - 1)).toBeLessThan(0.01);
  });
});

describe('against published figures, which spread by a factor of two', () => {
  test.each(bareCopper)(
    '%i mm bare copper %i K above the air loses no more than the %i W/m of the table and no less than half',
    (millimetres, difference, printed) => {
      const loss = pipeHeatLoss(bare(millimetres), 20 + difference, 20);
      expect(loss).toBeLessThan(printed);
      expect(loss).toBeGreaterThan(printed / 2);
    },
  );

  test('15 mm bare copper at 60 °C in 15 °C loses between the 24.5 and the 50 W/m printed for it', () => {
    const loss = pipeHeatLoss(bare(15), 60, 15);
    expect(loss).toBeGreaterThan(primaries.bare);
    expect(loss).toBeLessThan(bare15At45K);
  });

  test.each(laggedCopper)(
    '%i mm under 25 mm of lagging at 55 K loses more than the %i W/m of the table, and less than twice',
    (millimetres, printed) => {
      const loss = pipeHeatLoss(lagged(millimetres), 75, 20);
      expect(loss).toBeGreaterThan(printed);
      expect(loss).toBeLessThan(2 * printed);
      // and within a factor of two of the other figure
      expect(loss).toBeGreaterThan(primaries.lagged);
      expect(loss).toBeLessThan(2 * primaries.lagged);
    },
  );
});

describe('worked another way', () => {
  test('22 mm bare at 75 °C in 20 °C: Ra 4.0e4, 43.9 W/m; 25 mm of lagging: 11.23 W/m', () => {
    expect(pipeHeatLoss(bare(22), 75, 20)).toBeCloseTo(43.906, 3); // worked apart to 0.001
    expect(pipeHeatLoss(lagged(22), 75, 20)).toBeCloseTo(11.2347, 3);
  });

  test('convection alone is within 15 % of the older formula for the same cylinder', () => {
    for (const [millimetres, difference] of [
      [15, 38],
      [22, 55],
      [54, 55],
    ]) {
      const d = millimetres / 1000;
      const film = 20 + difference / 2;
      const found = coilOutside(air, d, film, difference, 1);
      const older = (morgan(rayleigh(air, d, film, difference)) * air.conductivity(film)) / d;
      // the two differ by about 10 % at these Ra
      expect(Math.abs(found / older - 1)).toBeLessThan(0.15);
    }
  });

  test('what the lagging passes is what its surface sheds, 200 pipes', () => {
    const metres = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(metres(0.008, 0.06), metres(0.001, 0.06), metres(-30, 90), (d, s, rise) => {
        const pipe = { ...lagged(1000 * d), lagging: s };
        const loss = pipeHeatLoss(pipe, 20 + rise, 20);
        const D = d + 2 * s;
        const surface = 20 + rise - (loss * Math.log(D / d)) / (2 * Math.PI * 0.043);
        const h =
          coilOutside(air, D, (surface + 20) / 2, Math.abs(surface - 20), 1) +
          radiationCoefficient(LAGGING_EMISSIVITY, surface, 20);
        // the surface is found to 1e-9 K, and up to 0.5 W/m goes with a kelvin of it
        expect(Math.abs(Math.PI * D * h * (surface - 20) - loss)).toBeLessThan(1e-8);
      }),
      { numRuns: 200 },
    );
  });
});

describe('limits', () => {
  test('no difference, no loss, and yet 0.19 W/(m K) of lagged 22 mm pipe', () => {
    expect(pipeHeatLoss(lagged(22), 20, 20)).toBe(0);
    expect(pipeHeatLoss(bare(22), 20, 20)).toBe(0);
    const still = pipeConductance(lagged(22), 20, 20);
    expect(still).toBeCloseTo(0.19, 2);
    // convection grows with the sixth root of the difference at first, hence 1 %
    expect(Math.abs(pipeConductance(lagged(22), 20 + 1e-6, 20) / still - 1)).toBeLessThan(0.01);
  });

  test('a pipe at 5 °C in 20 °C gains heat', () => {
    expect(pipeHeatLoss(bare(22), 5, 20)).toBeLessThan(0);
    expect(pipeHeatLoss(lagged(22), 5, 20)).toBeLessThan(0);
    expect(pipeHeatLoss(lagged(22), 5, 20)).toBeGreaterThan(pipeHeatLoss(bare(22), 5, 20));
  });

  test('a micrometre of lagging changes the loss by less than 0.1 %, and each 10 mm more lowers it', () => {
    const dull = { ...bare(22), emissivity: LAGGING_EMISSIVITY };
    const ratio = pipeHeatLoss(lagged(22, 1e-6), 75, 20) / pipeHeatLoss(dull, 75, 20);
    expect(Math.abs(ratio - 1)).toBeLessThan(1e-3);
    const losses = [0, 0.01, 0.02, 0.03, 0.04].map((s) => pipeHeatLoss(lagged(22, s), 75, 20));
    expect(losses).toEqual([...losses].sort((a, b) => b - a));
    expect(new Set(losses).size).toBe(5);
  });

  test('bright copper of emissivity 0.05 loses 29 % less than tarnished copper', () => {
    const bright = pipeHeatLoss({ ...bare(22), emissivity: 0.05 }, 75, 20);
    expect(bright / pipeHeatLoss(bare(22), 75, 20)).toBeCloseTo(0.706, 2); // 31.0 / 43.9
  });

  test('a black surface at 27 °C among walls at 27 °C gives 6.12 W/(m² K), 4 σ T³', () => {
    expect(radiationCoefficient(1, 26.85, 26.85)).toBeCloseTo(4 * 5.670374e-8 * 300 ** 3, 9);
    expect(radiationCoefficient(0, 80, 20)).toBe(0);
  });
});
