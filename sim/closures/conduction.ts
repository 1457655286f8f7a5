import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, row, sub } from '../../shared/mathml.ts';

/**
 * Conductance between the centres of two layers of a cylinder, W/K: the water and, beside it, the
 * metal of the wall.
 * @param waterConductivity  W/(m K), with any factor for slow stirring already in it
 * @param diameter           inside diameter of the cylinder, m
 * @param wallConductivity   W/(m K), 0 to leave the wall out
 * @param wallThickness      m
 * @param spacing            between layer centres, m
 */
export function layerConductance(
  waterConductivity: number,
  diameter: number,
  wallConductivity: number,
  wallThickness: number,
  spacing: number,
): number {
  const k = columnConductivity(waterConductivity, diameter, wallConductivity, wallThickness);
  return (k * Math.PI * diameter * diameter) / 4 / spacing;
}

/**
 * Conductivity of the water column and its wall together, on the area of the water, W/(m K).
 * @param waterConductivity  W/(m K)
 * @param diameter           inside diameter, m
 * @param wallConductivity   W/(m K)
 * @param wallThickness      m, thin against the diameter
 */
export function columnConductivity(
  waterConductivity: number,
  diameter: number,
  wallConductivity: number,
  wallThickness: number,
): number {
  // source: duffieBeckman, parallel paths; the area ratio of a thin wall is 4 t / D
  return waterConductivity + (4 * wallConductivity * wallThickness) / diameter;
}

/** Conductivity of cylinder wall metals, W/(m K). */
// source: handbookMetals
export const WALL_METALS = { copper: 390, stainlessSteel: 16, carbonSteel: 50 } as const;

export const conductionRecord: ClosureRecord = {
  key: 'conduction',
  title: 'Conduction down the cylinder, water and wall',
  result: {
    key: 'result',
    symbol: sub('k', 'eff'),
    name: 'conductivity of the column',
    unit: 'W/(m K)',
  },
  terms: [
    { key: 'water', symbol: sub('k', 'w'), name: 'conductivity of the water', unit: 'W/(m K)' },
    { key: 'wall', symbol: sub('k', 'm'), name: 'conductivity of the wall', unit: 'W/(m K)' },
    { key: 'thickness', symbol: mi('t'), name: 'thickness of the wall', unit: 'mm', factor: 1000 },
    {
      key: 'diameter',
      symbol: mi('D'),
      name: 'inside diameter of the cylinder',
      unit: 'mm',
      factor: 1000,
    },
  ],
  formula: equals(
    '{result}',
    '{water}',
    mo('+'),
    frac(row(mn(4), mo('·'), '{wall}', mo('·'), '{thickness}'), '{diameter}'),
  ),
  sentence:
    'A copper wall carries more heat from the hot top to the cold bottom than all the still water inside it.',
  source: 'duffieBeckman',
  where: 'chapter 8, water and wall in parallel; from memory',
  range: 'walls thin against the diameter',
  outside: 'extended',
  changes: 'A stainless cylinder keeps hot and cold apart several times longer than a copper one.',
  example: {
    given: { water: 0.63, wall: 390, thickness: 0.0009, diameter: 0.35 },
    gives: 4.64,
    digits: 2,
    note: 'Worked by hand: 0.63 + 4 × 390 × 0.0009 / 0.35.',
  },
  compute: ({ water, wall, thickness, diameter }) =>
    columnConductivity(water, diameter, wall, thickness),
};
