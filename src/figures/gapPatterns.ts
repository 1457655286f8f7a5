import type { Gap } from '../../shared/point.ts';

/** How points without a value are told apart on a map, besides the word. */
export const gapPatterns: Readonly<Record<Gap['kind'], string>> = {
  notReached: 'hatch',
  endedEarly: 'dots',
  notPossible: 'cross',
};
