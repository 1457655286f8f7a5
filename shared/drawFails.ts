import type { DrawReport } from './day.ts';
import type { Joules } from './units.ts';

/** Whether a draw ran cold, never came warm, or fell short of its load profile; one that was cut is not judged. */
export function fails(draw: DrawReport): boolean {
  if (draw.isCut) return false;
  if (draw.usefulAsked !== null) return missingHeat(draw) > 0 || !draw.hasPeaked;
  return draw.wanted !== null && draw.coldTime > 0;
}

/** Useful heat that a load profile asked of a draw and did not get. */
export function missingHeat({ usefulAsked, useful, isCut }: DrawReport): Joules {
  if (usefulAsked === null || isCut) return 0;
  const gap = usefulAsked - useful;
  return gap > usefulAsked * ENOUGH ? gap : 0;
}

const ENOUGH = 1e-6; // of the heat asked: the event that ends a draw is found to 0.1 ms
