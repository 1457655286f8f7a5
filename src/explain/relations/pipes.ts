import type { ClosureRecord } from '../../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, raised, row } from '../../../shared/mathml.ts';
import { boreVelocity } from '../../../sim/closures/pipeFriction.ts';

/** How fast the water moves in the pipe. */
export const boreSpeed: ClosureRecord = {
  key: 'boreSpeed',
  title: 'Speed of the water in the pipe',
  result: { key: 'result', symbol: mi('v'), name: 'speed', unit: 'm/s' },
  terms: [
    { key: 'flow', symbol: mi('Q'), name: 'flow', unit: 'l/min', factor: 60_000 },
    { key: 'bore', symbol: mi('d'), name: 'bore', unit: 'mm', factor: 1000 },
  ],
  formula: equals(
    '{result}',
    frac(row(mn(4), mo('·'), '{flow}'), row(mi('π'), mo('·'), raised('{bore}', mn(2)))),
  ),
  sentence: 'The same flow through a smaller bore runs faster, loses more pressure and is heard.',
  source: 'whiteFluid',
  where: 'mean velocity in a full bore; bores of copper tube as in EN 1057; from memory',
  range: 'a full round bore',
  outside: 'extended',
  changes: 'A larger bore, or less flow.',
  example: {
    given: { flow: 0.00025, bore: 0.02 },
    gives: 0.7957747,
    digits: 7,
    note: 'Worked by hand: 15 l/min in 20 mm, 0.001 / (3.14159 × 0.0004).',
  },
  compute: ({ flow, bore }) => boreVelocity(bore, flow),
};
