import type { Measures } from './result.ts';

/** What variants are compared by at first sight; every other measure is a click away. */
export const comparedMeasures = [
  'recovery',
  'usableAtSatisfied',
  'usableAtCall',
  'meanCoilHeat',
  'meanReturn',
  'condensingShare',
  'burnerStarts',
  'lowestRoom',
  'fuel',
  'cost',
] as const satisfies readonly (keyof Measures)[];
