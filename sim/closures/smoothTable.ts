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
   * @param count  number of pieces, four or more
   * @param f      the function to keep; only called inside `from`..`to`
   * @param part   which of its formulas holds at a temperature: near a corner between two, slopes are found at the knot itself
   */
  constructor(
    from: number,
    to: number,
    count: number,
    f: (temperature: number) => number,
    part: (temperature: number) => number = () => 0,
  ) {
    this.from = from;
    this.step = (to - from) / count;
    this.last = count - 1;
    this.pieces = new Float64Array(4 * count);
    const knots = Array.from({ length: count + 1 }, (_, knot) => from + knot * this.step);
    const at = Float64Array.from(knots, f);
    const parts = knots.map(part);
    const slopes = at.map((_, knot) => {
      const first = firstOfFive(knot, count);
      if (parts[first] === parts[first + 4]) return slopeThrough(at, knot, first);
      const side = knot === 0 ? 1 : knot === count ? -1 : 0;
      return this.step * slopeNear(f, knots[knot], side);
    });
    for (let i = 0; i < count; i++) {
      const a = at[i];
      const b = at[i + 1];
      const p = slopes[i];
      const q = slopes[i + 1];
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
 * Slope at a knot, per step, from the values at five knots around it; at either end from the first or last five.
 * @param at     [knot]
 * @param first  of the five
 */
// source: slopes of the polynomial through five even points, textbook, from memory
function slopeThrough(at: Float64Array, knot: number, first: number): number {
  const [a, b, c, d, e] = SLOPES[knot - first];
  const sum =
    a * at[first] + b * at[first + 1] + c * at[first + 2] + d * at[first + 3] + e * at[first + 4];
  return sum / 12;
}

function firstOfFive(knot: number, last: number): number {
  return Math.min(Math.max(knot - 2, 0), last - 4);
}

/** [place among the five] weights of the five values, in twelfths. */
const SLOPES = [
  [-25, 48, -36, 16, -3],
  [-3, -10, 18, -6, 1],
  [1, -8, 0, 8, -1],
  [-1, 6, -18, 10, 3],
  [3, -16, 36, -48, 25],
] as const;

/**
 * Slope of a function, per kelvin, from values 0.01 K apart: near enough together for its curve,
 * far enough that rounding stays below 1e-10 of the value.
 * @param side  0 from both sides, 1 from the right only, −1 from the left only
 */
function slopeNear(f: (temperature: number) => number, at: number, side: -1 | 0 | 1): number {
  const d = 0.01;
  if (side === 0) return (f(at + d) - f(at - d)) / (2 * d);
  return (side * (4 * f(at + side * d) - 3 * f(at) - f(at + side * 2 * d))) / (2 * d);
}
