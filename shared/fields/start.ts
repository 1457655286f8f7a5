import type { Field } from './row.ts';

/** What the store holds at the start. */
export const startFields: readonly Field[] = [
  {
    kind: 'number',
    path: 'start.hotShare',
    label: 'Hot share at the start',
    help: 'Share of the store, from the top, that is hot when the run starts: 0 heats up from cold.',
    unit: 'percent',
    least: 0,
    most: 100,
    step: 5,
    default: 0,
    source: 'a heat-up from cold',
  },
  {
    kind: 'number',
    path: 'start.hotTemperature',
    label: 'Hot part at the start',
    help: 'Temperature of the hot part.',
    unit: 'celsius',
    least: 10,
    most: 85,
    step: 1,
    default: 60,
    source: 'HSG274 part 2, second-hand: stored at 60 °C or more',
    matters: (variant) => variant.start.hotShare > 0,
  },
  {
    kind: 'number',
    path: 'start.boundary',
    label: 'Boundary thickness',
    help: 'Height over which hot turns to cold at the start.',
    unit: 'metre',
    least: 0,
    most: 1,
    step: 0.02,
    default: 0.1,
    source: 'engineering guess, no source: what conduction makes of a draw within the hour',
    matters: (variant) => variant.start.hotShare > 0 && variant.start.hotShare < 1,
  },
];
