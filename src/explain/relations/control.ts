import type { ClosureRecord } from '../../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, row, sub, unit } from '../../../shared/mathml.ts';
import { cosineOfTurns } from '../../../shared/portableMaths.ts';
import { asResult, time } from './terms.ts';

/** How fast the sensor follows the water. */
export const sensorFollows: ClosureRecord = {
  key: 'sensorFollows',
  title: 'How fast the sensor follows',
  result: {
    key: 'result',
    symbol: frac(sub('ΔT', 's'), mi('Δt')),
    name: 'the reading rises',
    unit: 'K/min',
    factor: 60,
  },
  terms: [
    { key: 'water', symbol: sub('T', 'w'), name: 'water at the sensor', unit: '°C', digits: 4 },
    { key: 'reading', symbol: sub('T', 's'), name: 'sensor reads', unit: '°C', digits: 4 },
    { ...time, key: 'lag', symbol: mi('τ'), name: 'lag', unit: 's', factor: 1 },
  ],
  formula: equals('{result}', frac(row('{water}', mo('−'), '{reading}'), '{lag}')),
  sentence: 'The reading runs after the water and in one lag makes up 63 % of what it is behind.',
  source: 'practice',
  where: 'first-order lag; the lag itself is an engineering guess',
  range: 'a sensor in a pocket or on the wall',
  outside: 'with no lag the reading is the water',
  changes: 'Heat-transfer paste and a tight pocket shorten the lag.',
  example: {
    given: { water: 61, reading: 60, lag: 60 },
    gives: 1 / 60,
    digits: 9,
    note: 'Worked by hand: 1 K behind with a lag of 60 s, 1 K a minute.',
  },
  compute: ({ water, reading, lag }) => (water - reading) / lag,
};

/** Where the stat calls again. */
export const callsAt: ClosureRecord = {
  key: 'callsAt',
  title: 'Where the stat calls again',
  result: { key: 'result', symbol: sub('T', 'call'), name: 'calls at', unit: '°C' },
  terms: [
    { key: 'setPoint', symbol: sub('T', 'set'), name: 'set-point', unit: '°C' },
    { key: 'differential', symbol: mi('Δ'), name: 'differential', unit: 'K' },
  ],
  formula: equals('{result}', '{setPoint}', mo('−'), '{differential}'),
  sentence:
    'Satisfied at the set-point, the stat rests until its sensor has fallen by the differential.',
  source: 'practice',
  where: 'an on/off stat',
  range: 'the reading of the sensor, not the water',
  outside: 'no limits',
  changes: 'A smaller differential calls sooner and, as a rule, more often.',
  example: {
    given: { setPoint: 60, differential: 6 },
    gives: 54,
    digits: 9,
    note: 'Worked by hand.',
  },
  compute: ({ setPoint, differential }) => setPoint - differential,
};

/** What the house loses to the outside. */
export const houseLoses: ClosureRecord = {
  key: 'houseLoses',
  title: 'What the house loses',
  result: {
    ...asResult(time),
    symbol: sub('Q', 'house'),
    name: 'the house loses',
    unit: 'kW',
    factor: 1e-3,
  },
  terms: [
    { key: 'loss', symbol: mi('H'), name: 'heat loss per kelvin', unit: 'W/K' },
    { key: 'air', symbol: sub('T', 'i'), name: 'room air', unit: '°C' },
    { key: 'outside', symbol: sub('T', 'o'), name: 'outside', unit: '°C' },
  ],
  formula: equals('{result}', '{loss}', mo('×'), paren('{air}', mo('−'), '{outside}')),
  sentence:
    'While the cylinder has the boiler the rooms lose this, and live on the heat of their fabric.',
  source: 'lumpedHeat',
  where: 'air and fabric share it, the fabric slows the fall',
  range: 'constant outside temperature, no sun and no people',
  outside: 'extended',
  changes: 'Insulation lowers it; with heavier fabric or a shorter reheat the rooms feel it less.',
  example: {
    given: { loss: 250, air: 20, outside: 0 },
    gives: 5000,
    digits: 9,
    note: 'Worked by hand: 250 W/K at 20 K.',
  },
  compute: ({ loss, air, outside }) => loss * (air - outside),
};

/** Outside air through the day. */
export const outsideWave: ClosureRecord = {
  key: 'outsideWave',
  title: 'Outside air through the day',
  result: { key: 'result', symbol: sub('T', 'o'), name: 'outside', unit: '°C' },
  terms: [
    { key: 'mean', symbol: sub('T', 'mean'), name: 'mean of the day', unit: '°C' },
    { key: 'swing', symbol: mi('s'), name: 'half the range of the day', unit: 'K' },
    {
      key: 'hours',
      symbol: mi('t'),
      name: 'hours from the warmest',
      unit: 'h',
      factor: 1 / 3600,
    },
  ],
  formula: equals(
    '{result}',
    '{mean}',
    mo('+'),
    '{swing}',
    mo('·'),
    mi('cos'),
    paren(frac(row(mn(2), mi('π'), mo('·'), '{hours}'), row(mn(24), unit(' h')))),
  ),
  sentence: 'One wave a day about its mean, warmest in mid-afternoon; without a swing it is level.',
  source: 'practice',
  where: 'the warmest hour, 15:00, is an engineering guess',
  range: 'any day without weather',
  outside: 'extended',
  changes: 'Only the settings of the house.',
  example: {
    given: { mean: 5, swing: 4, hours: 6 * 3600 },
    gives: 5,
    digits: 9,
    note: 'Worked by hand: a quarter of a day from the warmest hour it is at its mean.',
  },
  compute: ({ mean, swing, hours }) => mean + swing * cosineOfTurns(hours / 86_400),
};

/** Below which the rooms count as too cold. */
export const roomTooCold: ClosureRecord = {
  key: 'roomTooCold',
  title: 'Below which the rooms count as too cold',
  result: { key: 'result', symbol: sub('T', 'cold'), name: 'too cold below', unit: '°C' },
  terms: [
    { key: 'setPoint', symbol: sub('T', 'set'), name: 'set-point of the rooms', unit: '°C' },
    { key: 'differential', symbol: mi('Δ'), name: 'differential of their stat', unit: 'K' },
  ],
  formula: equals('{result}', '{setPoint}', mo('−'), mn(2), mo('·'), '{differential}'),
  sentence: 'A differential below where the room stat calls, the rooms are felt to be cold.',
  source: 'practice',
  where: 'chosen here',
  range: 'air of the rooms',
  outside: 'no limits',
  changes: 'A shorter reheat, a turn for the rooms, a heavier or better insulated house.',
  example: {
    given: { setPoint: 20, differential: 0.5 },
    gives: 19,
    digits: 9,
    note: 'Worked by hand.',
  },
  compute: ({ setPoint, differential }) => setPoint - 2 * differential,
};
