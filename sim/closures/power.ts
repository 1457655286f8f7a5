import { cubeRoot, exponential, logarithm } from '../../shared/portableMaths.ts';

/** base to the power exponent, for a positive base; pure number. */
export function power(base: number, exponent: number): number {
  return exponential(exponent * logarithm(base));
}

/** Sixth root of a number that is not negative. */
export function sixthRoot(x: number): number {
  return cubeRoot(Math.sqrt(x));
}

/** base to a power above 0, for a base that may be 0. */
export function powerFromZero(base: number, exponent: number): number {
  return base > 0 ? power(base, exponent) : 0;
}
