import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, raised, row } from '../../shared/mathml.ts';
import type { Water } from './water.ts';

/**
 * Rayleigh number of a tube in water: buoyancy against viscosity and conduction, pure number.
 * @param water       the stored water
 * @param diameter    tube outside diameter, m
 * @param film        mean of tube surface and water, °C
 * @param difference  between tube surface and water, K, not negative
 */
export function rayleigh(water: Water, diameter: number, film: number, difference: number): number {
  const density = water.density(film);
  return rayleighNumber(
    driving(water.expansion(film)),
    density * density * water.specificHeat(film),
    water.viscosity(film) * water.conductivity(film),
    diameter,
    difference,
  );
}

/**
 * The size of the expansion coefficient that drives convection, 1/K: water below 4 °C convects
 * downwards just as well. A film has water above and below 4 °C in it, so convection never stops
 * quite, and the passage through zero is rounded off at 1e-5 per kelvin. That adds 0.4 % to h in a
 * film at 8 °C and less than 0.1 % from 14 °C.
 */
function driving(expansion: number): number {
  return Math.sqrt(expansion * expansion + ROUNDING * ROUNDING);
}

const ROUNDING = 1e-5; // source: practice, chosen here

const GRAVITY = 9.80665; // m/s², source: practice, standard gravity by definition

function rayleighNumber(
  expansion: number,
  densitySquaredHeat: number,
  viscosityTimesConductivity: number,
  diameter: number,
  difference: number,
): number {
  const buoyancy = GRAVITY * expansion * densitySquaredHeat * difference;
  return (buoyancy * diameter * diameter * diameter) / viscosityTimesConductivity;
}

export const rayleighRecord: ClosureRecord = {
  key: 'rayleigh',
  title: 'Rayleigh number of the tube',
  result: { key: 'result', symbol: mi('Ra'), name: 'Rayleigh number', unit: '' },
  terms: [
    { key: 'beta', symbol: mi('β'), name: 'expansion coefficient of the film', unit: '1/K' },
    { key: 'rho', symbol: mi('ρ'), name: 'density of the film', unit: 'kg/m³', digits: 4 },
    { key: 'c', symbol: mi('c'), name: 'specific heat of the film', unit: 'J/(kg K)', digits: 4 },
    { key: 'mu', symbol: mi('μ'), name: 'viscosity of the film', unit: 'µPa s', factor: 1e6 },
    { key: 'k', symbol: mi('k'), name: 'conductivity of the film', unit: 'W/(m K)' },
    { key: 'd', symbol: mi('d'), name: 'tube outside diameter', unit: 'mm', factor: 1000 },
    { key: 'difference', symbol: mi('ΔT'), name: 'tube surface above the water', unit: 'K' },
  ],
  formula: equals(
    '{result}',
    frac(
      row(
        mi('g'),
        mo('·'),
        '{beta}',
        mo('·'),
        raised('{rho}', mn(2)),
        mo('·'),
        '{c}',
        mo('·'),
        raised('{d}', mn(3)),
        mo('·'),
        '{difference}',
      ),
      row('{mu}', mo('·'), '{k}'),
    ),
  ),
  sentence:
    'Warm films rise because they are lighter; thick water and quick conduction hold them back.',
  source: 'churchillChu',
  where: 'definition, g = 9.80665 m/s²',
  range: 'expansion well above 1e-5 per kelvin, a film above about 8 °C',
  outside:
    'the size of the expansion is rounded off at 1e-5 per kelvin where it passes through zero at 4 °C',
  changes: 'Hotter films: between 20 and 60 °C it rises about fivefold for the same difference.',
  example: {
    given: {
      beta: 0.002,
      rho: 1100,
      c: 2.5 / 0.0044,
      mu: 0.0044,
      k: 0.25,
      d: 0.015,
      difference: 102,
    },
    gives: 4.2199e6,
    digits: -3,
    note: 'The textbook coil (incropera), Pr 10: 9.80665 × 0.002 × 102 × 0.015³ × 10 / (4e-6)²; printed with g = 9.8 as 4.217e6.',
  },
  compute: ({ beta, rho, c, mu, k, d, difference }) =>
    rayleighNumber(driving(beta), rho * rho * c, mu * k, d, difference),
};
