import type { Limit, Phase, Result } from '../result.ts';
import type { Celsius, Seconds } from '../units.ts';

/** From one moment to another, s. */
export interface Stretch {
  readonly from: Seconds;
  readonly to: Seconds;
}

/** Below this a time prints as 0.0 min, s. */
export const shownTime = 3;

/** Below this a delay is not worth a sentence, s. */
export const worthSaying = 60;

/** Whether the boiler serves the cylinder: water passes the coil, and not only because the pump runs on. */
export function servesCoil({ coilRuns, limit }: Phase): boolean {
  return coilRuns && !idles.has(limit);
}

/** The stretches in which the coil ran before the stat was first satisfied. */
export function heatingPhases({ phases, measures }: Result): readonly Phase[] {
  const until = measures.recovery ?? Number.POSITIVE_INFINITY;
  return phases.filter(({ coilRuns, from }) => coilRuns && from < until);
}

/** The stretches from the first call until the stat was first satisfied, or to the end. */
export function reheatPhases({ phases, marks, measures, outcome }: Result): readonly Phase[] {
  const called = marks.find(({ kind }) => kind === 'hotWaterCalled')?.at ?? outcome.at;
  const until = measures.recovery ?? outcome.at;
  return phases
    .filter(({ from, to }) => to > called && from < until)
    .map((phase) => ({
      ...phase,
      from: Math.max(phase.from, called),
      to: Math.min(phase.to, until),
    }));
}

/** Whether the stat called and the controller answered it with the boiler. */
export function isServed(result: Result): boolean {
  return reheatPhases(result).some(servesCoil);
}

/** Highest flow the boiler aimed at while it served the coil, °C; null when it never did. */
export function highestTarget({ trace }: Result): Celsius | null {
  const { flowTarget, coilFlow } = trace.of;
  let most: Celsius | null = null;
  for (let sample = 0; sample < trace.samples; sample += 1) {
    const target = flowTarget[sample];
    if (!(coilFlow[sample] > 0) || !(target > (most ?? Number.NEGATIVE_INFINITY))) continue;
    most = target;
  }
  return most;
}

/** When a motorised valve was on its way, one stretch for each arrival. */
export function valveMoves({ marks, variant }: Result): readonly Stretch[] {
  return marks
    .filter(({ kind }) => kind === 'valveArrived')
    .map(({ at }) => ({ from: Math.max(0, at - variant.primary.valveTravel), to: at }));
}

/** When something of a kind first happened, s. */
export function firstMark(
  { marks }: Result,
  kind: Result['marks'][number]['kind'],
): Seconds | null {
  return marks.find((mark) => mark.kind === kind)?.at ?? null;
}

const idles: ReadonlySet<Limit> = new Set(['off', 'overrun', 'valve']);
