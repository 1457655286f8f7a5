/**
 * Other published formulas for the inside of a tube, to compare ours with. Nusselt numbers, pure.
 */

/** Turbulent flow in a coil. source: schmidt, both turbulent ranges; read second-hand */
export function schmidtCoil(Re: number, Pr: number, r: number): number {
  return Re < 2.2e4
    ? 0.023 * (1 + 14.8 * (1 + r) * Math.cbrt(r)) * Re ** (0.8 - 0.22 * r ** 0.1) * Math.cbrt(Pr)
    : 0.023 * (1 + 3.6 * (1 - r) * r ** 0.8) * Re ** 0.8 * Math.cbrt(Pr);
}

/**
 * Turbulent flow in a coil, Pr ≥ 1. source: Mori and Nakayama, Int. J. Heat Mass Transfer 10,
 * 681-695, 1967; second-hand
 */
export function moriNakayamaCoil(Re: number, Pr: number, r: number): number {
  const X = Re * r ** 2.5;
  return (Pr ** 0.4 / 41) * Re ** (5 / 6) * r ** (1 / 12) * (1 + 0.061 / X ** (1 / 6));
}

/** Straight tube, fluid being cooled, Re ≥ 1e4. source: dittusBoelter; read second-hand */
export function dittusBoelterCooled(Re: number, Pr: number): number {
  return 0.023 * Re ** 0.8 * Pr ** 0.3;
}

/**
 * Straight tube, Re from 2300. source: gnielinski with f = (1.82 log Re − 1.64)^−2; read
 * second-hand
 */
export function gnielinskiStraight(Re: number, Pr: number): number {
  const f = (1.82 * Math.log10(Re) - 1.64) ** -2;
  return ((f / 8) * (Re - 1000) * Pr) / (1 + 12.7 * Math.sqrt(f / 8) * (Pr ** (2 / 3) - 1));
}

/** Straight tube, laminar, wall at one temperature. From memory. */
export const LAMINAR_STRAIGHT = 3.66;
