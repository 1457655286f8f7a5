import type { ClosureRecord, Term } from '../../../shared/closureRecord.ts';
import { equals, frac, mi, mo, sub } from '../../../shared/mathml.ts';
import { asResult, flowHere, power, time } from './terms.ts';

const fuel: Term = { ...power, key: 'fuel', symbol: sub('P', 'fuel'), name: 'fuel burnt, gross' };
const efficiency: Term = {
  key: 'efficiency',
  symbol: mi('η'),
  name: 'gross efficiency',
  unit: '%',
  factor: 100,
};
const energy = (key: string, below: string, name: string): Term => ({
  key,
  symbol: sub('Q', below),
  name,
  unit: 'kWh',
  factor: 1 / 3.6e6,
});
const target: Term = { key: 'target', symbol: sub('T', 'aim'), name: 'flow target', unit: '°C' };
const starts: Term = { key: 'starts', symbol: mi('N'), name: 'burner starts', unit: '' };
const burst: Term = { ...time, key: 'burst', symbol: sub('t', 'lit'), name: 'mean time lit' };
const lit: Term = { ...time, key: 'lit', symbol: mi('t'), name: 'burner lit in all' };

/** Heat from the burner to the water. */
export const burnerGives: ClosureRecord = {
  key: 'burnerGives',
  title: 'What the burner gives to the water',
  result: { ...asResult(power), name: 'the boiler gives' },
  terms: [fuel, efficiency],
  formula: equals('{result}', '{fuel}', mo('×'), '{efficiency}'),
  sentence:
    'Of the heat in the fuel the efficiency reaches the water; the rest leaves by the flue.',
  source: 'lumpedHeat',
  where: 'definition of efficiency, on gross calorific value',
  range: 'while the burner is lit',
  outside: 'nothing while it is off',
  changes: 'A cooler return raises it, above all below the dew point.',
  example: {
    given: { fuel: 20_000, efficiency: 0.9 },
    gives: 18_000,
    digits: 6,
    note: 'Worked by hand: 90 % of 20 kW.',
  },
  compute: ({ fuel: burnt, efficiency: share }) => burnt * share,
};

/** Fuel behind a heat. */
export const fuelBurnt: ClosureRecord = {
  key: 'fuelBurnt',
  title: 'The fuel behind this heat',
  result: asResult(fuel),
  terms: [power, efficiency],
  formula: equals('{result}', frac('{power}', '{efficiency}')),
  sentence: 'Heat to the water over efficiency is the heat in the fuel, by gross calorific value.',
  source: 'lumpedHeat',
  where: 'definition of efficiency, on gross calorific value',
  range: 'while the burner is lit',
  outside: 'nothing while it is off',
  changes: 'A cooler return needs less fuel for the same heat.',
  example: {
    given: { power: 18_000, efficiency: 0.9 },
    gives: 20_000,
    digits: 6,
    note: 'Worked by hand: 18 kW over 90 %.',
  },
  compute: ({ power: given, efficiency: share }) => given / share,
};

/** The same over the whole run. */
export const fuelOfRun: ClosureRecord = {
  key: 'fuelOfRun',
  title: 'Fuel of the whole run',
  result: energy('result', 'fuel', 'fuel, gross'),
  terms: [energy('heat', 'boiler', 'heat from the boiler'), efficiency],
  formula: equals('{result}', frac('{heat}', '{efficiency}')),
  sentence: 'The heat the boiler gave over the mean efficiency is what was burnt.',
  source: 'lumpedHeat',
  where: 'definition of efficiency, on gross calorific value',
  range: 'any run',
  outside: 'extended',
  changes: 'Less heat, or a cooler return.',
  example: {
    given: { heat: 9 * 3.6e6, efficiency: 0.9 },
    gives: 10 * 3.6e6,
    digits: 3,
    note: 'Worked by hand: 9 kWh over 90 %.',
  },
  compute: ({ heat, efficiency: share }) => heat / share,
};

/** Efficiency of the whole run. */
export const meanEfficiency: ClosureRecord = {
  key: 'meanEfficiency',
  title: 'Efficiency over the whole run',
  result: asResult(efficiency),
  terms: [
    energy('heat', 'boiler', 'heat from the boiler'),
    energy('fuel', 'fuel', 'fuel burnt, gross'),
  ],
  formula: equals('{result}', frac('{heat}', '{fuel}')),
  sentence: 'Heat that reached the water over heat in the fuel.',
  source: 'lumpedHeat',
  where: 'definition of efficiency, on gross calorific value; net figures are 1.11 times as high',
  range: 'any run in which the burner was lit',
  outside: 'no efficiency without fuel',
  changes: 'A cooler return: a lower flow temperature, larger radiators, a larger coil.',
  example: {
    given: { heat: 9 * 3.6e6, fuel: 10 * 3.6e6 },
    gives: 0.9,
    digits: 9,
    note: 'Worked by hand: 9 of 10 kWh.',
  },
  compute: ({ heat, fuel: burnt }) => heat / burnt,
};

