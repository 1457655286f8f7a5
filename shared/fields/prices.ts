import type { Field } from './row.ts';

/** What energy costs and emits: the user's own figures. */
export const priceFields: readonly Field[] = [
  {
    kind: 'number',
    path: 'prices.fuel',
    label: 'Price of fuel',
    help: 'Of a kilowatt-hour of fuel by gross calorific value, in your own currency.',
    unit: 'perKilowattHour',
    least: 0,
    most: 10,
    step: 0.005,
    default: 0.07,
    source: 'invented; type your own',
  },
  {
    kind: 'number',
    path: 'prices.electricity',
    label: 'Price of electricity',
    help: 'Of a kilowatt-hour, in your own currency.',
    unit: 'perKilowattHour',
    least: 0,
    most: 10,
    step: 0.005,
    default: 0.25,
    source: 'invented; type your own',
  },
  {
    kind: 'number',
    path: 'prices.fuelCarbon',
    label: 'Carbon of fuel',
    help: 'Carbon dioxide equivalent of a kilowatt-hour of fuel, gross, without what was emitted upstream.',
    unit: 'kilogramPerKilowattHour',
    least: 0,
    most: 1,
    step: 0.001,
    default: 0.183,
    source:
      'natural gas, United Kingdom conversion factors 2024 and 2025: 0.182 to 0.183, second-hand; sources disagree in the third figure',
  },
  {
    kind: 'number',
    path: 'prices.electricityCarbon',
    label: 'Carbon of electricity',
    help: 'Carbon dioxide equivalent of a kilowatt-hour of electricity.',
    unit: 'kilogramPerKilowattHour',
    least: 0,
    most: 2,
    step: 0.001,
    default: 0.2,
    source:
      'United Kingdom grid about 2024, from memory; type the factor of your own country and year',
  },
];
