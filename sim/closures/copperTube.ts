import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, raised, row, sub } from '../../shared/mathml.ts';
import type { Metres } from '../../shared/units.ts';
import { metals } from './metals.ts';

/** Outside diameter in mm, by which copper tube is called. */
export type TubeSize = '8' | '10' | '12' | '15' | '22' | '28' | '35';

export interface CopperTube {
  readonly outside: Metres;
  readonly wall: Metres;
  readonly bore: Metres;
}

/** Copper tube as sold in straight lengths, by size. */
// source: en1057, outside diameter and wall; the walls are those usually sold, from memory
export const copperTubes: Readonly<Record<TubeSize, CopperTube>> = {
  '8': tube(8, 0.6),
  '10': tube(10, 0.6),
  '12': tube(12, 0.6),
  '15': tube(15, 0.7),
  '22': tube(22, 0.9),
  '28': tube(28, 0.9),
  '35': tube(35, 1.2),
};

/** Water in one metre of copper tube, m³/m. */
export function tubeContent(size: TubeSize): number {
  return disc(copperTubes[size].bore);
}

/** Heat one metre of empty copper tube takes up per kelvin, J/(m K). */
export function tubeMetalHeat(size: TubeSize): number {
  const { outside, bore } = copperTubes[size];
  return (disc(outside) - disc(bore)) * metals.copper.volumetricHeat;
}

/** Area of a circle, m². */
function disc(diameter: Metres): number {
  return (Math.PI / 4) * diameter * diameter;
}

/** @param outside  mm @param wall  mm */
function tube(outside: number, wall: number): CopperTube {
  return { outside: outside / 1000, wall: wall / 1000, bore: (outside - 2 * wall) / 1000 };
}

export const tubeContentRecord: ClosureRecord = {
  key: 'tubeContent',
  title: 'Water in a metre of pipe',
  result: {
    key: 'result',
    symbol: sub('V', 'm'),
    name: 'content of one metre',
    unit: 'l/m',
    factor: 1000,
  },
  terms: [{ key: 'bore', symbol: mi('d'), name: 'bore', unit: 'mm', factor: 1000 }],
  formula: equals('{result}', frac(row(mi('π'), mo('·'), raised('{bore}', mn(2))), mn(4))),
  sentence: 'What stands in the pipes must be pushed through before hot water arrives.',
  source: 'en1057',
  where: 'outside diameter less two walls; walls as usually sold, from memory',
  range: 'copper tube of 8 to 35 mm',
  outside: 'other sizes are not offered',
  changes: 'A smaller bore holds less and resists more.',
  example: {
    given: { bore: 0.0136 },
    gives: 1.45267e-4,
    digits: 9,
    note: '15 mm tube, worked by hand: 3.14159 × 0.0136² / 4; printed in the trade as 0.145 l/m.',
  },
  compute: ({ bore }) => disc(bore),
};
