import type { ClosureRecord } from '../../../shared/closureRecord.ts';
import { equals, frac, mi, mo, paren, row, sub } from '../../../shared/mathml.ts';

const ohms = (key: string, below: string, name: string) => ({
  key,
  symbol: sub('R', below),
  name,
  unit: 'Ω',
  digits: 5,
});

/** The ohms that reach the controller, without a damp path. */
export const ohmsInSeries: ClosureRecord = {
  key: 'ohmsInSeries',
  title: 'The ohms that reach the controller',
  result: ohms('result', 'seen', 'ohms at the controller'),
  terms: [
    ohms('element', 'el', 'the element'),
    ohms('lead', 'lead', 'the lead, there and back'),
    ohms('joint', 'joint', 'a bad joint'),
  ],
  formula: equals('{result}', '{element}', mo('+'), '{lead}', mo('+'), '{joint}'),
  sentence: 'Whatever stands in series with the element adds its ohms.',
  source: 'practice',
  where: 'resistances in series',
  range: 'dry leads',
  outside: 'a damp joint lies across it',
  changes: 'A sound joint, a shorter or thicker lead.',
  example: {
    given: { element: 2981, lead: 1, joint: 200 },
    gives: 3182,
    digits: 9,
    note: 'Worked by hand.',
  },
  compute: ({ element, lead, joint }) => element + lead + joint,
};

/** The same with a damp path across the leads. */
export const ohmsWithDamp: ClosureRecord = {
  ...ohmsInSeries,
  key: 'ohmsWithDamp',
  title: 'The same with a damp joint across it',
  result: ohms('result', 'damp', 'ohms at the controller'),
  terms: [ohms('seen', 'seen', 'element, lead and joint'), ohms('damp', 'wet', 'the damp path')],
  formula: equals(
    '{result}',
    frac(row('{seen}', mo('·'), '{damp}'), row('{seen}', mo('+'), '{damp}')),
  ),
  sentence: 'A damp path beside the element takes ohms away, so a thermistor reads too warm.',
  where: 'resistances side by side',
  range: 'any two resistances',
  outside: 'no limits',
  changes: 'A dry box and a sound joint.',
  example: {
    given: { seen: 3000, damp: 6000 },
    gives: 2000,
    digits: 9,
    note: 'Worked by hand: 18 000 000 over 9000.',
  },
  compute: ({ seen, damp }) => (seen * damp) / (seen + damp),
};

/** Where a sensor settles between water and air. */
export const sensorSettles: ClosureRecord = {
  key: 'sensorSettles',
  title: 'Where the sensor settles',
  result: { key: 'result', symbol: sub('T', 'set'), name: 'settles at', unit: '°C', digits: 4 },
  terms: [
    { key: 'water', symbol: sub('T', 'w'), name: 'water beside it', unit: '°C', digits: 4 },
    { key: 'share', symbol: mi('a'), name: 'drawn to the air', unit: '%', factor: 100 },
    { key: 'air', symbol: sub('T', 'air'), name: 'air around', unit: '°C' },
  ],
  formula: equals(
    '{result}',
    '{water}',
    mo('+'),
    '{share}',
    mo('·'),
    paren('{air}', mo('−'), '{water}'),
  ),
  sentence: 'A strapped sensor feels the room as well as the water, and settles between them.',
  source: 'practice',
  where: 'the share is an engineering guess: no published value was found',
  range: 'a sensor on the wall; none of it in a pocket',
  outside: 'extended',
  changes: 'A pocket, paste, or lagging over the sensor.',
  example: {
    given: { water: 60, share: 0.125, air: 20 },
    gives: 55,
    digits: 9,
    note: 'Worked by hand: an eighth of 40 K.',
  },
  compute: ({ water, share, air }) => water + share * (air - water),
};

/** What the controller's own mapping makes of a reading that needs no element. */
export const readsTrue: ClosureRecord = {
  key: 'readsTrue',
  title: 'What the controller reads',
  result: { key: 'result', symbol: sub('T', 'read'), name: 'reading', unit: '°C', digits: 4 },
  terms: [
    { key: 'bead', symbol: sub('T', 's'), name: 'the sensor is at', unit: '°C', digits: 4 },
    { key: 'fault', symbol: mi('ε'), name: 'misread by', unit: 'K' },
  ],
  formula: equals('{result}', '{bead}', mo('+'), '{fault}'),
  sentence: 'A healthy chain reads what the sensor is at; another is off by what its ohms are off.',
  source: 'practice',
  where: 'the ohms are worked above where the element has any',
  range: 'any reading on the scale',
  outside: 'off its scale the controller shows a fault',
  changes: 'The right characteristic, sound joints.',
  example: {
    given: { bead: 54.8, fault: 5.2 },
    gives: 60,
    digits: 9,
    note: 'Worked by hand.',
  },
  compute: ({ bead, fault }) => bead + fault,
};
