import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, raised, root, row } from '../../shared/mathml.ts';

/**
 * Darcy friction factor of turbulent flow in a coil, pure number.
 * @param Re         Reynolds number on the bore
 * @param curvature  bore / coil diameter
 */
export function coilFriction(Re: number, curvature: number): number {
  // source: vdiCoil, a smooth straight tube and a share for the curvature; from memory
  return 0.3164 / Math.sqrt(Math.sqrt(Re)) + 0.03 * Math.sqrt(curvature);
}

export const coilFrictionRecord: ClosureRecord = {
  key: 'coilFriction',
  title: 'Friction factor of the coil',
  result: { key: 'result', symbol: mi('f'), name: 'Darcy friction factor', unit: '' },
  terms: [
    {
      key: 'Re',
      symbol: mi('Re'),
      name: 'Reynolds number in the bore',
      unit: '',
    },
    {
      key: 'curvature',
      symbol: row(mi('d'), mo('/'), mi('D')),
      name: 'bore over coil diameter',
      unit: '',
    },
  ],
  formula: equals(
    '{result}',
    frac(mn(0.3164), raised('{Re}', mn(0.25))),
    mo('+'),
    mn(0.03),
    mo('·'),
    root('{curvature}'),
  ),
  sentence:
    'Curvature adds to the friction of the bore, and what stirs the water also carries heat.',
  source: 'vdiCoil',
  where: 'turbulent flow; from memory',
  range: 'Re above 22 000',
  outside: 'only used above 22 000',
  changes: 'A tighter coil stirs more.',
  example: {
    given: { Re: 1e4, curvature: 0.04 },
    gives: 0.03764,
    digits: 5,
    note: 'Worked by hand: 0.3164 / 10 + 0.03 × 0.2.',
  },
  compute: ({ Re, curvature }) => coilFriction(Re, curvature),
};
