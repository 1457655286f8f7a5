/**
 * base to the power exponent, for a positive base; pure number.
 * Written with exp and log because JavaScript engines round `Math.pow` differently in the last bit,
 * and a run must give the same bits in every one of them.
 */
export function power(base: number, exponent: number): number {
  return Math.exp(exponent * Math.log(base));
}

/** Sixth root of a number that is not negative. */
export function sixthRoot(x: number): number {
  return Math.cbrt(Math.sqrt(x));
}

/** base to a power above 0, for a base that may be 0. */
export function powerFromZero(base: number, exponent: number): number {
  return base > 0 ? power(base, exponent) : 0;
}
