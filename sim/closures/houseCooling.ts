import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, expOf, frac, mi, mn, mo, paren, row } from '../../shared/mathml.ts';
import { exponentialLessOne } from '../../shared/portableMaths.ts';

/**
 * Time constant of a house that cools as one lump, s.
 * @param massParameter  heat capacity over floor area, J/(m² K)
 * @param lossParameter  heat loss over floor area, W/(m² K), above 0
 */
export function houseTimeConstant(massParameter: number, lossParameter: number): number {
  // source: sap, Table 9b; the 3.6 printed there turns kJ and W into hours
  return massParameter / lossParameter;
}

/**
 * How far such a house cools without heat, K.
 * @param difference    house above outside at the start, K
 * @param pause         s
 * @param timeConstant  s, above 0
 */
export function houseCooling(difference: number, pause: number, timeConstant: number): number {
  return -difference * exponentialLessOne(-pause / timeConstant);
}

/** Heat held by the fabric for each square metre of floor, J/(m² K). */
// source: sap, thermal mass parameter, from memory
export const MASS_PARAMETERS = { light: 100_000, medium: 250_000, heavy: 450_000 } as const;

export const houseTimeConstantRecord: ClosureRecord = {
  key: 'houseTimeConstant',
  title: 'Time constant of the house',
  result: { key: 'result', symbol: mi('τ'), name: 'time constant', unit: 'h', factor: 1 / 3600 },
  terms: [
    {
      key: 'mass',
      symbol: mi('TMP'),
      name: 'thermal mass parameter',
      unit: 'kJ/(m² K)',
      factor: 1e-3,
    },
    { key: 'loss', symbol: mi('HLP'), name: 'heat loss parameter', unit: 'W/(m² K)' },
  ],
  formula: equals('{result}', frac('{mass}', '{loss}')),
  sentence:
    'A heavy, well insulated house holds its heat for days, a light and leaky one for hours.',
  source: 'sap',
  where: 'Table 9b, read second-hand',
  range: 'light 100, medium 250, heavy 450 kJ/(m² K) (from memory)',
  outside: 'extended',
  changes: 'Insulation and draught-proofing; mass that the air can reach.',
  example: {
    given: { mass: 250_000, loss: 3 },
    gives: 83_333,
    digits: 0,
    note: 'Worked by hand: 250 / (3.6 × 3) = 23.15 h.',
  },
  compute: ({ mass, loss }) => houseTimeConstant(mass, loss),
};

export const houseCoolingRecord: ClosureRecord = {
  key: 'houseCooling',
  title: 'How far the house cools in a pause of its heating',
  result: { key: 'result', symbol: mi('δ'), name: 'fall of the house', unit: 'K' },
  terms: [
    { key: 'difference', symbol: mi('ΔT'), name: 'house above outside at the start', unit: 'K' },
    { key: 'pause', symbol: mi('t'), name: 'pause', unit: 'min', factor: 1 / 60 },
    { key: 'timeConstant', symbol: mi('τ'), name: 'time constant', unit: 'h', factor: 1 / 3600 },
  ],
  formula: equals(
    '{result}',
    '{difference}',
    mo('·'),
    paren(mn(1), mo('−'), expOf(mo('−'), row('{pause}', mo('/'), '{timeConstant}'))),
  ),
  sentence:
    'While the cylinder has the boiler the house cools a little, nearly in proportion to the pause.',
  source: 'sap',
  where: 'time constant of Table 9b, read second-hand; the fall is its exponential decay',
  range:
    'air and fabric as one node, no gains: it understates the first minutes of air temperature and ignores the heat left in the radiators',
  outside: 'extended; with sun, people or warm radiators the house cools less',
  changes: 'A shorter reheat, more insulation, a time limit on hot-water priority.',
  example: {
    given: { difference: 15, pause: 2400, timeConstant: 83_333 },
    gives: 0.43,
    digits: 2,
    note: 'Worked by hand: 15 × (1 − exp(−0.0288)) = 0.426.',
  },
  compute: ({ difference, pause, timeConstant }) => houseCooling(difference, pause, timeConstant),
};
