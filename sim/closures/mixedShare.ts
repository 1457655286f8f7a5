import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mo, row, sub } from '../../shared/mathml.ts';
import { mixedShare } from './mixedLitres.ts';

// Apart from the function, which is among the first that a page fetches: a record is only read in a working

export const mixedShareRecord: ClosureRecord = {
  key: 'mixedShare',
  title: 'Litres at 40 °C from one litre of hot water',
  result: { key: 'result', symbol: mi('s'), name: 'litres mixed per litre hot', unit: '' },
  terms: [
    { key: 'hot', symbol: sub('T', 'h'), name: 'hot water at the outlet', unit: '°C' },
    { key: 'cold', symbol: sub('T', 'c'), name: 'incoming cold water', unit: '°C' },
    { key: 'mixed', symbol: sub('T', 'm'), name: 'mixed water', unit: '°C' },
  ],
  formula: equals(
    '{result}',
    frac(row('{hot}', mo('−'), '{cold}'), row('{mixed}', mo('−'), '{cold}')),
  ),
  sentence: 'Hotter water goes further at the tap; water below 40 °C does not count at all.',
  source: 'ecodesignTanks',
  where: 'Annex I, definition of V40; the formula is the energy balance of that definition',
  range: 'hot at or above the mixed temperature, cold below it',
  outside: 'counts nothing when the hot water is below the mixed temperature',
  changes: 'A hotter store gives more mixed litres, and needs more care against scalding.',
  example: {
    given: { hot: 60, cold: 10, mixed: 40 },
    gives: 1.667,
    digits: 3,
    note: 'A store at 60 °C: 50 / 30 = 1.667.',
  },
  compute: ({ hot, cold, mixed }) => mixedShare(hot, cold, mixed),
};
