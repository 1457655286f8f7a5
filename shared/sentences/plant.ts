import { duration, quantityText } from '../format.ts';
import { burnerStates, isLit } from '../phaseTime.ts';
import type { Limit, Quantity, Result } from '../result.ts';
import { valueAt } from '../sampleAt.ts';
import type { Seconds } from '../units.ts';
import { burnerWords, phaseAt, type ValvePhase, valveWords } from './plantStates.ts';
import { type FigureWords, type Sentence, say } from './sentence.ts';

/** What the plant does at one moment: where the heat comes from and where it goes. */
export function plantFinding(result: Result, seconds: Seconds): FigureWords {
  const phase = phaseAt(result, seconds);
  return { heading: heading(result, seconds, phase), summary: [summary(phase)] };
}

function heading(result: Result, seconds: Seconds, phase: ValvePhase | null): Sentence {
  const when = duration(seconds, seconds % 60 === 0 ? 0 : 1);
  const value = (key: Quantity) =>
    quantityText(key, valueAt(result.trace.time, result.trace.of[key], seconds));
  const flows = phase !== null && (phase.coilRuns || phase.radiatorsRun);
  const heater = phase?.immersionRuns
    ? `; the immersion heater gives ${value('immersionHeat')}`
    : '';
  if (phase === null || !flows) {
    return phase?.immersionRuns
      ? say`At ${when} no primary water flows${heater}.`
      : say`At ${when} no primary water flows and the cylinder loses ${value('standingLoss')}.`;
  }
  const taken = [
    phase.coilRuns && `the coil passes ${value('coilHeat')}`,
    phase.radiatorsRun && `the radiators give ${value('radiatorHeat')}`,
  ]
    .filter((words): words is string => words !== false)
    .join(' and ');
  if (isLit(phase)) {
    return say`At ${when} the boiler gives ${value('boilerHeat')}: ${taken}${heater}.`;
  }
  return say`At ${when} ${offWords[phase.limit] ?? 'the burner is off'}: ${taken}${heater}.`;
}

function summary(phase: ValvePhase | null): Sentence {
  if (phase === null) return say`Nothing was run.`;
  const burner = burnerWords[burnerStates[phase.limit]];
  return say`The burner is ${burner}, the way is ${valveWords[phase.state]}.`;
}

const offWords: Partial<Record<Limit, string>> = {
  resting: 'the burner rests',
  overrun: 'the pump runs on without the burner',
  lockedOut: 'the boiler is locked out',
  valve: 'the burner waits for a valve',
  idle: 'the return is too hot for the boiler',
};
