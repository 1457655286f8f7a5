import type { Variant } from '../variant.ts';
import type { Field } from './row.ts';

const fitted = { matters: ({ immersion }: Variant) => immersion.used !== 'no' };

/** The electric immersion heater. */
export const immersionFields: readonly Field[] = [
  {
    kind: 'choice',
    path: 'immersion.used',
    label: 'Immersion heater',
    help: 'Off, helping the boiler, or in its place when the boiler is out or for comparison.',
    choices: [
      { value: 'no', label: 'off' },
      { value: 'withBoiler', label: 'helps the boiler' },
      { value: 'insteadOfBoiler', label: 'in place of the boiler' },
    ],
    default: 'no',
    source: 'common practice, no source',
  },
  {
    kind: 'number',
    path: 'immersion.output',
    label: 'Immersion output',
    help: 'Electric heat while its stat calls.',
    unit: 'kilowatt',
    least: 0.5,
    most: 12,
    step: 0.5,
    default: 3,
    source: 'BS 6700:2006 Annex C: 3 kW immersion heater',
    ...fitted,
  },
  {
    kind: 'number',
    path: 'immersion.height',
    label: 'Immersion height',
    help: 'Of the element and its stat; water below it stays cold.',
    unit: 'metre',
    least: 0.02,
    most: 3,
    step: 0.02,
    default: 0.3,
    source: 'common practice, no source: low for all the water, high for a quick basin',
    ...fitted,
  },
  {
    kind: 'number',
    path: 'immersion.setPoint',
    label: 'Immersion set-point',
    help: 'Its own stat stops it at this temperature of the water around it.',
    unit: 'celsius',
    least: 35,
    most: 75,
    step: 1,
    default: 60,
    source: 'HSG274 part 2, second-hand: stored at 60 °C or more',
    ...fitted,
  },
  {
    kind: 'number',
    path: 'immersion.differential',
    label: 'Immersion differential',
    help: 'It calls again this far below its set-point.',
    unit: 'kelvin',
    least: 1,
    most: 20,
    step: 0.5,
    default: 6,
    source: 'common practice, no source: 5 to 10 K',
    ...fitted,
  },
];
