import { ZERO_CELSIUS } from '../../shared/units.ts';
import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, raised, row, sub, unit } from '../../shared/mathml.ts';
import type { Water } from './water.ts';

/**
 * Dry air at one atmosphere, in the shape in which the relations ask for a fluid, so that those for
 * natural convection serve for it too. From −20 to 100 °C within 1 % of textbook tables; extended
 * outside.
 */
export const air: Water = {
  density: (temperature) => ATMOSPHERE / (GAS_CONSTANT * (temperature + ZERO_CELSIUS)),
  specificHeat: () => SPECIFIC_HEAT,
  viscosity: airViscosity,
  // source: sutherland, the same law for conductivity with a constant of its own
  conductivity: (temperature) => CONDUCTIVITY_AT_ZERO * sutherland(temperature, 194),
  expansion: (temperature) => 1 / (temperature + ZERO_CELSIUS), // an ideal gas
};

/**
 * Viscosity of air, Pa s.
 * @param temperature  °C
 */
export function airViscosity(temperature: number): number {
  return VISCOSITY_AT_ZERO * sutherland(temperature, SUTHERLAND);
}

/**
 * How a property of a gas grows from its value at 0 °C, pure number.
 * @param temperature  °C
 * @param constant     of the gas and the property, K
 */
function sutherland(temperature: number, constant: number): number {
  const kelvin = temperature + ZERO_CELSIUS;
  const ratio = kelvin / ZERO_CELSIUS;
  return (ratio * Math.sqrt(ratio) * (ZERO_CELSIUS + constant)) / (kelvin + constant);
}

/** 0 °C in kelvin. */
const ATMOSPHERE = 101_325; // Pa, source: practice, by definition
const GAS_CONSTANT = 287.05; // J/(kg K), source: sutherland, dry air; from memory
const SPECIFIC_HEAT = 1007; // J/(kg K), source: incropera, table of air at 300 K; from memory
const VISCOSITY_AT_ZERO = 1.716e-5; // Pa s, source: sutherland; from memory
const SUTHERLAND = 110.6; // K, source: sutherland, viscosity of air; from memory
const CONDUCTIVITY_AT_ZERO = 0.0241; // W/(m K), source: sutherland; from memory

export const airViscosityRecord: ClosureRecord = {
  key: 'airViscosity',
  title: 'Viscosity of the air round a pipe',
  result: { key: 'result', symbol: mi('μ'), name: 'viscosity', unit: 'µPa s', factor: 1e6 },
  terms: [{ key: 'temperature', symbol: mi('T'), name: 'air in the film', unit: '°C' }],
  formula: equals(
    '{result}',
    sub('μ', '0'),
    mo('·'),
    raised(
      paren(frac(row('{temperature}', mo('+'), mn(ZERO_CELSIUS)), mn(ZERO_CELSIUS))),
      row(mn(3), mo('/'), mn(2)),
    ),
    mo('·'),
    frac(
      mn(ZERO_CELSIUS + SUTHERLAND),
      row('{temperature}', mo('+'), mn(ZERO_CELSIUS + SUTHERLAND), unit(' K')),
    ),
  ),
  sentence: 'Warm air is thicker than cold air, the other way round from water.',
  source: 'sutherland',
  where: 'Sutherland’s law, 17.16 µPa s at 0 °C and 110.6 K; from memory',
  range: 'dry air at one atmosphere, −20 to 100 °C',
  outside: 'extended',
  changes: 'Nothing an installer can change.',
  example: {
    given: { temperature: 26.85 },
    gives: 1.846e-5,
    digits: 7,
    note: 'Textbook table (incropera, from memory) at 300 K: 18.46 µPa s; the law gives it within 0.05 µPa s.',
  },
  compute: ({ temperature }) => airViscosity(temperature),
};
