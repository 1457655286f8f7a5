import { celsius, duration, settingText, shown } from '../format.ts';
import { lowestCoil } from '../fittedCoils.ts';
import { timeOf } from '../phaseTime.ts';
import type { Limit, Result } from '../result.ts';
import type { Variant } from '../variant.ts';
import { apartAt, hindrancesOf, timeShut } from './hindrances.ts';
import { paceOf } from './pace.ts';
import { firstMark, heatingPhases, highestTarget, isServed, shownTime } from './phases.ts';
import { measured, plain, type Sentence, say } from './sentence.ts';

/** What holds the boiler, in words. */
export const limitWords: Readonly<Record<Limit, string>> = {
  off: 'nothing calls the boiler',
  output: 'boiler at full output',
  flowLimit: 'flow at its limit',
  minimum: 'boiler at its least output',
  resting: 'burner resting',
  lockedOut: 'boiler locked out by its safety limiter',
  idle: 'return hotter than the limit',
  valve: 'waiting for a valve',
  overrun: 'pump running on, burner off',
};

/**
 * The answer of a run: the headline and what held it; then, where they apply, what else kept the
 * boiler away, the wait for the call and the radiators’ share; last what the trade's formula would say.
 */
export function findingOf(result: Result): readonly Sentence[] {
  const { measures } = result;
  const isSatisfied = measures.recovery !== null && measures.hotWaterCalls > 0;
  const found = isSatisfied
    ? [...heatedBy(result), ...hindrancesOf(result), waiting(result), sharing(result), rule(result)]
    : [...whyNot(result)];
  return [headline(result), ...found].filter((sentence): sentence is Sentence => sentence !== null);
}

/** The answer in 20 words at most. */
export function headline(result: Result): Sentence {
  const { measures, outcome, variant } = result;
  const setPoint = settingText('stat.setPoint', variant.stat.setPoint);
  if (measures.recovery !== null && measures.hotWaterCalls > 0) {
    const time = measured(measures, 'recovery');
    const what =
      apartAt(result) === null ? `${setPoint} at the sensor` : `a reading of ${setPoint}`;
    return variant.start.hotShare === 0 && measures.waitingTime < shownTime
      ? say`From cold to ${what} in ${time}.`
      : say`Back to ${what} in ${time}.`;
  }
  if (outcome.kind !== 'finished') {
    return say`${endings[outcome.kind]} after ${duration(outcome.at)}, before the stat was satisfied.`;
  }
  const fault = firstMark(result, 'faultShown');
  if (fault !== null) {
    return fault < shownTime
      ? say`The controller shows a sensor fault from the start and refuses hot water.`
      : say`After ${duration(fault)} the controller shows a sensor fault and refuses hot water.`;
  }
  if (measures.hotWaterCalls === 0) {
    const who = apartAt(result) === null ? 'its sensor stays' : 'the controller reads';
    return say`The stat never calls: ${who} above ${celsius(cutIn(variant))}.`;
  }
  if (isTooCool(result)) {
    return say`The sensor never reaches ${setPoint}: the boiler holds its flow at ${targetText(result)}.`;
  }
  return say`Not back to ${setPoint} within ${duration(outcome.at)}: the sensor reads ${lastReading(result)}.`;
}

/** What gave the heat, and what set its pace. */
function heatedBy(result: Result): readonly Sentence[] {
  if (result.variant.immersion.used !== 'insteadOfBoiler') return paceOf(result);
  const power = settingText('immersion.output', result.variant.immersion.output);
  return [say`The immersion heater does it alone at ${power}; the boiler heats no hot water.`];
}

