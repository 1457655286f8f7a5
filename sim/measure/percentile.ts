/**
 * The value below which a share of a sample lies, straight between neighbours; each of the n values stands for the
 * middle of its n-th.
 * @param sorted  the least first; what is longer than any is infinite
 * @param share   0 to 1
 * @returns       infinite where it falls among those, or beside one
 */
export function percentile(sorted: ArrayLike<number>, share: number): number {
  const last = sorted.length - 1;
  const place = Math.min(last, Math.max(0, share * sorted.length - 0.5));
  const below = Math.floor(place);
  const part = place - below;
  if (part === 0 || sorted[below] === Number.POSITIVE_INFINITY) return sorted[below];
  return sorted[below] + part * (sorted[below + 1] - sorted[below]);
}
