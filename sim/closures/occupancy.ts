import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, expOf, mi, mn, mo, paren, raised } from '../../shared/mathml.ts';
import { exponentialLessOne } from '../../shared/portableMaths.ts';
import type { SquareMetres } from '../../shared/units.ts';

/** How many people are taken to live in a home, pure number, not whole; one in the smallest. */
export function occupancy(floorArea: SquareMetres): number {
  const above = Math.max(0, floorArea - SMALLEST);
  // source: sap, occupancy from floor area; read second-hand
  return 1 - 1.76 * exponentialLessOne(-0.000349 * above * above) + 0.0013 * above;
}

/** Up to this floor area one person lives there, m². */
const SMALLEST = 13.9; // source: sap, read second-hand

export const occupancyRecord: ClosureRecord = {
  key: 'occupancy',
  title: 'People by floor area',
  result: { key: 'result', symbol: mi('N'), name: 'people', unit: '' },
  terms: [{ key: 'floorArea', symbol: mi('A'), name: 'floor area', unit: 'm²' }],
  formula: equals(
    '{result}',
    mn(1),
    mo('+'),
    mn(1.76),
    mo('·'),
    paren(
      mn(1),
      mo('−'),
      expOf(mo('−'), mn(0.000349), raised(paren('{floorArea}', mo('−'), mn(SMALLEST)), mn(2))),
    ),
    mo('+'),
    mn(0.0013),
    mo('·'),
    paren('{floorArea}', mo('−'), mn(SMALLEST)),
  ),
  sentence:
    'A larger home holds more people, up to about three: a mean over many homes, never a count in one.',
  source: 'sap',
  where: 'occupancy from floor area in m²; read second-hand',
  range: 'homes in the United Kingdom above 13.9 m²',
  outside: 'one person at or below 13.9 m²; extended above',
  changes: 'The number of people who live there, where it is known, is better than this mean.',
  example: {
    given: { floorArea: 75 },
    gives: 2.36,
    digits: 2,
    note: 'Worked by hand from the formula: 1 + 1.76 × 0.7287 + 0.0794.',
  },
  compute: ({ floorArea }) => occupancy(floorArea),
};
