import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, row, sub } from '../../shared/mathml.ts';
import { logarithm } from '../../shared/portableMaths.ts';

/**
 * Resistance of a tube wall per outside area, m² K/W.
 * @param outsideDiameter  m
 * @param insideDiameter   m, smaller than the outside one
 * @param conductivity     of the metal, W/(m K)
 */
export function tubeWall(
  outsideDiameter: number,
  insideDiameter: number,
  conductivity: number,
): number {
  return (outsideDiameter * logarithm(outsideDiameter / insideDiameter)) / (2 * conductivity);
}

/** Conductivity of tube metals, W/(m K). */
// source: handbookMetals; copper is phosphorus-deoxidised tube, mid-way in 305 to 340
export const TUBE_METALS = { copper: 320, stainlessSteel: 15 } as const;

export const tubeWallRecord: ClosureRecord = {
  key: 'tubeWall',
  title: 'Resistance of the tube wall',
  result: { key: 'result', symbol: sub('R', 'w'), name: 'resistance of the wall', unit: 'm² K/W' },
  terms: [
    {
      key: 'outside',
      symbol: sub('d', 'o'),
      name: 'tube outside diameter',
      unit: 'mm',
      factor: 1000,
    },
    {
      key: 'inside',
      symbol: sub('d', 'i'),
      name: 'tube inside diameter',
      unit: 'mm',
      factor: 1000,
    },
    { key: 'k', symbol: sub('k', 'w'), name: 'conductivity of the metal', unit: 'W/(m K)' },
  ],
  formula: equals(
    '{result}',
    frac(
      row('{outside}', mo('·'), mi('ln'), paren(frac('{outside}', '{inside}'))),
      row(mn(2), mo('·'), '{k}'),
    ),
  ),
  sentence: 'A thicker wall or a metal that conducts less holds the heat back; copper hardly does.',
  source: 'carslawJaeger',
  where: 'steady conduction through a cylinder wall; from memory',
  range: 'any tube with a wall',
  outside: 'no limits',
  changes:
    'Stainless steel in place of copper raises it about twentyfold, and only then does it matter.',
  example: {
    given: { outside: 0.022, inside: 0.0204, k: 390 },
    gives: 2.1297e-6,
    digits: 10,
    note: '22 / 20.4 mm copper at 390 W/(m K), worked by hand: 0.022 × 0.075508 / 780.',
  },
  compute: ({ outside, inside, k }) => tubeWall(outside, inside, k),
};
