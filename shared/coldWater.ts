import type { Celsius } from './units.ts';
import type { Variant } from './variant.ts';

/** One value for each month, January first. */
export type ByMonth<V> = readonly [V, V, V, V, V, V, V, V, V, V, V, V];

/** January is 1: as a choice, so that it is one of these and nothing between. */
export type Month = '1' | '2' | '3' | '4' | '5' | '6' | '7' | '8' | '9' | '10' | '11' | '12';

/** The value of one month. */
export function ofMonth<V>(values: ByMonth<V>, month: Month): V {
  return values[Number(month) - 1];
}

/** Where the cold water comes from: straight off the main, or out of a cistern in the house. */
export type ColdSupply = 'mains' | 'cistern';

// source: sap, Table J1; from memory, January from the mains confirmed by a printed worked number
/** Incoming cold water of the United Kingdom by month. */
export const coldWater: Readonly<Record<ColdSupply, ByMonth<Celsius>>> = {
  mains: [8, 8.2, 9.3, 12.7, 14.6, 16.7, 18.4, 17.6, 16.6, 14.3, 11.1, 8.5],
  cistern: [11.1, 11.3, 12.3, 14.5, 16.2, 18.8, 21.3, 19.3, 18.7, 16.2, 13.2, 11.2],
};

/** The incoming cold water of a variant, as typed or by its month. */
export function incomingCold({ coldFrom, incomingCold, month }: Variant['draw']): Celsius {
  return coldFrom === 'typed' ? incomingCold : ofMonth(coldWater[coldFrom], month);
}
