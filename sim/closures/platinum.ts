import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, mi, mn, mo, paren, raised, row, sub, unit } from '../../shared/mathml.ts';
import type { Celsius, Kelvins, Ohms } from '../../shared/units.ts';

/**
 * Resistance of a platinum element, ohm.
 * @param temperature  °C
 * @param r0           resistance at 0 °C, ohm
 */
export function platinumResistance(temperature: Celsius, r0: Ohms): Ohms {
  return r0 * (1 + temperature * (LINEAR + SQUARE * temperature));
}

/**
 * Temperature at which a platinum element has a resistance, °C; infinite when there is none, which
 * is above 7.6 times the resistance at 0 °C.
 * @param resistance  ohm
 * @param r0          resistance at 0 °C, ohm
 */
export function platinumTemperature(resistance: Ohms, r0: Ohms): Celsius {
  const under = LINEAR * LINEAR - 4 * SQUARE * (1 - resistance / r0);
  if (under < 0) return Number.POSITIVE_INFINITY;
  // the smaller root, written so that nothing is lost near 0 °C
  return (2 * (resistance / r0 - 1)) / (LINEAR + Math.sqrt(under));
}

/** How far a platinum element of class B may be from its temperature, K. @param temperature  °C */
export function classB(temperature: Celsius): Kelvins {
  return CLASS_B_CONSTANT + CLASS_B_SHARE * Math.abs(temperature);
}

// source: iec60751, coefficients from 0 °C upwards; from memory
const LINEAR = 3.9083e-3; // 1/K
const SQUARE = -5.775e-7; // 1/K²

/** Where the relation stops rising, far above any use, °C. */
export const PLATINUM_TURN = -LINEAR / (2 * SQUARE);

// source: iec60751, tolerance class B, ± (0.3 + 0.005 |t|) K; from memory
export const CLASS_B_CONSTANT = 0.3; // K
export const CLASS_B_SHARE = 0.005;

const ohms = { key: 'resistance', symbol: mi('R'), name: 'resistance', unit: 'Ω', digits: 5 };

export const platinumRecord: ClosureRecord = {
  key: 'platinum',
  title: 'Resistance of a platinum element',
  result: { ...ohms, key: 'result' },
  terms: [
    { key: 'r0', symbol: sub('R', '0'), name: 'resistance at 0 °C', unit: 'Ω', digits: 4 },
    { key: 'temperature', symbol: mi('t'), name: 'temperature', unit: '°C' },
  ],
  formula: equals(
    '{result}',
    '{r0}',
    mo('·'),
    paren(
      mn(1),
      mo('+'),
      row(mn('0.0039083'), mo('·'), '{temperature}', unit('/°C')),
      mo('−'),
      row(
        mn('5.775'),
        mo('·'),
        raised(mn(10), row(mo('−'), mn(7))),
        mo('·'),
        raised(paren('{temperature}', unit('/°C')), mn(2)),
      ),
    ),
  ),
  sentence:
    'Platinum gains 0.39 % of its ohms with every kelvin, so each ohm of lead counts, and reads high.',
  source: 'iec60751',
  where: 'resistance and temperature from 0 °C upwards, coefficients from memory',
  range: '0 to 850 °C; at −20 °C the term that is left out is worth 0.001 K',
  outside: 'extended',
  changes: 'Only the resistance at 0 °C: 100 Ω or 1000 Ω.',
  example: {
    given: { r0: 100, temperature: 100 },
    gives: 138.51,
    digits: 2,
    note: 'Printed in every platinum table: 138.51 Ω at 100 °C; from memory, and by hand 100 × (1 + 0.39083 − 0.005775).',
  },
  compute: ({ r0, temperature }) => platinumResistance(temperature, r0),
};
