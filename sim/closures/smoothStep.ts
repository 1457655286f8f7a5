/**
 * From 0 at u = 0 to 1 at u = 1 with no slope at either end, so that a run sees no corner; stays 0
 * below and 1 above. Pure number.
 * @param u  place between the two ends
 */
export function smoothStep(u: number): number {
  if (u <= 0) return 0;
  if (u >= 1) return 1;
  return u * u * (3 - 2 * u);
}
