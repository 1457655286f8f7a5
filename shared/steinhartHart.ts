import { type Celsius, ZERO_CELSIUS } from './units.ts';

/** The three coefficients, with the resistance in ohm: 1/K each. */
export interface SteinhartHart {
  readonly A: number;
  readonly B: number;
  readonly C: number;
}

/** 1/T at a logarithm of the ohms, 1/K. */
export function inverseAt(L: number, { A, B, C }: SteinhartHart): number {
  // source: steinhartHart; from memory
  return A + L * (B + C * L * L);
}

/** Logarithms of the ohms between which more ohms mean colder; empty when least ≥ most. */
export function fallingPart({ B, C }: SteinhartHart): readonly [least: number, most: number] {
  const turn = Math.sqrt(-B / (3 * C)); // where the slope B + 3 C L² is nothing; NaN when it never is
  if (B > 0) return [0, C < 0 ? Math.min(LARGEST, turn) : LARGEST];
  return C > 0 ? [turn, LARGEST] : [0, 0];
}

/** Whether some resistance from 1 Ω to 100 MΩ makes a temperature on the part of the curve that falls. */
export function reaches(temperature: Celsius, curve: SteinhartHart): boolean {
  const [least, most] = fallingPart(curve);
  const wanted = 1 / (temperature + ZERO_CELSIUS);
  return least < most && inverseAt(least, curve) <= wanted && wanted <= inverseAt(most, curve);
}

/** Whether three coefficients describe a thermistor: its ohms fall all the way from −20 to 120 °C. */
export function isSolvable(curve: SteinhartHart): boolean {
  return reaches(COLDEST, curve) && reaches(HOTTEST, curve);
}

const COLDEST = -20; // °C
const HOTTEST = 120; // °C
const LARGEST = 18.420680743952367; // ln of 100 MΩ, more than any thermistor of this trade
