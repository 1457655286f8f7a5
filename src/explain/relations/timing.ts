import type { ClosureRecord } from '../../../shared/closureRecord.ts';
import { equals, frac, mo, sub } from '../../../shared/mathml.ts';
import { asResult, heat, meanPower, power, time } from './terms.ts';

/** Recovery time from the heat and its mean rate. */
export const recoveryTime: ClosureRecord = {
  key: 'recoveryTime',
  title: 'Recovery time',
  result: { ...asResult(time), name: 'recovery time' },
  terms: [
    { ...time, key: 'waiting', symbol: sub('t', 'wait'), name: 'coil not heating' },
    heat,
    meanPower,
  ],
  formula: equals('{result}', '{waiting}', mo('+'), frac('{heat}', '{mean}')),
  sentence: 'Time without heat, then the heat that went in over the rate at which it went.',
  source: 'lumpedHeat',
  where: 'the mean is taken over the run, so the sum is exact',
  range: 'any run in which the stat was satisfied',
  outside: 'not reached: there is no recovery time',
  changes: 'Less to heat, or a higher mean: the mean is what coil, flow and boiler leave over.',
  example: {
    given: { waiting: 60, heat: 12 * 3.6e6, mean: 18_000 },
    gives: 2460,
    digits: 6,
    note: 'Worked by hand: 1 min, then 12 kWh at 18 kW, 40 min.',
  },
  compute: ({ waiting, heat: given, mean }) => waiting + given / mean,
};

/** The trade's time: the same heat at full boiler output. */
export const ruleTime: ClosureRecord = {
  key: 'ruleTime',
  title: 'The same heat at full boiler output',
  result: asResult(time),
  terms: [heat, { ...power, name: 'boiler output' }],
  formula: equals('{result}', frac('{heat}', '{power}')),
  sentence:
    'Minutes by the trade’s rule: energy over boiler output, as if nothing else held it back.',
  source: 'bs6700',
  where: 'Annex C, the reheat rule with the heat of this run',
  range: 'a boiler that gives its full output to the end',
  outside: 'too short wherever coil, flow limit or heating hold the boiler back',
  changes: 'Only the boiler and the heat: the rule knows of nothing else.',
  example: {
    given: { heat: 12 * 3.6e6, power: 24_000 },
    gives: 1800,
    digits: 6,
    note: 'Worked by hand: 12 kWh at 24 kW, half an hour.',
  },
  compute: ({ heat: given, power: output }) => given / output,
};

/** The mean output of the coil. */
export const meanOutput: ClosureRecord = {
  key: 'meanOutput',
  title: 'Mean coil output',
  result: asResult(meanPower),
  terms: [heat, { ...time, name: 'time the coil ran' }],
  formula: equals('{result}', frac('{heat}', '{time}')),
  sentence: 'All the heat through the coil, spread over the minutes it ran.',
  source: 'lumpedHeat',
  where: 'definition of a mean',
  range: 'any run in which the coil ran',
  outside: 'no mean without a run',
  changes: 'It falls as the store warms: a larger coil holds it up longer.',
  example: {
    given: { heat: 12 * 3.6e6, time: 2400 },
    gives: 18_000,
    digits: 6,
    note: 'Worked by hand: 12 kWh in 40 min.',
  },
  compute: ({ heat: given, time: ran }) => given / ran,
};

/** The heat from its mean rate, the other way round. */
export const heatThrough: ClosureRecord = {
  key: 'heatThrough',
  title: 'Heat through the coil',
  result: asResult(heat),
  terms: [meanPower, { ...time, name: 'time the coil ran' }],
  formula: equals('{result}', '{mean}', mo('×'), '{time}'),
  sentence:
    'Minute by minute the coil’s output is added up; the mean times the time gives the same.',
  source: 'lumpedHeat',
  where: 'an integral of the run, so it holds to rounding',
  range: 'any run',
  outside: 'extended',
  changes: 'More water to heat, colder water, a higher set-point.',
  example: {
    given: { mean: 18_000, time: 2400 },
    gives: 12 * 3.6e6,
    digits: 3,
    note: 'Worked by hand: 18 kW for 40 min.',
  },
  compute: ({ mean, time: ran }) => mean * ran,
};
