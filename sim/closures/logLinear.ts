import { power } from './power.ts';

/** A printed pair, the value above 0. */
export type Point = readonly [x: number, value: number];

/**
 * A value between printed ones, straight on a logarithmic scale: as many per cent with every step
 * of x. Exact at the printed places, held beyond the first and the last.
 * @param points  in order of x, one or more
 */
export function logLinear(points: readonly Point[], x: number): number {
  const next = points.findIndex(([place]) => place > x);
  if (next === 0) return points[0][1];
  if (next < 0) return points[points.length - 1][1];
  const [from, start] = points[next - 1];
  const [to, end] = points[next];
  return start * power(end / start, (x - from) / (to - from));
}
