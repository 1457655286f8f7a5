import type { ClosureRecord, Term } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, row, sub, unit } from '../../shared/mathml.ts';
import {
  type Celsius,
  type CubicMetres,
  type CubicMetresPerSecond,
  toSI,
} from '../../shared/units.ts';
import { hotPart } from './outletBlend.ts';

/** What people wash in. */
export interface Fittings {
  readonly bath: boolean;
  readonly shower: boolean;
}

/** Baths taken in a day, a mean and so not whole. */
export function bathsPerDay(people: number, { bath, shower }: Fittings): number {
  if (!bath) return 0;
  // source: sap, Appendix J; read second-hand
  return shower ? 0.13 * people + 0.19 : 0.35 * people + 0.5;
}

/** Showers taken in a day, a mean and so not whole. */
export function showersPerDay(people: number, { bath, shower }: Fittings): number {
  if (!shower) return 0;
  // source: sap, Appendix J; from memory
  return bath ? 0.45 * people + 0.65 : 0.58 * people + 0.83;
}

/**
 * Hot water for baths in a day, taken as it leaves the store.
 * @param factor  of the month, 1 for the mean of the year
 */
export function bathUse(baths: number, cold: Celsius, factor = 1): CubicMetres {
  return hotPart(baths * BATH * factor, DELIVERED, cold, BATH_WARMTH);
}

/**
 * Hot water for showers in a day, taken as it leaves the store.
 * @param flow    of mixed water
 * @param factor  of the month, 1 for the mean of the year
 */
export function showerUse(
  showers: number,
  flow: CubicMetresPerSecond,
  cold: Celsius,
  factor = 1,
): CubicMetres {
  return hotPart(showers * SHOWER_TIME * flow * factor, DELIVERED, cold, SHOWER_WARMTH);
}

/**
 * Hot water for everything else in a day: sinks and basins.
 * @param factor  of the month, 1 for the mean of the year
 */
export function otherUse(people: number, factor = 1): CubicMetres {
  // source: sap, Appendix J, 9.8 N + 14 l a day; read second-hand
  return (9.8 * people + 14) * 1e-3 * factor;
}

/** Hot water as these counts take it, °C. */
export const DELIVERED = 52; // source: sap, Appendix J; read second-hand

/** One bath of mixed water, m³, and how warm it is, °C. */
export const BATH: CubicMetres = 0.073; // source: sap, Appendix J; read second-hand
export const BATH_WARMTH: Celsius = 42; // source: sap, Appendix J; read second-hand

/** One shower: how long it runs, s, and how warm the mixed water is, °C. */
export const SHOWER_TIME = 360; // source: sap, Appendix J; from memory
export const SHOWER_WARMTH: Celsius = 41; // source: sap, Appendix J; from memory

/** Mixed water of a shower whose flow was not measured, by what feeds it. */
export const showerFlows = {
  vented: toSI(7, 'litrePerMinute'), // source: sap, Appendix J; from memory
  pumped: toSI(12, 'litrePerMinute'), // source: sap, Appendix J; from memory
  unvented: toSI(11, 'litrePerMinute'), // source: sap, Appendix J; from memory
} as const satisfies Record<string, CubicMetresPerSecond>;

const people: Term = { key: 'people', symbol: mi('N'), name: 'people', unit: '' };
const cold: Term = { key: 'cold', symbol: sub('T', 'c'), name: 'incoming cold water', unit: '°C' };
const factor: Term = { key: 'factor', symbol: mi('f'), name: 'factor of the month', unit: '' };
const perDay = (name: string): Term => ({ key: 'result', symbol: mi('n'), name, unit: '' });
const hotVolume: Term = {
  key: 'result',
  symbol: sub('V', 'h'),
  name: 'hot water in a day',
  unit: 'l',
  factor: 1000,
};

const hotShareOf = (warmth: Celsius): string =>
  frac(row(mn(warmth), mo('−'), '{cold}'), row(mn(DELIVERED), mo('−'), '{cold}'));

const both: Fittings = { bath: true, shower: true };

const bathsRecord: ClosureRecord = {
  key: 'bathsPerDay',
  title: 'Baths in a day',
  result: perDay('baths in a day'),
  terms: [people],
  formula: equals('{result}', mn(0.13), mo('·'), '{people}', mo('+'), mn(0.19)),
  sentence: 'Where there is a shower as well, two people fill the bath every other day.',
  source: 'sap',
  where: 'Appendix J, home with bath and shower; read second-hand',
  range: 'means over homes in the United Kingdom; without a shower 0.35 N + 0.50',
  outside: 'extended',
  changes: 'Habits differ far more than this mean: type what your household does.',
  example: {
    given: { people: 2.1468 },
    gives: 0.469084,
    digits: 6,
    note: 'Worked by hand for the 2.1468 people of a printed example.',
  },
  compute: (given) => bathsPerDay(given.people, both),
};

