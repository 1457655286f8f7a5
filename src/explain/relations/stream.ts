import { outletTemperature } from '../../../sim/closures/exchange.ts';
import type { ClosureRecord } from '../../../shared/closureRecord.ts';
import { equals, expOf, frac, mi, mn, mo, paren, sub } from '../../../shared/mathml.ts';
import { asResult, flowHere, heatRate, power, returnHere } from './terms.ts';

/** What the coil passes: the stream's heat rate, the share given up, and the difference. */
export const coilPasses: ClosureRecord = {
  key: 'coilPasses',
  title: 'What the coil passes',
  result: {
    key: 'result',
    symbol: sub('Q', 'coil'),
    name: 'the coil passes',
    unit: 'kW',
    factor: 1e-3,
  },
  terms: [
    heatRate,
    { key: 'UA', symbol: mi('UA'), name: 'what the coil conducts', unit: 'kW/K', factor: 1e-3 },
    { ...flowHere, key: 'inlet', name: 'flow at the coil' },
    { key: 'water', symbol: sub('T', 'w'), name: 'water around the coil', unit: '°C', digits: 4 },
  ],
  formula: equals(
    '{result}',
    '{mc}',
    mo('×'),
    paren(mn(1), mo('−'), expOf(mo('−'), frac('{UA}', '{mc}'))),
    mo('×'),
    paren('{inlet}', mo('−'), '{water}'),
  ),
  sentence:
    'Heat in the flow, times the share it gives up, times how much hotter it is than the water.',
  source: 'kaysLondon',
  where: 'stream past water at one temperature; from memory',
  range: 'any flow and conductance; UA is known to ± 25 % from geometry alone',
  outside: 'the model marches through the layers; one mean temperature stands for them here',
  changes: 'A hotter flow, a larger or cleaner coil, cooler water around it.',
  example: {
    given: { mc: 1000, UA: 1000 * Math.LN2, inlet: 80, water: 20 },
    gives: 30_000,
    digits: 6,
    note: 'Worked by hand: at UA = ṁc ln 2 the stream gives up half of 60 K at 1 kW/K.',
  },
  compute: ({ mc, UA, inlet, water }) => mc * (inlet - outletTemperature(inlet, water, UA, mc)),
};

/** Heat that a stream carries from flow to return. */
export const streamHeat: ClosureRecord = {
  key: 'streamHeat',
  title: 'Heat between flow and return',
  result: asResult(power),
  terms: [heatRate, flowHere, returnHere],
  formula: equals('{result}', '{mc}', mo('×'), paren('{flow}', mo('−'), '{back}')),
  sentence: 'The wider flow and return stand apart, the more heat the water carries.',
  source: 'lumpedHeat',
  where: 'definition of specific heat',
  range: 'steady flow',
  outside: 'extended',
  changes: 'At the same heat, more flow brings flow and return closer together.',
  example: {
    given: { mc: 1045, flow: 80, back: 60 },
    gives: 20_900,
    digits: 6,
    note: 'Worked by hand: 0.25 kg/s × 4180 J/(kg K) × 20 K.',
  },
  compute: ({ mc, flow, back }) => mc * (flow - back),
};

/** The flow temperature at which a boiler gives a heat to a return. */
export const flowNeeded: ClosureRecord = {
  key: 'flowNeeded',
  title: 'The flow that this heat needs',
  result: asResult(flowHere),
  terms: [returnHere, power, heatRate],
  formula: equals('{result}', '{back}', mo('+'), frac('{power}', '{mc}')),
  sentence:
    'As the store warms the return rises, and the flow rises with it; at the flow limit the boiler must give less.',
  source: 'lumpedHeat',
  where: 'definition of specific heat',
  range: 'steady flow',
  outside: 'held at the flow limit: the heat falls instead',
  changes: 'A higher limit or a better coil puts this off.',
  example: {
    given: { back: 60, power: 20_900, mc: 1045 },
    gives: 80,
    digits: 9,
    note: 'Worked by hand: 20.9 kW over 1.045 kW/K is 20 K above the return.',
  },
  compute: ({ back, power: given, mc }) => back + given / mc,
};

/** The return that is left when a heat has been taken from the flow. */
export const returnLeft: ClosureRecord = {
  key: 'returnLeft',
  title: 'The return that is left',
  result: asResult(returnHere),
  terms: [flowHere, power, heatRate],
  formula: equals('{result}', '{flow}', mo('−'), frac('{power}', '{mc}')),
  sentence: 'The more heat the coil takes out, the cooler the water comes back.',
  source: 'lumpedHeat',
  where: 'definition of specific heat',
  range: 'steady flow',
  outside: 'extended',
  changes: 'A larger coil, less flow or a cooler store lowers the return.',
  example: {
    given: { flow: 80, power: 20_900, mc: 1045 },
    gives: 60,
    digits: 9,
    note: 'Worked by hand: 20.9 kW over 1.045 kW/K is 20 K below the flow.',
  },
  compute: ({ flow, power: taken, mc }) => flow - taken / mc,
};
