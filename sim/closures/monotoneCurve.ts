/**
 * A smooth curve through points that only ever rises where they rise and falls where they fall:
 * cubic pieces that agree in value and slope at every point, level at both ends and beyond them.
 * Reading it allocates nothing.
 */
export class MonotoneCurve {
  readonly knots: Float64Array; // [point] rising
  readonly pieces: Float64Array; // [piece × 4] coefficients of 1, v, v², v³ with v from the left knot

  /** @param points  [point][place, value], places rising, two or more */
  constructor(points: readonly (readonly [number, number])[]) {
    this.knots = Float64Array.from(points, ([place]) => place);
    const count = points.length - 1;
    this.pieces = new Float64Array(4 * count);
    for (let i = 0; i < count; i++) {
      const width = points[i + 1][0] - points[i][0];
      const steepness = (points[i + 1][1] - points[i][1]) / width;
      const left = slopeAt(points, i);
      const right = slopeAt(points, i + 1);
      this.pieces[4 * i] = points[i][1];
      this.pieces[4 * i + 1] = left;
      this.pieces[4 * i + 2] = (3 * steepness - 2 * left - right) / width;
      this.pieces[4 * i + 3] = (left + right - 2 * steepness) / (width * width);
    }
  }

  /** The value at a place; outside the points it stays at the end value. */
  at(place: number): number {
    const { knots, pieces } = this;
    const last = knots.length - 1;
    const x = Math.min(Math.max(place, knots[0]), knots[last]);
    let i = 0;
    while (i < last - 1 && x >= knots[i + 1]) i++;
    const v = x - knots[i];
    const k = 4 * i;
    return pieces[k] + v * (pieces[k + 1] + v * (pieces[k + 2] + v * pieces[k + 3]));
  }
}

/** Slope at a point: none at the ends, inside the steepest that keeps both neighbours monotone. */
function slopeAt(points: readonly (readonly [number, number])[], i: number): number {
  if (i === 0 || i === points.length - 1) return 0;
  const before = points[i][0] - points[i - 1][0];
  const after = points[i + 1][0] - points[i][0];
  const s = (points[i][1] - points[i - 1][1]) / before;
  const t = (points[i + 1][1] - points[i][1]) / after;
  if (s * t <= 0) return 0;
  // source: steffen, slope of the parabola through three points, limited to twice the flatter side
  const parabola = Math.abs(s * after + t * before) / (before + after);
  return Math.sign(s) * Math.min(parabola, 2 * Math.abs(s), 2 * Math.abs(t));
}
