import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mo, row } from '../../shared/mathml.ts';

/**
 * Heat transfer coefficient from a Nusselt number, W/(m² K).
 * @param Nu            Nusselt number on the diameter
 * @param conductivity  of the water, W/(m K)
 * @param diameter      m
 * @param enhancement   pure number over the plain formula
 */
export function filmCoefficient(
  Nu: number,
  conductivity: number,
  diameter: number,
  enhancement: number,
): number {
  return (enhancement * Nu * conductivity) / diameter;
}

export const filmCoefficientRecord: ClosureRecord = {
  key: 'filmCoefficient',
  title: 'Heat transfer coefficient at the tube',
  result: { key: 'result', symbol: mi('h'), name: 'heat transfer coefficient', unit: 'W/(m² K)' },
  terms: [
    { key: 'E', symbol: mi('E'), name: 'enhancement over a single plain tube', unit: '' },
    { key: 'Nu', symbol: mi('Nu'), name: 'Nusselt number', unit: '' },
    { key: 'k', symbol: mi('k'), name: 'conductivity of the water', unit: 'W/(m K)' },
    { key: 'd', symbol: mi('d'), name: 'diameter of the tube', unit: 'mm', factor: 1000 },
  ],
  formula: equals('{result}', '{E}', mo('·'), frac(row('{Nu}', mo('·'), '{k}'), '{d}')),
  sentence:
    'The moving water carries heat as well as a still film of a certain thickness would: the Nusselt number says how thin.',
  source: 'mates',
  where:
    'abstract: coils in tanks gave 1.3 to 1.8 times Morgan; 1.25 over Churchill and Chu is about its middle',
  range: 'a coil known by geometry alone: ± 25 % on the whole coil',
  outside: 'extended',
  changes: 'A rating or a calibration of the coil narrows the ± 25 %.',
  example: {
    given: { E: 1, Nu: 27.7, k: 0.25, d: 0.015 },
    gives: 461.7,
    digits: 1,
    note: 'The textbook coil: 27.70 × 0.25 / 0.015.',
  },
  compute: ({ E, Nu, k, d }) => filmCoefficient(Nu, k, d, E),
};