/** A part of a whole, of the fuel or of the heat. */
export const partOfWhole: ClosureRecord = {
  key: 'partOfWhole',
  title: 'A part of the whole',
  result: { key: 'result', symbol: mi('w'), name: 'part', unit: '%', factor: 100 },
  terms: [energy('part', 'part', 'that part'), energy('whole', 'all', 'all of it')],
  formula: equals('{result}', frac('{part}', '{whole}')),
  sentence: 'One sum over the run beside another.',
  source: 'lumpedHeat',
  where: 'both are integrals of the run',
  range: 'any run in which the burner was lit',
  outside: 'no share of nothing',
  changes: 'A cooler return condenses more; more heating takes more of the fuel.',
  example: {
    given: { part: 3.6e6, whole: 4 * 3.6e6 },
    gives: 0.25,
    digits: 9,
    note: 'Worked by hand: 1 of 4 kWh.',
  },
  compute: ({ part, whole }) => part / whole,
};

/** How far the flow is below what the boiler aims at. */
export const belowTarget: ClosureRecord = {
  key: 'belowTarget',
  title: 'How far the flow is below its target',
  result: { key: 'result', symbol: mi('ΔT'), name: 'below the target', unit: 'K' },
  terms: [target, flowHere],
  formula: equals('{result}', '{target}', mo('−'), '{flow}'),
  sentence:
    'The controller burns more the further the flow is below its target, and less as they meet.',
  source: 'practice',
  where: 'proportional and integral action on the flow temperature',
  range: 'while the burner may be lit',
  outside: 'too far above the target it goes off',
  changes: 'Only the settings move the target; with compensation, the rooms or the weather.',
  example: {
    given: { target: 80, flow: 72.5 },
    gives: 7.5,
    digits: 9,
    note: 'Worked by hand.',
  },
  compute: ({ target: aim, flow }) => aim - flow,
};

/** What a burner at its least gives too much. */
export const surplus: ClosureRecord = {
  key: 'surplus',
  title: 'What the least output gives too much',
  result: { ...asResult(power), symbol: mi('ΔP'), name: 'too much' },
  terms: [
    { ...power, key: 'least', symbol: sub('P', 'least'), name: 'least output' },
    { ...power, key: 'taken', symbol: sub('P', 'coil'), name: 'the coil passes' },
  ],
  formula: equals('{result}', '{least}', mo('−'), '{taken}'),
  sentence:
    'What is not taken warms boiler and pipes until the flow is too hot and the burner off.',
  source: 'lumpedHeat',
  where: 'energy balance of the boiler water; pipe losses are left out',
  range: 'a burner at its least',
  outside: 'below zero the coil takes more, and the burner turns up',
  changes: 'A boiler that turns down further, a larger or cleaner coil, more flow.',
  example: {
    given: { least: 8000, taken: 5000 },
    gives: 3000,
    digits: 6,
    note: 'Worked by hand: 8 kW less 5 kW.',
  },
  compute: ({ least, taken }) => least - taken,
};

/** How often the burner was lit. */
export const burnerStarted: ClosureRecord = {
  key: 'burnerStarted',
  title: 'Burner starts',
  result: asResult(starts),
  terms: [lit, burst],
  formula: equals('{result}', frac('{lit}', '{burst}')),
  sentence: 'The same minutes in shorter bursts are more starts.',
  source: 'lumpedHeat',
  where: 'definition of a mean; starts are counted in the run',
  range: 'any run',
  outside: 'no mean without a start',
  changes: 'A lower least output, more water, a wider margin about the target.',
  example: {
    given: { lit: 3600, burst: 600 },
    gives: 6,
    digits: 9,
    note: 'Worked by hand: an hour in bursts of 10 min.',
  },
  compute: ({ lit: all, burst: each }) => all / each,
};

/** How long the burner was lit. */
export const burnerLit: ClosureRecord = {
  ...burnerStarted,
  key: 'burnerLit',
  title: 'How long the burner was lit',
  result: asResult(lit),
  terms: [starts, burst],
  formula: equals('{result}', '{starts}', mo('×'), '{burst}'),
  sentence: 'Each start brings a burst of heat; together they are the time it was lit.',
  example: {
    given: { starts: 6, burst: 600 },
    gives: 3600,
    digits: 9,
    note: 'Worked by hand: 6 bursts of 10 min.',
  },
  compute: ({ starts: count, burst: each }) => count * each,
};
