import type { ClosureRecord } from '../../../shared/closureRecord.ts';
import { equals, mi, mo, sub } from '../../../shared/mathml.ts';

/** What a heater has used. */
export const heaterEnergy: ClosureRecord = {
  key: 'heaterEnergy',
  title: 'What the immersion heater used',
  result: { key: 'result', symbol: mi('E'), name: 'electricity', unit: 'kWh', factor: 1 / 3.6e6 },
  terms: [
    { key: 'power', symbol: mi('P'), name: 'its power', unit: 'kW', factor: 1e-3 },
    { key: 'time', symbol: mi('t'), name: 'time on', unit: 'min', factor: 1 / 60 },
  ],
  formula: equals('{result}', '{power}', mo('×'), '{time}'),
  sentence: 'All of it becomes heat in the water above the element.',
  source: 'lumpedHeat',
  where: 'definition of power',
  range: 'a heater that is on or off',
  outside: 'extended',
  changes: 'Less water above the element, or a lower set-point.',
  example: {
    given: { power: 3000, time: 3600 },
    gives: 3 * 3.6e6,
    digits: 6,
    note: 'Worked by hand: 3 kW for an hour.',
  },
  compute: ({ power, time }) => power * time,
};

/** Price or carbon of fuel and electricity together. */
const billOf = (
  key: string,
  title: string,
  symbol: string,
  unit: string,
  per: string,
): ClosureRecord => ({
  key,
  title,
  result: { key: 'result', symbol: mi(symbol), name: title.toLowerCase(), unit },
  terms: [
    { key: 'fuel', symbol: sub('Q', 'fuel'), name: 'fuel, gross', unit: 'kWh', factor: 1 / 3.6e6 },
    { key: 'perFuel', symbol: sub('p', 'fuel'), name: 'of fuel', unit: per, factor: 3.6e6 },
    { key: 'electricity', symbol: mi('E'), name: 'electricity', unit: 'kWh', factor: 1 / 3.6e6 },
    {
      key: 'perElectricity',
      symbol: sub('p', 'E'),
      name: 'of electricity',
      unit: per,
      factor: 3.6e6,
    },
  ],
  formula: equals(
    '{result}',
    '{fuel}',
    mo('×'),
    '{perFuel}',
    mo('+'),
    '{electricity}',
    mo('×'),
    '{perElectricity}',
  ),
  sentence: 'Each kilowatt-hour at your own figure for it; circulator and fan are left out.',
  source: 'practice',
  where: 'the figures for each kilowatt-hour are settings',
  range: 'any run of a boiler as built',
  outside: 'an ideal boiler burns no fuel',
  changes: 'Less fuel: a cooler return; or other prices and factors.',
  example: {
    given: {
      fuel: 10 * 3.6e6,
      perFuel: 0.07 / 3.6e6,
      electricity: 2 * 3.6e6,
      perElectricity: 0.25 / 3.6e6,
    },
    gives: 1.2,
    digits: 9,
    note: 'Worked by hand: 10 × 0.07 + 2 × 0.25.',
  },
  compute: ({ fuel, perFuel, electricity, perElectricity }) =>
    fuel * perFuel + electricity * perElectricity,
});

export const bill = billOf('bill', 'Cost of fuel and electricity', 'K', '', 'per kWh');
export const carbonOfRun = billOf('carbonOfRun', 'Carbon dioxide', 'm', 'kg', 'kg/kWh');
