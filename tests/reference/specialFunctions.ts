/**
 * Error function, by its series up to 3 and by the continued fraction of erfc beyond; good to
 * 1e-14.
 */
export function erf(x: number): number {
  if (Math.abs(x) > 3) return Math.sign(x) * (1 - erfc(Math.abs(x)));
  let term = x;
  let sum = x;
  for (let n = 1; n < 200; n++) {
    term *= (-x * x) / n;
    sum += term / (2 * n + 1);
  }
  return (2 / Math.sqrt(Math.PI)) * sum;
}

/** Complement of the error function; keeps its figures far out, where 1 − erf would lose them. */
export function erfc(x: number): number {
  return x > 3 ? Math.exp(-x * x) * scaledErfc(x) : 1 - erf(x);
}

/**
 * Regularised upper incomplete gamma function Q(n, x) for a whole number n: the first n terms of a
 * Poisson sum.
 */
export function upperGamma(n: number, x: number): number {
  let term = Math.exp(-x);
  let sum = term;
  for (let k = 1; k < n; k++) {
    term *= x / k;
    sum += term;
  }
  return sum;
}

/** exp(x²) × erfc(x) for x ≥ 0, which never vanishes. */
export function scaledErfc(x: number): number {
  if (x < 3) return Math.exp(x * x) * (1 - erf(x));
  let tail = x;
  for (let k = 120; k > 0; k--) tail = x + k / 2 / tail;
  return 1 / Math.sqrt(Math.PI) / tail;
}
