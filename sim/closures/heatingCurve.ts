import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, raised, row, sub } from '../../shared/mathml.ts';
import { powerFromZero } from './power.ts';
import { smoothStep } from './smoothStep.ts';

/**
 * Weather compensation: the flow temperature at which radiators sized for the coldest day give just
 * what the house loses today, at an unchanged flow through them, °C. Smooth while it is colder
 * outside than in; as the two meet it falls to the room temperature, at the end steeply.
 * @param outside        °C
 * @param room           wanted, °C
 * @param designOutside  coldest day, °C, below `room`
 * @param designFlow     flow on the coldest day, °C
 * @param exponent       of the radiators, pure number
 * @param spread         flow less return on the coldest day, K
 */
export function weatherFlow(
  outside: number,
  room: number,
  designOutside: number,
  designFlow: number,
  exponent: number,
  spread: number,
): number {
  const share = Math.max((room - outside) / (room - designOutside), 0);
  const designExcess = designFlow - spread / 2 - room;
  // Mean water above the room for this share of the heat, and half the drop across the radiators
  return room + designExcess * powerFromZero(share, 1 / exponent) + (share * spread) / 2;
}

/**
 * Load compensation: the flow temperature for how far the room is from what is wanted, °C. Highest
 * at half the band below the set point, lowest at half the band above it, smooth between.
 * @param air          in the room, °C
 * @param setPoint     °C
 * @param band         K, above 0
 * @param lowestFlow   °C
 * @param highestFlow  °C
 */
export function loadFlow(
  air: number,
  setPoint: number,
  band: number,
  lowestFlow: number,
  highestFlow: number,
): number {
  const share = smoothStep((setPoint + band / 2 - air) / band);
  return lowestFlow + (highestFlow - lowestFlow) * share;
}

const SHARE = frac(row('{room}', mo('−'), '{outside}'), row('{room}', mo('−'), '{designOutside}'));

export const weatherFlowRecord: ClosureRecord = {
  key: 'weatherFlow',
  title: 'Flow temperature by the weather',
  result: { key: 'result', symbol: sub('T', 'f'), name: 'flow temperature', unit: '°C' },
  terms: [
    { key: 'outside', symbol: sub('T', 'o'), name: 'outside', unit: '°C' },
    { key: 'room', symbol: sub('T', 'i'), name: 'room', unit: '°C' },
    { key: 'designOutside', symbol: sub('T', 'd'), name: 'outside on the coldest day', unit: '°C' },
    { key: 'designFlow', symbol: sub('T', 'fd'), name: 'flow on the coldest day', unit: '°C' },
    { key: 'exponent', symbol: mi('n'), name: 'exponent of the radiators', unit: '' },
    { key: 'spread', symbol: mi('Δ'), name: 'flow less return on the coldest day', unit: 'K' },
  ],
  formula: equals(
    '{result}',
    '{room}',
    mo('+'),
    paren('{designFlow}', mo('−'), frac('{spread}', mn(2)), mo('−'), '{room}'),
    mo('·'),
    raised(paren(SHARE), frac(mn(1), '{exponent}')),
    mo('+'),
    frac('{spread}', mn(2)),
    mo('·'),
    SHARE,
  ),
  sentence: 'In mild weather the house loses little, and cooler radiators give it just that.',
  source: 'en442',
  where: 'characteristic equation turned round, with a heat loss in proportion to the difference',
  range:
    'outside below the room, flow through the radiators unchanged, no gains from sun or people',
  outside:
    'extended on days colder than the design day; the room temperature when it is warmer outside',
  changes: 'Larger radiators or less heat loss allow a lower curve.',
  example: {
    given: { outside: 10, room: 20, designOutside: -5, designFlow: 55, exponent: 1.3, spread: 10 },
    gives: 36.826,
    digits: 3,
    note: 'Worked by hand: 40 % of the heat, 0.4^(1/1.3) = 0.49419; 20 + 30 × 0.49419 + 2.',
  },
  compute: ({ outside, room, designOutside, designFlow, exponent, spread }) =>
    weatherFlow(outside, room, designOutside, designFlow, exponent, spread),
};

const BELOW_TOP = frac(
  row('{setPoint}', mo('+'), frac('{band}', mn(2)), mo('−'), '{air}'),
  '{band}',
);

export const loadFlowRecord: ClosureRecord = {
  key: 'loadFlow',
  title: 'Flow temperature by the room',
  result: { key: 'result', symbol: sub('T', 'f'), name: 'flow temperature', unit: '°C' },
  terms: [
    { key: 'air', symbol: sub('T', 'i'), name: 'air in the room', unit: '°C', digits: 4 },
    { key: 'setPoint', symbol: sub('T', 's'), name: 'set point', unit: '°C' },
    { key: 'band', symbol: mi('b'), name: 'band', unit: 'K' },
    { key: 'lowest', symbol: sub('T', 'low'), name: 'lowest flow temperature', unit: '°C' },
    { key: 'highest', symbol: sub('T', 'high'), name: 'highest flow temperature', unit: '°C' },
  ],
  formula: equals(
    '{result}',
    '{lowest}',
    mo('+'),
    paren('{highest}', mo('−'), '{lowest}'),
    mo('·'),
    raised(paren(BELOW_TOP), mn(2)),
    mo('·'),
    paren(mn(3), mo('−'), mn(2), mo('·'), BELOW_TOP),
  ),
  sentence: 'The warmer the room, the cooler the boiler runs.',
  source: 'practice',
  where: 'the smooth curve across the band is chosen here; controls differ',
  range: 'air within half the band of the set point',
  outside: 'clamped: highest flow below the band, lowest above it',
  changes: 'A wider band is calmer and lets the room drift further.',
  example: {
    given: { air: 20.5, setPoint: 20, band: 2, lowest: 30, highest: 60 },
    gives: 34.6875,
    digits: 4,
    note: 'Worked by hand: a quarter into the band from its top, 0.25² × 2.5 = 0.15625; 30 + 30 × 0.15625.',
  },
  compute: ({ air, setPoint, band, lowest, highest }) =>
    loadFlow(air, setPoint, band, lowest, highest),
};
