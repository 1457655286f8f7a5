import type { ByMonth } from './coldWater.ts';

// source: sap, Table J2; from memory, January confirmed by a printed worked number
/** Water used at sinks and basins, as a share of the mean of the year. */
export const otherUseFactors: ByMonth<number> = [
  1.1, 1.06, 1.02, 0.98, 0.94, 0.9, 0.9, 0.94, 0.98, 1.02, 1.06, 1.1,
];

// source: sap, Table J5; from memory, January confirmed by a printed worked number
/** Water used in baths and showers, as a share of the mean of the year. */
export const bathingFactors: ByMonth<number> = [
  1.035, 1.021, 1.007, 0.993, 0.979, 0.965, 0.965, 0.979, 0.993, 1.007, 1.021, 1.035,
];
