import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, expOf, frac, mi, mn, mo, row } from '../../shared/mathml.ts';
import { exponentialLessOne } from '../../shared/portableMaths.ts';

/**
 * Effectiveness of a stream passing water at one temperature, 0 to 1. With no flow the stream has
 * all the time it needs: 1 when there is any conductance.
 * @param conductance  UA between stream and water, W/K
 * @param heatRate     mass flow × specific heat of the stream, W/K, not negative
 */
export function effectiveness(conductance: number, heatRate: number): number {
  if (heatRate <= 0) return conductance > 0 ? 1 : 0;
  // source: kaysLondon, one side at constant temperature
  return -exponentialLessOne(-conductance / heatRate);
}

/**
 * Temperature at which the stream leaves, °C.
 * @param inlet        °C
 * @param surrounding  the water it passes, °C
 * @param conductance  W/K
 * @param heatRate     W/K
 */
export function outletTemperature(
  inlet: number,
  surrounding: number,
  conductance: number,
  heatRate: number,
): number {
  return inlet - effectiveness(conductance, heatRate) * (inlet - surrounding);
}

export const exchangeRecord: ClosureRecord = {
  key: 'exchange',
  title: 'How much of its heat a stream gives up',
  result: { key: 'result', symbol: mi('ε'), name: 'effectiveness', unit: '' },
  terms: [
    { key: 'UA', symbol: mi('UA'), name: 'conductance between stream and water', unit: 'W/K' },
    {
      key: 'mc',
      symbol: row(mi('ṁ'), mi('c')),
      name: 'flow × specific heat',
      unit: 'W/K',
      digits: 4,
    },
  ],
  formula: equals('{result}', mn(1), mo('−'), expOf(mo('−'), frac('{UA}', '{mc}'))),
  sentence:
    'Of the heat it could give at most, the primary gives a share that grows with coil conductance and falls with flow.',
  source: 'kaysLondon',
  where:
    'effectiveness and number of transfer units, one side at constant temperature; from memory',
  range: 'any conductance and flow that are not negative',
  outside: 'without flow the share is 1: the stream has all the time it needs',
  changes:
    'A larger or cleaner coil raises the share; more flow lowers the share but raises the heat.',
  example: {
    given: { UA: 800, mc: 0.25 * 4180 },
    gives: 0.534922,
    digits: 6,
    note: 'Closed form: 800 W/K and 0.25 kg/s at 4180 J/(kg K), NTU 0.7655502.',
  },
  compute: ({ UA, mc }) => effectiveness(UA, mc),
};
