import type { BurnerState } from '../phaseTime.ts';
import type { Phase, Result } from '../result.ts';
import type { Seconds } from '../units.ts';
import { valveMoves } from './phases.ts';

/** What stands open, or that a valve is on its way. */
export type ValveState = 'coil' | 'radiators' | 'both' | 'moving' | 'shut';

export const burnerWords: Readonly<Record<BurnerState, string>> = {
  full: 'at full output',
  modulating: 'modulating',
  least: 'at its least',
  off: 'off',
};

export const valveWords: Readonly<Record<ValveState, string>> = {
  coil: 'open to the coil',
  radiators: 'open to the radiators',
  both: 'open to both',
  moving: 'moving',
  shut: 'shut',
};

/** A phase, or a part of one, with what its valves do. */
export type ValvePhase = Phase & { readonly state: ValveState };

/** Phases with what is open in them, cut where a valve starts to move. */
export function valvePhases(result: Result): readonly ValvePhase[] {
  const moves = valveMoves(result);
  return result.phases.flatMap((phase) => {
    const edges = moves
      .flatMap(({ from, to }) => [from, to])
      .filter((edge) => edge > phase.from && edge < phase.to)
      .sort((one, other) => one - other);
    const ends = [...edges, phase.to];
    return ends.map((to, index) => {
      const from = index === 0 ? phase.from : ends[index - 1];
      const middle = (from + to) / 2;
      const isMoving = moves.some((move) => middle > move.from && middle < move.to);
      return { ...phase, from, to, state: isMoving ? 'moving' : openIn(phase) } as const;
    });
  });
}

/** The phase of a moment, with its valves; the last one after the end. */
export function phaseAt(result: Result, seconds: Seconds): ValvePhase | null {
  const phases = valvePhases(result);
  return (
    phases.find(({ from, to }) => seconds >= from && seconds < to) ??
    phases[phases.length - 1] ??
    null
  );
}

function openIn({ coilRuns, radiatorsRun }: Phase): Exclude<ValveState, 'moving'> {
  if (coilRuns) return radiatorsRun ? 'both' : 'coil';
  return radiatorsRun ? 'radiators' : 'shut';
}