const showersRecord: ClosureRecord = {
  ...bathsRecord,
  key: 'showersPerDay',
  title: 'Showers in a day',
  result: perDay('showers in a day'),
  formula: equals('{result}', mn(0.45), mo('·'), '{people}', mo('+'), mn(0.65)),
  sentence: 'Where there is a bath as well, two people take about three showers in two days.',
  where: 'Appendix J, home with bath and shower; from memory',
  range: 'means over homes in the United Kingdom; without a bath 0.58 N + 0.83',
  example: {
    given: { people: 2.1468 },
    gives: 1.61606,
    digits: 5,
    note: 'Worked by hand for the 2.1468 people of a printed example.',
  },
  compute: (given) => showersPerDay(given.people, both),
};

const bathUseRecord: ClosureRecord = {
  key: 'bathUse',
  title: 'Hot water for baths',
  result: hotVolume,
  terms: [{ key: 'baths', symbol: mi('n'), name: 'baths in a day', unit: '' }, cold, factor],
  formula: equals(
    '{result}',
    '{baths}',
    mo('·'),
    mn(BATH * 1000),
    unit('l'),
    mo('·'),
    hotShareOf(BATH_WARMTH),
    mo('·'),
    '{factor}',
  ),
  sentence: 'In winter the cold is colder, so each bath takes more hot water.',
  source: 'sap',
  where: 'Appendix J, 73 l at 42 °C from hot water at 52 °C; read second-hand',
  range: 'cold below 42 °C',
  outside: 'no hot water when the cold is at 42 °C or above',
  changes: 'Fewer or shallower baths; a hotter store, which needs a guard against scalding.',
  example: {
    given: { baths: 0.469084, cold: 8, factor: 1.035 },
    gives: 0.0273868,
    digits: 6,
    note: 'Printed for 2.1468 people in January: 27.3868 l a day.',
  },
  compute: (given) => bathUse(given.baths, given.cold, given.factor),
};

const showerUseRecord: ClosureRecord = {
  key: 'showerUse',
  title: 'Hot water for showers',
  result: hotVolume,
  terms: [
    { key: 'showers', symbol: mi('n'), name: 'showers in a day', unit: '' },
    { key: 'flow', symbol: mi('q'), name: 'flow of mixed water', unit: 'l/min', factor: 60_000 },
    cold,
    factor,
  ],
  formula: equals(
    '{result}',
    '{showers}',
    mo('·'),
    mn(SHOWER_TIME / 60),
    unit('min'),
    mo('·'),
    '{flow}',
    mo('·'),
    hotShareOf(SHOWER_WARMTH),
    mo('·'),
    '{factor}',
  ),
  sentence: 'A strong shower of six minutes takes about as much hot water as a bath.',
  source: 'sap',
  where: 'Appendix J, 6 min at 41 °C from hot water at 52 °C; from memory',
  range: 'cold below 41 °C',
  outside: 'no hot water when the cold is at 41 °C or above',
  changes: 'A shower of less flow, or a shorter one.',
  example: {
    given: { showers: 1.61606, flow: 11 / 60_000, cold: 8, factor: 1.035 },
    gives: 0.0827948,
    digits: 7,
    note: 'Worked by hand: 1.61606 × 6 min × 11 l/min × 33 / 44 × 1.035 = 82.795 l.',
  },
  compute: (given) => showerUse(given.showers, given.flow, given.cold, given.factor),
};

const otherUseRecord: ClosureRecord = {
  key: 'otherUse',
  title: 'Hot water for sinks and basins',
  result: hotVolume,
  terms: [people, factor],
  formula: equals(
    '{result}',
    paren(mn(9.8), unit('l'), mo('·'), '{people}', mo('+'), mn(14), unit('l')),
    mo('·'),
    '{factor}',
  ),
  sentence: 'Washing up and washing hands take some of the hot water whoever lives there.',
  source: 'sap',
  where: 'Appendix J, litres a day; read second-hand',
  range: 'means over homes in the United Kingdom',
  outside: 'extended',
  changes: 'Habits, and what the dishwasher and the washing machine heat for themselves.',
  example: {
    given: { people: 2.1468, factor: 1.1 },
    gives: 0.0385426,
    digits: 6,
    note: 'Printed for 2.1468 people in January: 38.5426 l a day.',
  },
  compute: (given) => otherUse(given.people, given.factor),
};

export const householdUseRecords: readonly ClosureRecord[] = [
  bathsRecord,
  showersRecord,
  bathUseRecord,
  showerUseRecord,
  otherUseRecord,
];
