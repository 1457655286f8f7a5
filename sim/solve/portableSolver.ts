import { exponential, logarithm } from '../../shared/portableMaths.ts';

/**
 * Runs the solver with a power function that gives the same bits in every engine. The package takes its step sizes from
 * `Math.pow`, whose last bit differs between engines; a step that differs in its last bit makes every later number differ.
 * Nothing else runs meanwhile, and the engine's own function is back before this returns.
 */
export function withPortablePower<T>(solve: () => T): T {
  const own = Math.pow;
  Math.pow = portablePower;
  try {
    return solve();
  } finally {
    Math.pow = own;
  }
}

/** Power as the solver uses it: whole exponents by multiplication, others of a base that is not negative. */
export function portablePower(base: number, exponent: number): number {
  if (exponent === 2) return base * base;
  if (exponent >= 0 && exponent < 32 && exponent === Math.floor(exponent)) {
    let product = 1;
    for (let times = 0; times < exponent; times++) product *= base;
    return product;
  }
  if (base === 0) return 0;
  if (!(base > 0)) return Number.NaN;
  if (base === Number.POSITIVE_INFINITY) return base;
  return exponential(exponent * logarithm(base));
}
