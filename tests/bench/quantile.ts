/** A share of sorted times, e.g. 0.5 for the median, ms. */
export function quantile(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
}

/** The middle of times in any order, ms. */
export function median(times: readonly number[]): number {
  return quantile(
    [...times].sort((one, other) => one - other),
    0.5,
  );
}
