import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, row } from '../../shared/mathml.ts';
import type { Variant } from '../../shared/variant.ts';
import { powerConductance, standingLossRecord } from './standingLoss.ts';

/** Where a loss is declared. */
type Declared = Variant['cylinder']['declaredAt'];

const lossPowerRecord: ClosureRecord = {
  key: 'lossPower',
  title: 'Loss conductance from a standing loss in watts',
  result: {
    key: 'result',
    symbol: row(mi('U'), mi('A')),
    name: 'loss of the cylinder per kelvin',
    unit: 'W/K',
  },
  terms: [
    { key: 'power', symbol: mi('S'), name: 'standing loss', unit: 'W' },
    {
      key: 'difference',
      symbol: mi('ΔT'),
      name: 'stored water above the air in the test',
      unit: 'K',
    },
  ],
  formula: equals('{result}', frac('{power}', '{difference}')),
  sentence: 'The watts on the label, spread over the 45 K of their test, are the loss per kelvin.',
  source: 'labelTanks',
  where: 'standing loss in W, tested with 65 °C stored and 20 °C around; from memory',
  range: 'labels tested at 45 K; some other countries test at 55 K',
  outside: 'extended: the loss is taken as proportional to the difference',
  changes: 'Thicker insulation, lagged connections and a jacket over bare fittings lower it.',
  example: {
    given: { power: 75, difference: 45 },
    gives: 1.6667,
    digits: 4,
    note: 'Worked by hand: 75 W over 45 K is 1.667 W/K.',
  },
  compute: ({ power, difference }) => powerConductance(power, difference),
};

/** The same relation where the test is at 55 K. */
const at55 = (record: ClosureRecord, sentence: string): ClosureRecord => ({
  ...record,
  key: `${record.key}At55`,
  title: `${record.title}, tested at 55 K`,
  sentence,
  source: 'as1056',
  where: 'standing loss test, 75 °C stored and 20 °C around; read second-hand',
  range: 'figures declared at 55 K; most of Europe tests at 45 K',
});

/** The relation behind a loss declared as heat in 24 h, by the difference of its test. */
export const dailyLossRecords: Readonly<Record<Declared, ClosureRecord>> = {
  '45': standingLossRecord,
  '55': {
    ...at55(
      standingLossRecord,
      'The declared loss, spread over the day and over the 55 K of its test, is the loss per kelvin.',
    ),
    example: {
      given: { loss: 2.4 * 3.6e6, difference: 55 },
      gives: 1.8182,
      digits: 4,
      note: 'Worked by hand: 2.4 kWh in 24 h is 100 W, and 100 W over 55 K is 1.818 W/K.',
    },
  },
};

/** The relation behind a loss declared as power, by the difference of its test. */
export const lossPowerRecords: Readonly<Record<Declared, ClosureRecord>> = {
  '45': lossPowerRecord,
  '55': {
    ...at55(
      lossPowerRecord,
      'The declared watts, spread over the 55 K of their test, are the loss per kelvin.',
    ),
    example: {
      given: { power: 100, difference: 55 },
      gives: 1.8182,
      digits: 4,
      note: 'Worked by hand: 100 W over 55 K is 1.818 W/K.',
    },
  },
};

/** The relation behind a loss in 24 h that tables give by insulation. */
export const tableLossRecord: ClosureRecord = {
  ...standingLossRecord,
  key: 'tableLoss',
  title: 'Loss conductance from the tables by insulation',
  terms: standingLossRecord.terms.map((term) =>
    term.key === 'loss' ? { ...term, name: 'loss in 24 h by the tables' } : term,
  ),
  sentence:
    'The loss by insulation, spread over the day and over the 45 K at which a declared one is tested, is the loss per kelvin.',
  source: 'sap',
  where:
    'Table 2b weighs a loss by insulation as it weighs a declared one, so it stands for one at 45 K; from memory',
  range: 'the cylinders of those tables',
  example: {
    given: { loss: 2.6462 * 3.6e6, difference: 45 },
    gives: 2.4502,
    digits: 4,
    note: 'Worked by hand: 2.6462 kWh in 24 h is 110.26 W, and over 45 K 2.4502 W/K.',
  },
};
