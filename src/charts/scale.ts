/** A straight map from one interval to another, and back. */
export interface Scale {
  (value: number): number;
  readonly invert: (mapped: number) => number;
}

/**
 * Values to pixels. Written here for the size of the first load: a scale that also knows colours, dates and formats weighs
 * ten times as much as the rest of a chart.
 * @param domain  two different values
 * @param range   where they are drawn
 */
export function linearScale(
  [from, to]: readonly [number, number],
  [start, end]: readonly [number, number],
): Scale {
  const slope = (end - start) / (to - from);
  return Object.assign((value: number) => start + slope * (value - from), {
    invert: (mapped: number) => from + (mapped - start) / slope,
  });
}
