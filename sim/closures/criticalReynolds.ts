import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, mi, mn, mo, paren, raised, row, sub } from '../../shared/mathml.ts';
import { powerFromZero } from './power.ts';

/**
 * Reynolds number at which flow in a coil turns turbulent, pure number.
 * @param curvature  bore / coil diameter
 */
export function criticalReynolds(curvature: number): number {
  // source: schmidt, critical Reynolds number
  return 2300 * (1 + 8.6 * powerFromZero(curvature, 0.45));
}

export const criticalReynoldsRecord: ClosureRecord = {
  key: 'criticalReynolds',
  title: 'Where flow in the coil turns turbulent',
  result: { key: 'result', symbol: sub('Re', 'c'), name: 'critical Reynolds number', unit: '' },
  terms: [
    {
      key: 'curvature',
      symbol: row(mi('d'), mo('/'), mi('D')),
      name: 'bore over coil diameter',
      unit: '',
    },
  ],
  formula: equals(
    '{result}',
    mn(2300),
    mo('·'),
    paren(mn(1), mo('+'), mn(8.6), mo('·'), raised(paren('{curvature}'), mn(0.45))),
  ),
  sentence: 'Curved flow stays laminar to a higher flow rate than flow in a straight tube.',
  source: 'schmidt',
  where: 'critical Reynolds number; read second-hand',
  range: 'bore / coil diameter up to about 0.2',
  outside: 'extended; 2300 for a straight tube',
  changes: 'A tighter coil turns turbulent later.',
  example: {
    given: { curvature: 0.04 },
    gives: 6946.79,
    digits: 2,
    note: 'Printed check: 0.02 m in 0.5 m.',
  },
  compute: ({ curvature }) => criticalReynolds(curvature),
};
