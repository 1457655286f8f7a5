import { celsius, duration, settingText, shown } from '../format.ts';
import { lowestCoil } from '../lowestCoil.ts';
import type { Limit, Phase, Result } from '../result.ts';
import type { Variant } from '../variant.ts';
import { measured, plain, type Sentence, say } from './sentence.ts';

/** What holds the boiler, in words. */
export const limitWords: Readonly<Record<Limit, string>> = {
  off: 'nothing calls',
  output: 'boiler at full output',
  flowLimit: 'flow at its limit',
  idle: 'return hotter than the limit',
};

/**
 * The answer of a run: the headline and what held it; then, where they apply, the wait for the call
 * and the radiators' share; last what the trade's formula would say.
 */
export function findingOf(result: Result): readonly Sentence[] {
  const { measures } = result;
  const found = [headline(result), whatHeldIt(result)];
  if (measures.recovery !== null && measures.hotWaterCalls > 0) {
    found.push(waiting(result), sharing(result), againstTheRule(result));
  }
  return found.filter((sentence): sentence is Sentence => sentence !== null);
}

/** The answer in 20 words at most. */
export function headline(result: Result): Sentence {
  const { measures, outcome, variant } = result;
  const setPoint = settingText('stat.setPoint', variant.stat.setPoint);
  if (measures.recovery !== null && measures.hotWaterCalls > 0) {
    const time = measured(measures, 'recovery');
    return variant.start.hotShare === 0 && measures.waitingTime < shownTime
      ? say`From cold to ${setPoint} at the sensor in ${time}.`
      : say`Back to ${setPoint} at the sensor in ${time}.`;
  }
  if (outcome.kind !== 'finished') {
    return say`${endings[outcome.kind]} after ${duration(outcome.at)}, before the stat was satisfied.`;
  }
  if (measures.hotWaterCalls === 0) {
    return say`The stat never calls: its sensor stays above ${celsius(cutIn(variant))}.`;
  }
  if (hottestFlow(variant) <= variant.stat.setPoint) {
    return say`The sensor never reaches ${setPoint}: the boiler holds its flow at ${flowLimit(variant)}.`;
  }
  return say`Not back to ${setPoint} within ${duration(outcome.at)}: the sensor reads ${lastReading(result)}.`;
}

function whatHeldIt(result: Result): Sentence | null {
  const { measures, variant } = result;
  if (measures.hotWaterCalls === 0) return null;
  if (measures.recovery === null) return whyNot(result);
  const atOutput = measured(measures, 'outputLimitTime');
  const atFlow = measured(measures, 'flowLimitTime');
  const limit = flowLimit(variant);
  const hasOutput = measures.outputLimitTime >= shownTime;
  const hasFlow = measures.flowLimitTime >= shownTime;
  if (hasOutput && !hasFlow) {
    return say`The boiler is at full output for all ${atOutput} of heating: the boiler, not the coil, sets the pace.`;
  }
  if (hasFlow && !hasOutput) {
    return say`The flow is at its ${limit} limit for all ${atFlow} of heating: the coil and its flow, not the boiler’s output, set the pace.`;
  }
  if (!hasOutput && !hasFlow) return null;
  const heating = heatingPhases(result);
  const starts = (held: Limit) => heating.filter((p) => p.limit === held).map((p) => p.from);
  const lastOutput = Math.max(...starts('output'));
  const firstFlow = Math.min(...starts('flowLimit'));
  return lastOutput < firstFlow
    ? say`The boiler is at full output for ${atOutput} of them; after that its flow is at the ${limit} limit for ${atFlow} and the coil passes what it can.`
    : say`The boiler is at full output for ${atOutput} of them; for ${atFlow} its flow is at the ${limit} limit and the coil passes what it can.`;
}

/** Why the stat was not satisfied, and what would tell more. */
function whyNot({ variant, measures, outcome }: Result): Sentence | null {
  if (outcome.kind !== 'finished') return null;
  if (hottestFlow(variant) <= variant.stat.setPoint) {
    return say`Set the flow limit for hot water above the set-point, by 10 K or more if the coil is to pass heat at the end.`;
  }
  if (variant.stat.sensorHeight < lowestCoil(variant)) {
    return say`The sensor sits below the coil, where water is hardly heated, while the hottest water is at ${measured(measures, 'hottest')}: raise the sensor to the coil or above it.`;
  }
  return say`The coil passed ${measured(measures, 'meanCoilHeat')} on average; a longer run would show whether it gets there.`;
}

function againstTheRule(result: Result): Sentence {
  const { measures } = result;
  const heating = (measures.recovery ?? 0) - measures.waitingTime;
  const missing = heating - (measures.ruleTime ?? heating);
  const rule = measured(measures, 'ruleTime');
  if (missing < shownTime) {
    return say`The trade’s formula, all this heat at full boiler output, says the same: ${rule}.`;
  }
  return say`The trade’s formula, all this heat at full boiler output, would say ${rule}: ${duration(missing)} too few.`;
}

function waiting({ measures }: Result): Sentence | null {
  if (measures.waitingTime < shownTime) return null;
  return say`Of the whole, ${measured(measures, 'waitingTime')} pass before the stat calls.`;
}

/** How long the radiators had part of the boiler while the cylinder was heated. */
function sharing(result: Result): Sentence | null {
  const shared = heatingPhases(result)
    .filter(({ radiatorsRun }) => radiatorsRun)
    .reduce((sum, { from, to }) => sum + to - from, 0);
  if (shared < shownTime) return null;
  return say`The radiators take part of the boiler’s heat for ${duration(shared)}.`;
}

/** The stretches in which the coil ran before the stat was first satisfied. */
function heatingPhases({ phases, measures }: Result): readonly Phase[] {
  const until = measures.recovery ?? Number.POSITIVE_INFINITY;
  return phases.filter(({ coilRuns, from }) => coilRuns && from < until);
}

/** The reading at which the stat calls, °C. */
export function cutIn({ stat }: Variant): number {
  return stat.setPoint - stat.differential;
}

/** The hottest water the coil can be given, °C. */
function hottestFlow({ boiler }: Variant): number {
  return boiler.hotWaterFlow;
}

function flowLimit({ boiler }: Variant): string {
  return settingText('boiler.hotWaterFlow', boiler.hotWaterFlow);
}

function lastReading({ trace }: Result): string {
  return shown(trace.of.sensor[trace.samples - 1], 'celsius', 1);
}

/** Below this a time prints as 0.0 min, s. */
export const shownTime = 3;

const endings = {
  stopped: 'The run was stopped',
  tooManySteps: 'The run needed more steps than it may take and ends',
  outOfRange: 'The water left the range of its tables and the run ends',
} as const;

/** The finding as plain text, sentence by sentence. */
export function plainFinding(result: Result): string {
  return findingOf(result).map(plain).join(' ');
}