/** Why the stat was not satisfied, and what would tell more. */
function whyNot(result: Result): readonly Sentence[] {
  const { variant, measures, outcome } = result;
  if (outcome.kind !== 'finished') return [];
  const apart = apartAt(result);
  if (firstMark(result, 'faultShown') !== null) {
    return [
      say`Open or shorted wires, or an element the controller does not expect, read beyond any temperature: find which before anything else is changed.`,
    ];
  }
  if (measures.hotWaterCalls === 0) {
    return apart === null
      ? []
      : [
          say`It reads ${celsius(apart.reading)} at the end while the sensor is at ${celsius(apart.bead)}: check element, wiring and characteristic.`,
        ];
  }
  if (variant.immersion.used === 'insteadOfBoiler') {
    const power = settingText('immersion.output', variant.immersion.output);
    return [
      say`The boiler heats no hot water: the immersion heater, ${power}, warms only what stands above it.`,
    ];
  }
  const tripped = firstMark(result, 'limiterTripped');
  if (tripped !== null) {
    return [
      say`After ${duration(tripped)} the boiler’s safety limiter trips and locks it out: find out why it got so hot, and do not bypass it.`,
    ];
  }
  const shut = timeShut(result);
  if (shut > 0 && !isServed(result)) {
    return [say`The programme lets the boiler heat no hot water while this run lasts.`];
  }
  if (isTooCool(result)) {
    return [
      variant.boiler.targets === 'shared'
        ? say`There is one flow target: the cylinder gets heating’s. A target of its own, 10 K or more above the set-point, would let the coil pass heat to the end.`
        : say`Set the flow limit for hot water above the set-point, by 10 K or more if the coil is to pass heat at the end.`,
    ];
  }
  if (shut >= shownTime) {
    return [
      say`The hot-water programme is shut for ${duration(shut)} while the stat calls: a longer or earlier time would let it finish.`,
    ];
  }
  if (apart !== null) {
    return [
      say`The controller reads ${celsius(apart.reading)} while the sensor is at ${celsius(apart.bead)}: check element, wiring and characteristic.`,
    ];
  }
  if (variant.stat.sensorHeight < lowestCoil(variant)) {
    return [
      say`The sensor sits below the coil, where water is hardly heated, while the hottest water is at ${measured(measures, 'hottest')}: raise the sensor to the coil or above it.`,
    ];
  }
  if (measures.meanCoilHeat === null) return [say`No water passed the coil during this run.`];
  return [
    say`The coil passed ${measured(measures, 'meanCoilHeat')} on average; a longer run would show whether it gets there.`,
    ...paceOf(result).slice(1),
    ...hindrancesOf(result),
  ];
}

function rule(result: Result): Sentence | null {
  const { measures, variant } = result;
  if (variant.immersion.used === 'insteadOfBoiler') return null;
  const heating = (measures.recovery ?? 0) - measures.waitingTime;
  const missing = heating - (measures.ruleTime ?? heating);
  const trade = measured(measures, 'ruleTime');
  if (missing < shownTime) {
    return say`The trade’s formula, all this heat at full boiler output, says the same: ${trade}.`;
  }
  return say`The trade’s formula, all this heat at full boiler output, would say ${trade}: ${duration(missing)} too few.`;
}

function waiting({ measures }: Result): Sentence | null {
  if (measures.waitingTime < shownTime) return null;
  return say`Of the whole, ${measured(measures, 'waitingTime')} pass before the stat calls.`;
}

/** How long the radiators had part of the boiler while the cylinder was heated. */
function sharing(result: Result): Sentence | null {
  const shared = timeOf(heatingPhases(result), ({ radiatorsRun }) => radiatorsRun);
  if (shared < shownTime) return null;
  return say`The radiators take part of the boiler’s heat for ${duration(shared)}.`;
}

/** The reading at which the stat calls, °C. */
export function cutIn({ stat }: Variant): number {
  return stat.setPoint - stat.differential;
}

/** Whether the boiler aims no higher than the set-point, so that the coil cannot bring the sensor there. */
function isTooCool(result: Result): boolean {
  const target = highestTarget(result);
  return target !== null && target <= result.variant.stat.setPoint;
}

/** The highest target as it was set where that is what held, else as it was reached. */
function targetText(result: Result): string {
  const { boiler } = result.variant;
  const target = highestTarget(result);
  const path = boiler.targets === 'separate' ? 'boiler.hotWaterFlow' : 'boiler.heatingFlow';
  const set = boiler.targets === 'separate' ? boiler.hotWaterFlow : boiler.heatingFlow;
  return target === set ? settingText(path, set) : celsius(target);
}

function lastReading({ trace }: Result): string {
  return shown(trace.of.sensor[trace.samples - 1], 'celsius', 1);
}

/** How a run that was not finished ended, as the start of a sentence. */
export const endings = {
  stopped: 'The run was stopped',
  tooManySteps: 'The run needed more steps than it may take and ends',
  outOfRange: 'The water left the range of its tables and the run ends',
} as const;

/** The finding as plain text, sentence by sentence. */
export function plainFinding(result: Result): string {
  return findingOf(result).map(plain).join(' ');
}
