import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, raised, sub } from '../../shared/mathml.ts';
import type { CubicMetresPerSecond, Metres, Pascals } from '../../shared/units.ts';

/**
 * Pressure lost in a part that resists as the square of the flow (valve, boiler, strainer), Pa.
 * @param pressureAtReference  lost at the reference flow, Pa; infinite for a shut valve
 * @param referenceFlow        m³/s, above 0. A valve with a flow coefficient Kv loses 100 000 Pa at Kv m³/h
 * @param volumeFlow           m³/s, not negative
 */
export function quadraticDrop(
  pressureAtReference: Pascals,
  referenceFlow: CubicMetresPerSecond,
  volumeFlow: CubicMetresPerSecond,
): Pascals {
  if (volumeFlow === 0) return 0; // a shut valve too loses nothing when nothing flows
  const ratio = volumeFlow / referenceFlow;
  return pressureAtReference * ratio * ratio;
}

export type Fitting = 'elbow' | 'pulledBend' | 'teeBranch';

/**
 * Straight pipe that loses as much pressure as a fitting, m.
 * @param bore  of the pipe, m
 */
export function equivalentLength(fitting: Fitting, bore: Metres): Metres {
  return LENGTHS_IN_BORES[fitting] * bore;
}

/** Equivalent length over bore, pure number; published values differ by half. */
// source: fittings, rounded; from memory
const LENGTHS_IN_BORES: Readonly<Record<Fitting, number>> = {
  /** Square elbow through 90°. */
  elbow: 30,
  /** Bend through 90° with a radius of three bores or so. */
  pulledBend: 12,
  /** Out of the branch of a tee. */
  teeBranch: 60,
};

export const quadraticDropRecord: ClosureRecord = {
  key: 'quadraticDrop',
  title: 'Pressure lost in a valve or boiler',
  result: { key: 'result', symbol: mi('Δp'), name: 'pressure lost', unit: 'kPa', factor: 1e-3 },
  terms: [
    {
      key: 'pressure',
      symbol: sub('Δp', 'r'),
      name: 'pressure lost at the reference flow',
      unit: 'kPa',
      factor: 1e-3,
    },
    { key: 'flow', symbol: mi('Q'), name: 'flow', unit: 'l/min', factor: 60_000 },
    {
      key: 'reference',
      symbol: sub('Q', 'r'),
      name: 'reference flow',
      unit: 'l/min',
      factor: 60_000,
    },
  ],
  formula: equals(
    '{result}',
    '{pressure}',
    mo('·'),
    raised(paren(frac('{flow}', '{reference}')), mn(2)),
  ),
  sentence: 'A valve that is half shut is a resistance like any other: the flow goes elsewhere.',
  source: 'practice',
  where: 'square law of valves and heat exchangers, as for a flow coefficient Kv',
  range: 'turbulent flow through the part',
  outside: 'extended: in slow flow a part loses a little more than the square law says',
  changes: 'Opening the valve, cleaning the strainer, a larger valve.',
  example: {
    given: { pressure: 10_000, flow: 0.0005, reference: 0.00025 },
    gives: 40_000,
    digits: 6,
    note: 'Twice the flow, four times the pressure.',
  },
  compute: ({ pressure, flow, reference }) => quadraticDrop(pressure, reference, flow),
};

export const equivalentLengthRecord: ClosureRecord = {
  key: 'equivalentLength',
  title: 'Elbow as a length of pipe',
  result: { key: 'result', symbol: sub('L', 'e'), name: 'equivalent length', unit: 'm' },
  terms: [{ key: 'bore', symbol: mi('d'), name: 'bore', unit: 'mm', factor: 1000 }],
  formula: equals('{result}', mn(LENGTHS_IN_BORES.elbow), mo('·'), '{bore}'),
  sentence:
    'Each square elbow costs as much pressure as 30 bores of the same pipe, 0.6 m in 22 mm.',
  source: 'fittings',
  where: 'square elbow through 90°; from memory, published values differ by half',
  range: 'turbulent flow',
  outside: 'extended to laminar flow, where an elbow matters less',
  changes: 'Pulled bends in place of elbows.',
  example: {
    given: { bore: 0.02 },
    gives: 0.6,
    digits: 9,
    note: '30 bores of 20 mm.',
  },
  compute: ({ bore }) => equivalentLength('elbow', bore),
};
