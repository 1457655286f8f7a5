/**
 * A smooth function of temperature kept as cubic pieces between evenly spaced knots:
 * value and slope agree at every knot, so the solver sees no corner. Reading it allocates nothing.
 */
export class SmoothTable {
  readonly from: number; // °C, first knot
  readonly step: number; // K between knots
  readonly last: number; // index of the last piece
  readonly pieces: Float64Array; // [piece × 4] coefficients of 1, u, u², u³ with u in 0..1

  /**
   * @param from   first knot, °C
   * @param to     last knot, °C
   * @param count  number of pieces
   * @param f      the function to keep; only called inside `from`..`to`
   */
  constructor(from: number, to: number, count: number, f: (temperature: number) => number) {
    this.from = from;
    this.step = (to - from) / count;
    this.last = count - 1;
    this.pieces = new Float64Array(4 * count);
    // every knot is asked once: the end of a piece is the start of the next
    let b = f(from);
    let q = slope(f, from, 1) * this.step;
    for (let i = 0; i < count; i++) {
      const right = from + (i + 1) * this.step;
      const a = b;
      const p = q;
      b = f(right);
      q = slope(f, right, i === this.last ? -1 : 0) * this.step;
      this.pieces[4 * i] = a;
      this.pieces[4 * i + 1] = p;
      this.pieces[4 * i + 2] = 3 * (b - a) - 2 * p - q;
      this.pieces[4 * i + 3] = 2 * (a - b) + p + q;
    }
  }

  /** The value at a temperature, °C; outside the knots it stays at the end value. */
  at(temperature: number): number {
    let u = (temperature - this.from) / this.step;
    let i = Math.floor(u);
    if (i < 0) {
      i = 0;
      u = 0;
    } else if (i > this.last) {
      i = this.last;
      u = this.last + 1;
    }
    const x = u - i;
    const k = 4 * i;
    const c = this.pieces;
    return c[k] + x * (c[k + 1] + x * (c[k + 2] + x * c[k + 3]));
  }
}

/**
 * Slope of a function, per kelvin, from values 0.01 K apart: near enough together for its curve,
 * far enough that rounding stays below 1e-10 of the value.
 * @param side  0 from both sides, 1 from the right only, −1 from the left only
 */
function slope(f: (temperature: number) => number, at: number, side: -1 | 0 | 1): number {
  const d = 0.01;
  if (side === 0) return (f(at + d) - f(at - d)) / (2 * d);
  return (side * (4 * f(at + side * d) - 3 * f(at) - f(at + side * 2 * d))) / (2 * d);
}
