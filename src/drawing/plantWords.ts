import { burnerStates } from '../../shared/phaseTime.ts';
import type { Limit } from '../../shared/result.ts';
import { burnerWords, type ValvePhase } from '../../shared/sentences/plantStates.ts';
import type { ValvePlace } from './plantPlan.ts';

const offWords: Partial<Record<Limit, string>> = {
  resting: 'resting',
  lockedOut: 'locked out',
  overrun: 'off, pump on',
  idle: 'return too hot',
};

/** What the burner does, in a word. */
export function burnerText(phase: ValvePhase | null): string {
  if (phase === null) return burnerWords.off;
  return offWords[phase.limit] ?? burnerWords[burnerStates[phase.limit]];
}

/** What a valve does, in a word; both of two are on their way while one is, as a run does not tell them apart. */
export function valveText(opens: ValvePlace['opens'], phase: ValvePhase | null): string {
  if (phase === null) return 'shut';
  if (phase.state === 'moving') return 'moving';
  if (opens === 'either') return eitherWords[phase.state];
  const isOpen = opens === 'coil' ? phase.coilRuns : phase.radiatorsRun;
  return isOpen ? 'open' : 'shut';
}

const eitherWords = {
  coil: 'to the coil',
  radiators: 'to the radiators',
  both: 'to both',
  shut: 'at rest',
} as const;
