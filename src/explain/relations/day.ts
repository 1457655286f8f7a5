import type { ClosureRecord, Term } from '../../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, row, sub } from '../../../shared/mathml.ts';
import { asResult, volume } from './terms.ts';

const litres = (key: string, below: string, name: string): Term => ({
  ...volume,
  key,
  symbol: sub('V', below),
  name,
});
const energy = (key: string, below: string, name: string): Term => ({
  key,
  symbol: sub('Q', below),
  name,
  unit: 'kWh',
  factor: 1 / 3.6e6,
});

/** What came out of the taps: hot out of the store, and cold mixed in. */
export const atTheTaps: ClosureRecord = {
  key: 'atTheTaps',
  title: 'Drawn at the tap',
  result: asResult(litres('tap', 'tap', 'drawn at the tap')),
  terms: [litres('hot', 'h', 'hot, out of the store'), litres('cold', 'c', 'cold, mixed in')],
  formula: equals('{result}', '{hot}', mo('+'), '{cold}'),
  sentence: 'What is mixed to a temperature is part hot and part cold; the store gives the hot.',
  source: 'lumpedHeat',
  where: 'one litre in, one litre out; both are sums over the day',
  range: 'any draws',
  outside: 'no limits',
  changes: 'A cooler store takes less cold beside it, and so gives more of the same litres.',
  example: {
    given: { hot: 0.06, cold: 0.04 },
    gives: 0.1,
    digits: 9,
    note: 'Worked by hand: 60 l of hot and 40 l of cold.',
  },
  compute: ({ hot, cold }) => hot + cold,
};

/** What ran at a flow for a time. */
export const ranFor: ClosureRecord = {
  key: 'ranFor',
  title: 'What runs off in a time',
  result: asResult(litres('run', 'run', 'run off')),
  terms: [
    { key: 'flow', symbol: mi('q'), name: 'mean flow in it', unit: 'l/min', factor: 60_000 },
    { key: 'time', symbol: mi('t'), name: 'time', unit: 'min', factor: 1 / 60 },
  ],
  formula: equals('{result}', '{flow}', mo('×'), '{time}'),
  sentence: 'Minutes at the tap that were too cold are litres that were of no use.',
  source: 'lumpedHeat',
  where: 'definition of a flow; litres and minutes are both sums over the draws',
  range: 'any draws',
  outside: 'no limits',
  changes: 'A shorter or smaller pipe to the tap, a larger or hotter store.',
  example: {
    given: { flow: 1e-4, time: 120 },
    gives: 0.012,
    digits: 9,
    note: 'Worked by hand: 6 l/min for 2 min.',
  },
  compute: ({ flow, time }) => flow * time,
};

/** What a load profile asked and did not get. */
export const stillMissing: ClosureRecord = {
  key: 'stillMissing',
  title: 'Useful heat that was not got',
  result: asResult(energy('missing', 'miss', 'not got')),
  terms: [
    energy('asked', 'ask', 'asked by the profile'),
    energy('got', 'got', 'of it, got by its draws'),
  ],
  formula: equals('{result}', '{asked}', mo('−'), '{got}'),
  sentence: 'Each draw of a profile asks for a heat, and what one got too much helps no other.',
  source: 'ecodesignTanks',
  where: 'Annex III, load profiles; summed draw by draw',
  range: 'a day by load profile',
  outside: 'other days ask for litres, not for heat',
  changes: 'More hot water in the store when the large draws come.',
  example: {
    given: { asked: 6 * 3.6e6, got: 5.5 * 3.6e6 },
    gives: 0.5 * 3.6e6,
    digits: 3,
    note: 'Worked by hand: 6 kWh less 5.5 kWh.',
  },
  compute: ({ asked, got }) => asked - got,
};

