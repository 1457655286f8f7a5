import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mo, row, sub } from '../../shared/mathml.ts';
import { logarithm } from '../../shared/portableMaths.ts';
import type { Celsius, JoulesPerKelvin, Seconds, WattsPerKelvin } from '../../shared/units.ts';

/**
 * Loss conductance of a store from two readings while it cools by itself, W/K.
 * @param capacity  heat held by the store
 * @param time      between the readings
 * @param start     mean of the store at the first, on the same side of the air as at the second
 */
export function coolDownConductance(
  capacity: JoulesPerKelvin,
  time: Seconds,
  start: Celsius,
  end: Celsius,
  air: Celsius,
): WattsPerKelvin {
  // source: coolDownTest
  return (capacity / time) * logarithm((start - air) / (end - air));
}

export const coolDownRecord: ClosureRecord = {
  key: 'coolDown',
  title: 'Loss conductance from a cool-down',
  result: {
    key: 'result',
    symbol: row(mi('U'), mi('A')),
    name: 'loss of the cylinder per kelvin',
    unit: 'W/K',
  },
  terms: [
    { key: 'capacity', symbol: mi('C'), name: 'heat held', unit: 'kJ/K', factor: 1e-3 },
    { key: 'time', symbol: mi('t'), name: 'time between', unit: 'h', factor: 1 / 3600 },
    { key: 'start', symbol: sub('T', 'i'), name: 'mean of the store before', unit: '°C' },
    { key: 'end', symbol: sub('T', 'f'), name: 'mean of the store after', unit: '°C' },
    { key: 'air', symbol: sub('T', 'air'), name: 'air around it', unit: '°C' },
  ],
  formula: equals(
    '{result}',
    frac('{capacity}', '{time}'),
    mo('·'),
    mi('ln'),
    frac(row('{start}', mo('−'), '{air}'), row('{end}', mo('−'), '{air}')),
  ),
  sentence:
    'Each kelvin above the air goes the slower the more heat is held; two readings and the time between give the loss.',
  source: 'coolDownTest',
  where: 'the cool-down method; read second-hand',
  range: 'a store that cools as one body with nothing drawn and nothing heated',
  outside: 'where the bottom cools first it comes out a little low: the mean hides the colder skin',
  changes:
    'Better insulation lowers it; a longer wait makes a measured one more certain, until two thirds of the difference are gone.',
  example: {
    given: { capacity: 836_000, time: 86_400, start: 60, end: 52.53059, air: 20 },
    gives: 2,
    digits: 5,
    note: 'Closed form: 836 kJ/K and 2 W/K bring 60 °C to 52.53059 °C in 24 h at 20 °C.',
  },
  compute: ({ capacity, time, start, end, air }) =>
    coolDownConductance(capacity, time, start, end, air),
};
