import type { Phase } from '../../shared/result.ts';

/** From one moment to another, s, and what it was like. */
export interface Merged<K> {
  readonly pattern: K;
  readonly from: number;
  readonly to: number;
}

/** Phases of one kind run together; what lasts under half a second between two samples of a switch is left out. */
export function mergedStretches<P extends Phase, K>(
  phases: readonly P[],
  kindOf: (phase: P) => K,
): Merged<K>[] {
  const merged: { pattern: K; from: number; to: number }[] = [];
  for (const phase of phases) {
    if (phase.to - phase.from < 0.5) continue;
    const pattern = kindOf(phase);
    const last = merged.at(-1);
    if (last?.pattern === pattern) last.to = phase.to;
    else merged.push({ pattern, from: phase.from, to: phase.to });
  }
  return merged;
}