/** Useful heat over what was spent on it. */
export const efficiencyOfDay: ClosureRecord = {
  key: 'efficiencyOfDay',
  title: 'Useful heat over fuel and electricity',
  result: { key: 'result', symbol: mi('η'), name: 'efficiency of the day', unit: '%', factor: 100 },
  terms: [
    energy('useful', 'use', 'useful heat at the tap'),
    energy('fuel', 'fuel', 'fuel for hot water, gross'),
    { ...energy('electricity', 'E', 'electricity of the heater'), symbol: mi('E') },
  ],
  formula: equals(
    '{result}',
    frac('{useful}', row('{fuel}', mo('+'), mn(2.5), mo('·'), '{electricity}')),
  ),
  sentence: 'What the store and the pipes lose, and what leaves by the flue, is missing above.',
  source: 'ecodesignTanks',
  where: 'Article 2(18): a unit of electricity counts 2.5 times; no correction term of a test',
  range: 'any day on which something was spent',
  outside: 'no efficiency where no fuel and no electricity is counted',
  changes: 'Better insulation, a cooler return, less run off while waiting.',
  example: {
    given: { useful: 6 * 3.6e6, fuel: 7.5 * 3.6e6, electricity: 3.6e6 },
    gives: 0.6,
    digits: 9,
    note: 'Worked by hand: 6 over 7.5 and 2.5.',
  },
  compute: ({ useful, fuel, electricity }) => useful / (fuel + 2.5 * electricity),
};

/** What a store loses in a time. */
export const lostInTime: ClosureRecord = {
  key: 'lostInTime',
  title: 'What the cylinder loses in a time',
  result: asResult(energy('lost', 'loss', 'lost')),
  terms: [
    { key: 'UA', symbol: sub('UA', 'loss'), name: 'loss per kelvin', unit: 'W/K' },
    { key: 'difference', symbol: mi('ΔT'), name: 'surface above the air, in the mean', unit: 'K' },
    { key: 'time', symbol: mi('t'), name: 'time', unit: 'h', factor: 1 / 3600 },
  ],
  formula: equals('{result}', '{UA}', mo('×'), '{difference}', mo('×'), '{time}'),
  sentence: 'It loses day and night, and the more the longer it is kept hot.',
  source: 'en12897',
  where: 'tested at 45 K; taken as proportional to the difference; the mean is over the day',
  range: 'any day',
  outside: 'a store colder than the air gains heat',
  changes: 'Insulation; hot water at set times only, where draws allow it; a smaller store.',
  example: {
    given: { UA: 2, difference: 30, time: 86_400 },
    gives: 1.44 * 3.6e6,
    digits: 3,
    note: 'Worked by hand: 60 W for 24 h.',
  },
  compute: ({ UA, difference, time }) => UA * difference * time,
};

/** What a loss costs at the mean price of the heat. */
export const costOfLoss: ClosureRecord = {
  key: 'costOfLoss',
  title: 'What the loss costs',
  result: { key: 'result', symbol: sub('K', 'loss'), name: 'cost of the loss', unit: '' },
  terms: [
    energy('loss', 'loss', 'lost by the cylinder'),
    { key: 'cost', symbol: mi('K'), name: 'cost of all fuel and electricity', unit: '' },
    energy('heat', 'all', 'heat made with it'),
  ],
  formula: equals('{result}', '{loss}', mo('×'), paren(frac('{cost}', '{heat}'))),
  sentence: 'Heat that is lost has cost what any other heat of the day has.',
  source: 'practice',
  where: 'the figures for each kilowatt-hour are settings',
  range: 'any day on which fuel or electricity is counted',
  outside: 'no cost where none is counted',
  changes: 'Less loss, or other prices.',
  example: {
    given: { loss: 3.6e6, cost: 2, heat: 20 * 3.6e6 },
    gives: 0.1,
    digits: 9,
    note: 'Worked by hand: 1 of 20 kWh that cost 2.',
  },
  compute: ({ loss, cost, heat }) => (loss * cost) / heat,
};
