import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, mi, mn, mo, raised, row } from '../../shared/mathml.ts';
import { ZERO_CELSIUS } from '../../shared/units.ts';
import { iapwsViscosity } from './iapwsWater.ts';

// Apart from the function, which is among the first that a page fetches: a record is only read in a working

/** One term of the power sum. */
const powerTerm = (coefficient: number, exponent: string): string =>
  row(mn(coefficient), mo('·'), raised('{ratio}', exponent));
const minus = (size: number): string => row(mo('−'), mn(size));

export const viscosityRecord: ClosureRecord = {
  key: 'viscosity',
  title: 'Viscosity of water',
  result: {
    key: 'result',
    symbol: mi('μ'),
    name: 'viscosity',
    unit: 'µPa s',
    factor: 1e6,
    digits: 4,
  },
  terms: [
    {
      key: 'ratio',
      symbol: row(mi('T'), mo('/'), mn(300)),
      name: 'absolute temperature over 300 K',
      unit: '',
      digits: 4,
    },
  ],
  formula: equals(
    '{result}',
    powerTerm(280.68, minus(1.9)),
    mo('+'),
    powerTerm(511.45, minus(7.7)),
    mo('+'),
    powerTerm(61.131, minus(19.6)),
    mo('+'),
    powerTerm(0.45903, minus(40)),
  ),
  sentence:
    'Hot water is thin: at 80 °C it has little more than a quarter of the viscosity it has at 10 °C, so it moves and carries heat more easily.',
  source: 'iapwsLiquid',
  where: 'viscosity at 0.1 MPa, µPa s',
  range: '−20 to 110 °C',
  outside: 'the run uses a table from 0 to 110 °C and stays at its end value',
  changes: 'Only the temperature; antifreeze in the primary would raise it, which is not modelled.',
  example: {
    given: { ratio: 298.15 / 300 },
    gives: 889.996774e-6,
    digits: 12,
    note: 'Table 8 of the Release at 298.15 K.',
  },
  compute: ({ ratio }) => iapwsViscosity(ratio * 300 - ZERO_CELSIUS),
};
