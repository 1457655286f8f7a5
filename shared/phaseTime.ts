import type { Limit, Phase } from './result.ts';
import type { Seconds } from './units.ts';

/** Time in the phases that fit, up to a moment, s. */
export function timeOf(
  phases: readonly Phase[],
  fits: (phase: Phase) => boolean,
  until: Seconds = Number.POSITIVE_INFINITY,
): Seconds {
  let sum = 0;
  for (const phase of phases) {
    if (fits(phase)) sum += Math.max(0, Math.min(phase.to, until) - phase.from);
  }
  return sum;
}

/** What a burner does. */
export type BurnerState = 'full' | 'modulating' | 'least' | 'off';

/** The burner in a phase. */
export const burnerStates: Readonly<Record<Limit, BurnerState>> = {
  output: 'full',
  flowLimit: 'modulating',
  minimum: 'least',
  off: 'off',
  resting: 'off',
  lockedOut: 'off',
  idle: 'off',
  valve: 'off',
  overrun: 'off',
};

/** Whether the burner is lit in a phase. */
export function isLit({ limit }: Phase): boolean {
  return burnerStates[limit] !== 'off';
}
