import type { ClosureRecord, Term } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, row } from '../../shared/mathml.ts';

/**
 * Heat to warm a volume of water, J.
 * @param volume        m³
 * @param rise          K
 * @param heatCapacity  of the water per volume, J/(m³ K)
 */
export function storedHeat(volume: number, rise: number, heatCapacity = HEAT_CAPACITY): number {
  return volume * heatCapacity * rise;
}

/**
 * Time to warm a volume of water at a steady power, s.
 * @param volume        m³
 * @param rise          K
 * @param power         mean over the heat-up, W, above 0
 * @param heatCapacity  J/(m³ K)
 */
export function heatUpTime(
  volume: number,
  rise: number,
  power: number,
  heatCapacity = HEAT_CAPACITY,
): number {
  return storedHeat(volume, rise, heatCapacity) / power;
}

/**
 * The trade rule for the same time, s: minutes = litres × rise / (14.3 × kW). It ignores standing
 * loss, and the power of an indirect coil falls as the store warms, so a mean must be put in.
 * @param volume  m³
 * @param rise    K
 * @param power   mean over the heat-up, W, above 0
 */
export function tradeHeatUpTime(volume: number, rise: number, power: number): number {
  // source: bs6700, Annex C
  const minutes = (volume * 1000 * rise) / (TRADE_FACTOR * (power / 1000));
  return minutes * 60;
}

/**
 * Litres × kelvin that one kilowatt warms in a minute, as the rule prints it; 60 / 4.186 = 14.33.
 */
export const TRADE_FACTOR = 14.3; // source: bs6700, Annex C

/** Heat capacity of water for hand sums, J/(m³ K): 1 kg a litre and 4186 J/(kg K). */
export const HEAT_CAPACITY = 4.186e6; // source: practice, the value behind 14.3

const VOLUME: Term = { key: 'volume', symbol: mi('V'), name: 'volume', unit: 'l', factor: 1000 };
const RISE: Term = { key: 'rise', symbol: mi('ΔT'), name: 'temperature rise', unit: 'K' };
const POWER: Term = { key: 'power', symbol: mi('P'), name: 'mean power', unit: 'kW', factor: 1e-3 };
const CAPACITY: Term = {
  key: 'heatCapacity',
  symbol: row(mi('ρ'), mi('c')),
  name: 'heat capacity of water',
  unit: 'kJ/(l K)',
  factor: 1e-6,
  digits: 4,
};

export const storedHeatRecord: ClosureRecord = {
  key: 'storedHeat',
  title: 'Heat to warm the water',
  result: { key: 'result', symbol: mi('Q'), name: 'heat', unit: 'kWh', factor: 1 / 3.6e6 },
  terms: [VOLUME, CAPACITY, RISE],
  formula: equals('{result}', '{volume}', mo('·'), '{heatCapacity}', mo('·'), '{rise}'),
  sentence: 'Twice the water or twice the rise takes twice the heat.',
  source: 'lumpedHeat',
  where: 'definition of specific heat',
  range: '0 to 100 °C; one heat capacity is within 3 % of that of water between 10 and 80 °C',
  outside: 'extended',
  changes: 'Less water, warmer incoming water or a lower store temperature.',
  example: {
    given: { volume: 0.1, heatCapacity: 4.186e6, rise: 50 },
    gives: 20_930e3,
    digits: -3,
    note: 'Printed: 100 litres from 30 to 80 °C take 20 930 kJ (cityGuilds, Book 1, page 184).',
  },
  compute: ({ volume, rise, heatCapacity }) => storedHeat(volume, rise, heatCapacity),
};

export const heatUpTimeRecord: ClosureRecord = {
  key: 'heatUpTime',
  title: 'Time to warm the water at a steady power',
  result: { key: 'result', symbol: mi('t'), name: 'time', unit: 'min', factor: 1 / 60 },
  terms: [VOLUME, CAPACITY, RISE, POWER],
  formula: equals(
    '{result}',
    frac(row('{volume}', mo('·'), '{heatCapacity}', mo('·'), '{rise}'), '{power}'),
  ),
  sentence: 'The heat the water needs, divided by the power that reaches it.',
  source: 'lumpedHeat',
  where: 'energy balance at constant power, no loss',
  range: 'power that is steady, or a true mean over the heat-up',
  outside:
    'extended; an indirect coil fades as the store warms, so its starting power gives too short a time',
  changes: 'More power into the water, not more power in the boiler.',
  example: {
    given: { volume: 0.15, heatCapacity: 4.2e6, rise: 40, power: 7000 },
    gives: 60 * 60,
    digits: 6,
    note: 'Printed: 150 litres from 10 to 50 °C at 7 kW take 60 min (heatUpTable).',
  },
  compute: ({ volume, rise, power, heatCapacity }) => heatUpTime(volume, rise, power, heatCapacity),
};

export const tradeHeatUpTimeRecord: ClosureRecord = {
  key: 'tradeHeatUpTime',
  title: 'The trade rule for heat-up time',
  result: { key: 'result', symbol: mi('t'), name: 'time', unit: 'min', factor: 1 / 60 },
  terms: [VOLUME, RISE, POWER],
  formula: equals(
    '{result}',
    frac(row('{volume}', mo('·'), '{rise}'), row(mn(TRADE_FACTOR), mo('·'), '{power}')),
  ),
  sentence: 'Litres times kelvin, divided by 14.3 times the kilowatts.',
  source: 'bs6700',
  where: 'Annex C',
  range: 'a mean power over the heat-up; standing loss is left out',
  outside: 'extended; 14.3 is 0.2 % long against 60 / 4.186',
  changes: 'Only volume, rise and mean power are in it; coil, flow and sensor are not.',
  example: {
    given: { volume: 0.06, rise: 50, power: 3000 },
    gives: 70 * 60,
    digits: -1,
    note: 'Printed: 60 litres by 50 K at 3 kW take 70 min (the worked case is from memory).',
  },
  compute: ({ volume, rise, power }) => tradeHeatUpTime(volume, rise, power),
};
