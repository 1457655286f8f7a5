import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, sub } from '../../shared/mathml.ts';

/**
 * Resistance of a layer of scale on the outside of a tube, per tube outside area, m² K/W. The layer
 * is thin against the tube, so it is taken as flat: at 1 mm on a 22 mm tube this is 4.5 % above the
 * curved layer.
 * @param thickness     m, 0 for a clean tube
 * @param conductivity  of the scale, W/(m K)
 */
export function scaleResistance(thickness: number, conductivity: number): number {
  return thickness / conductivity;
}

/** Dense calcium carbonate scale, W/(m K). */
// source: pezzin, abstract
export const SCALE_CONDUCTIVITY = 2.2;

export const scaleRecord: ClosureRecord = {
  key: 'scale',
  title: 'Resistance of scale on the coil',
  result: { key: 'result', symbol: sub('R', 's'), name: 'resistance of the scale', unit: 'm² K/W' },
  terms: [
    { key: 'thickness', symbol: mi('s'), name: 'thickness of the scale', unit: 'mm', factor: 1000 },
    { key: 'k', symbol: sub('k', 's'), name: 'conductivity of the scale', unit: 'W/(m K)' },
  ],
  formula: equals('{result}', frac('{thickness}', '{k}')),
  sentence: 'Every tenth of a millimetre of scale adds the same resistance to the way of the heat.',
  source: 'pezzin',
  where: 'abstract, conductivity of calcium carbonate scale',
  range: 'layers thin against the tube, up to about 2 mm',
  outside: 'extended: a thicker layer would also widen the tube, which is left out',
  changes:
    'Descaling takes it away; porous scale conducts less (0.5 to 1.5 W/(m K), from memory) and is worse.',
  example: {
    given: { thickness: 0.001, k: 2.2 },
    gives: 4.5e-4,
    digits: 5,
    note: '1 mm at 2.2 W/(m K) is 4.5e-4 m² K/W.',
  },
  compute: ({ thickness, k }) => scaleResistance(thickness, k),
};
