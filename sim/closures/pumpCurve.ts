import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, raised, sub } from '../../shared/mathml.ts';
import type { CubicMetresPerSecond, Metres, Pascals } from '../../shared/units.ts';

/**
 * What a circulator can do. A domestic one gives 5 to 6 m at shut-off and nothing near 3 m³/h, and
 * usually works at 3 to 4 m and 0.8 to 1.2 m³/h (from memory, no source).
 */
export interface Circulator {
  /** `curve`: one fixed speed. `constantHead`: slows down to hold its set head while it can. */
  readonly kind: 'curve' | 'constantHead';
  /** Head without flow at full speed, metres of the water pumped. */
  readonly shutOffHead: Metres;
  /** Flow at which no head is left, m³/s, above 0. */
  readonly largestFlow: CubicMetresPerSecond;
  /** Head held by `constantHead`, metres of the water pumped; not used by `curve`. */
  readonly setHead: Metres;
}

/**
 * Pressure a circulator adds, Pa. It never rises with the flow and is 0 beyond the largest flow.
 * @param volumeFlow  m³/s, not negative
 * @param density     of the water pumped, kg/m³
 */
export function circulatorPressure(
  circulator: Circulator,
  volumeFlow: CubicMetresPerSecond,
  density: number,
): Pascals {
  const { kind, shutOffHead, largestFlow, setHead } = circulator;
  if (volumeFlow >= largestFlow) return 0;
  const atFullSpeed = curveHead(shutOffHead, largestFlow, volumeFlow);
  const head = kind === 'constantHead' ? Math.min(setHead, atFullSpeed) : atFullSpeed;
  return density * GRAVITY * head;
}

/** Head at full speed, m: a parabola, flat at shut-off. */
function curveHead(shutOffHead: Metres, largestFlow: number, volumeFlow: number): Metres {
  // source: practice, shape of a small centrifugal pump's curve
  const share = volumeFlow / largestFlow;
  return shutOffHead * (1 - share * share);
}

/** Standard gravity, m/s². */
const GRAVITY = 9.80665; // agreed value, exact

export const circulatorRecord: ClosureRecord = {
  key: 'circulator',
  title: 'Pressure the circulator adds',
  result: { key: 'result', symbol: mi('Δp'), name: 'pressure added', unit: 'kPa', factor: 1e-3 },
  terms: [
    { key: 'density', symbol: mi('ρ'), name: 'density of the water', unit: 'kg/m³' },
    { key: 'shutOffHead', symbol: sub('H', '0'), name: 'head without flow', unit: 'm' },
    {
      key: 'flow',
      symbol: mi('Q'),
      name: 'flow',
      unit: 'l/min',
      factor: 60_000,
    },
    {
      key: 'largestFlow',
      symbol: sub('Q', 'max'),
      name: 'flow without head',
      unit: 'l/min',
      factor: 60_000,
    },
  ],
  formula: equals(
    '{result}',
    '{density}',
    mo('·'),
    mi('g'),
    mo('·'),
    '{shutOffHead}',
    mo('·'),
    paren(mn(1), mo('−'), raised(paren(frac('{flow}', '{largestFlow}')), mn(2))),
  ),
  sentence: 'The more a circulator must move, the less pressure it has left to move it with.',
  source: 'practice',
  where: 'a parabola through the two ends of the curve; g is standard gravity, 9.80665 m/s²',
  range: 'one fixed speed, from no flow to the flow without head',
  outside:
    'nothing beyond; a circulator that holds its head gives the smaller of that and the curve',
  changes: 'A higher speed setting, less resistance, a strainer cleaned.',
  example: {
    given: { density: 1000, shutOffHead: 6, flow: 0.0004, largestFlow: 0.0008 },
    gives: 44_129.925,
    digits: 3,
    note: 'Worked by hand at half the largest flow: 1000 × 9.80665 × 6 × 0.75.',
  },
  compute: ({ density, shutOffHead, flow, largestFlow }) =>
    circulatorPressure({ kind: 'curve', shutOffHead, largestFlow, setHead: 0 }, flow, density),
};
