import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, expOf, frac, mi, mn, mo, paren, row, sub, unit } from '../../shared/mathml.ts';
import { exponential, logarithm } from '../../shared/portableMaths.ts';
import { type Celsius, type Kelvins, type Ohms, ZERO_CELSIUS } from '../../shared/units.ts';

/**
 * Resistance of a thermistor by the two-point law, ohm.
 * @param temperature  °C, above −273.15
 * @param r25          resistance at 25 °C, ohm
 * @param beta         K
 */
export function thermistorResistance(temperature: Celsius, r25: Ohms, beta: Kelvins): Ohms {
  // source: iec60539, definition of B between two temperatures; from memory
  return (
    r25 * exponential(beta * (1 / (temperature + ZERO_CELSIUS) - 1 / (REFERENCE + ZERO_CELSIUS)))
  );
}

/**
 * Temperature at which a thermistor has a resistance by the two-point law, °C; infinite when no
 * temperature makes so few ohms.
 * @param resistance  ohm, above 0
 * @param r25         resistance at 25 °C, ohm
 * @param beta        K
 */
export function thermistorTemperature(resistance: Ohms, r25: Ohms, beta: Kelvins): Celsius {
  const inverse = 1 / (REFERENCE + ZERO_CELSIUS) + logarithm(resistance / r25) / beta; // 1/K
  return inverse > 0 ? 1 / inverse - ZERO_CELSIUS : Number.POSITIVE_INFINITY;
}

/** 0 °C, K. */

const REFERENCE = 25; // °C; source: iec60539, zero-power resistance at 25 °C; from memory

const temperature = { key: 'temperature', symbol: mi('T'), name: 'temperature', unit: '°C' };
const resistance = { key: 'resistance', symbol: mi('R'), name: 'resistance', unit: 'Ω', digits: 5 };
const r25 = {
  key: 'r25',
  symbol: sub('R', '25'),
  name: 'resistance at 25 °C',
  unit: 'Ω',
  digits: 5,
};
const beta = { key: 'beta', symbol: mi('B'), name: 'beta', unit: 'K', digits: 4 };
const reference = row(mn('298.15'), unit(' K'));

const kelvins = (key: string): string => row(key, mo('+'), mn('273.15'), unit(' K'));

export const thermistorResistanceRecord: ClosureRecord = {
  key: 'thermistorResistance',
  title: 'Resistance of a thermistor',
  result: { ...resistance, key: 'result' },
  terms: [{ ...temperature, digits: 4 }, r25, beta],
  formula: equals(
    '{result}',
    '{r25}',
    mo('·'),
    expOf(
      '{beta}',
      mo('·'),
      paren(frac(mn(1), kelvins('{temperature}')), mo('−'), frac(mn(1), reference)),
    ),
  ),
  sentence: 'A thermistor loses 3 to 5 % of its ohms with every kelvin it warms.',
  source: 'iec60539',
  where: 'zero-power resistance at 25 °C and B value; from memory',
  range:
    '−20 to 120 °C; the table of a real one departs from this law by about 5 % of its ohms at 0 °C and 1.3 % at 60 °C (common practice)',
  outside: 'extended',
  changes: 'Another R25 moves the whole curve, another beta tilts it about 25 °C.',
  example: {
    given: { temperature: 60, r25: 10_000, beta: 3435 },
    gives: 2981,
    digits: 0,
    note: 'Derived from the two-point law by hand, to the ohm.',
  },
  compute: (given) => thermistorResistance(given.temperature, given.r25, given.beta),
};

export const thermistorTemperatureRecord: ClosureRecord = {
  key: 'thermistorTemperature',
  title: 'Temperature from the ohms of a thermistor',
  result: { ...temperature, key: 'result', digits: 4 },
  terms: [resistance, r25, beta],
  formula: equals(
    '{result}',
    frac(
      mn(1),
      row(
        frac(mn(1), reference),
        mo('+'),
        frac(row(mi('ln'), paren(frac('{resistance}', '{r25}'))), '{beta}'),
      ),
    ),
    mo('−'),
    mn('273.15'),
    unit(' K'),
  ),
  sentence: 'Fewer ohms than at 25 °C mean warmer, more mean colder.',
  source: 'iec60539',
  where: 'zero-power resistance at 25 °C and B value, solved for the temperature; from memory',
  range: '−20 to 120 °C',
  outside: 'extended; infinite where the ohms are too few for any temperature',
  changes: 'Reading it with the R25 or the beta of another type shifts every temperature.',
  example: {
    given: { resistance: 2463, r25: 10_000, beta: 3977 },
    gives: 60,
    digits: 1,
    note: 'Derived from the two-point law by hand: 2463 Ω at 60 °C, to the ohm.',
  },
  compute: (given) => thermistorTemperature(given.resistance, given.r25, given.beta),
};
