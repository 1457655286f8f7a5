import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, raised, row, unit } from '../../shared/mathml.ts';
import { exponential, logarithm } from '../../shared/portableMaths.ts';
import { fallingPart, inverseAt, reaches, type SteinhartHart } from '../../shared/steinhartHart.ts';
import { type Celsius, type Ohms, ZERO_CELSIUS } from '../../shared/units.ts';

/**
 * Temperature of a thermistor by its three coefficients, °C. Beyond the part of the curve that falls
 * it stays at that part's end; infinite when no temperature makes so few ohms.
 * @param resistance  ohm, above 0
 */
export function steinhartHartTemperature(resistance: Ohms, curve: SteinhartHart): Celsius {
  const [least, most] = fallingPart(curve);
  const inverse = inverseAt(Math.min(most, Math.max(least, logarithm(resistance))), curve);
  return inverse > 0 ? 1 / inverse - ZERO_CELSIUS : Number.POSITIVE_INFINITY;
}

/**
 * Resistance of a thermistor by its three coefficients, ohm; null when no resistance from 1 Ω to
 * 100 MΩ makes this temperature on the part of the curve that falls.
 * @param temperature  °C, above −273.15
 */
export function steinhartHartResistance(temperature: Celsius, curve: SteinhartHart): Ohms | null {
  if (!reaches(temperature, curve)) return null;
  const [least, most] = fallingPart(curve);
  const wanted = 1 / (temperature + ZERO_CELSIUS);
  // The curve bends one way here, so Newton's steps from the end where it is steeper come nearer
  // and never pass the crossing, save by rounding
  let L = curve.C > 0 ? most : least;
  for (let step = 0; step < MOST_STEPS; step++) {
    const next = L - (inverseAt(L, curve) - wanted) / (curve.B + 3 * curve.C * L * L);
    const isNearer = curve.C > 0 ? next < L : next > L;
    if (!isNearer) break;
    L = next;
  }
  return exponential(L);
}

const MOST_STEPS = 100; // the slowest start, B next to nothing, gains a third of the way with each

export const steinhartHartRecord: ClosureRecord = {
  key: 'steinhartHart',
  title: 'Temperature from the ohms of a thermistor, three coefficients',
  result: { key: 'result', symbol: mi('T'), name: 'temperature', unit: '°C', digits: 4 },
  terms: [
    { key: 'A', symbol: mi('A'), name: 'first coefficient', unit: '1/K', digits: 4 },
    { key: 'B', symbol: mi('B'), name: 'second coefficient', unit: '1/K', digits: 4 },
    { key: 'C', symbol: mi('C'), name: 'third coefficient', unit: '1/K', digits: 4 },
    { key: 'resistance', symbol: mi('R'), name: 'resistance', unit: 'Ω', digits: 5 },
  ],
  formula: equals(
    '{result}',
    frac(
      mn(1),
      row(
        '{A}',
        mo('+'),
        row('{B}', mo('·'), mi('ln'), paren('{resistance}')),
        mo('+'),
        row('{C}', mo('·'), raised(paren(mi('ln'), paren('{resistance}')), mn(3))),
      ),
    ),
    mo('−'),
    mn('273.15'),
    unit(' K'),
  ),
  sentence: 'Three coefficients follow the table of a real thermistor more closely than beta does.',
  source: 'steinhartHart',
  where: 'the equation of the paper, without its square term; from memory',
  range: '−20 to 120 °C, where the ohms have to fall all the way',
  outside:
    'extended while the ohms fall; beyond that the temperature stays at the end of the falling part',
  changes: 'The coefficients belong to one type of thermistor, with the resistance in ohms.',
  example: {
    given: { A: 0.001, B: 0.00025, C: 1e-7, resistance: 10_000 },
    gives: 22.645,
    digits: 3,
    note: 'Worked by hand: ln 10 000 = 9.21034, 1/T = 0.001 + 0.002302585 + 0.000078132 = 0.003380717 1/K, T = 295.795 K.',
  },
  compute: ({ A, B, C, resistance }) => steinhartHartTemperature(resistance, { A, B, C }),
};
