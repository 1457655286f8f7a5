import { settingText } from '../format.ts';
import { timeOf } from '../phaseTime.ts';
import type { Limit, Result } from '../result.ts';
import { heatingPhases, servesCoil, shownTime } from './phases.ts';
import { measured, type Sentence, say } from './sentence.ts';

/** What held a boiler that satisfied the stat, one or two sentences; none when it did nothing for it. */
export function paceOf(result: Result): readonly Sentence[] {
  return [limits(result), cycling(result)].filter((each): each is Sentence => each !== null);
}

/** Full output, and the flow at its limit. */
function limits(result: Result): Sentence | null {
  const { measures } = result;
  const atOutput = measured(measures, 'outputLimitTime');
  const atFlow = measured(measures, 'flowLimitTime');
  const limit = flowLimitWords(result);
  const all = paceSetter(result);
  const { hasOutput, hasFlow } = told(result);
  if (hasOutput && !hasFlow) {
    return all === 'boiler'
      ? say`The boiler is at full output for all ${atOutput} of heating: the boiler, not the coil, sets the pace.`
      : say`The boiler is at full output for ${atOutput} of them${all === 'mostlyBoiler' ? ': it, not the coil, sets the pace' : ''}.`;
  }
  if (hasFlow && !hasOutput) {
    return all === 'coil'
      ? say`The flow is at its ${limit} for all ${atFlow} of heating: the coil and its flow, not the boiler’s output, set the pace.`
      : say`The flow is at its ${limit} for ${atFlow} of them${all === 'mostlyCoil' ? ': the coil and its flow set the pace' : ''}.`;
  }
  if (!hasOutput && !hasFlow) return null;
  const heating = heatingPhases(result);
  const starts = (held: Limit) => heating.filter((p) => p.limit === held).map((p) => p.from);
  return Math.max(...starts('output')) < Math.min(...starts('flowLimit'))
    ? say`The boiler is at full output for ${atOutput} of them; after that its flow is at the ${limit} for ${atFlow} and the coil passes what it can.`
    : say`The boiler is at full output for ${atOutput} of them; for ${atFlow} its flow is at the ${limit} and the coil passes what it can.`;
}

/** Which of the two limits is worth telling: not one that held for a moment while the boiler lit. */
function told(result: Result): { readonly hasOutput: boolean; readonly hasFlow: boolean } {
  const { outputLimitTime, flowLimitTime } = result.measures;
  const least = Math.max(shownTime, MOMENT * timeOf(heatingPhases(result), servesCoil));
  return { hasOutput: outputLimitTime >= least, hasFlow: flowLimitTime >= least };
}

/** Who set the pace all the time, or all but a moment of it; null where it changed hands or the burner went off. */
export function paceSetter(
  result: Result,
): 'boiler' | 'coil' | 'mostlyBoiler' | 'mostlyCoil' | null {
  const { outputLimitTime, flowLimitTime } = result.measures;
  const served = timeOf(heatingPhases(result), servesCoil);
  const { hasOutput, hasFlow } = told(result);
  if (served - outputLimitTime - flowLimitTime >= shownTime) return null;
  if (hasOutput && !hasFlow) return flowLimitTime < shownTime ? 'boiler' : 'mostlyBoiler';
  if (hasFlow && !hasOutput) return outputLimitTime < shownTime ? 'coil' : 'mostlyCoil';
  return null;
}

/** A burner that cannot burn as little as is taken goes on and off. */
function cycling(result: Result): Sentence | null {
  const { measures } = result;
  const heating = heatingPhases(result);
  const rests = heating.filter(({ limit }) => limit === 'resting').length;
  const isAtLeast = measures.minimumTime >= shownTime;
  const atLeast = measured(measures, 'minimumTime');
  if (timeOf(heating, ({ limit }) => limit === 'resting') < shownTime) {
    return isAtLeast ? say`For ${atLeast} the burner is at its least output.` : null;
  }
  const rest = measured(measures, 'restingTime');
  const times = rests === 1 ? 'once' : `${rests} times`;
  if (cycles(result)) {
    return say`The coil takes less than the boiler’s least output: the burner is at its least for ${atLeast}, goes off ${times} and rests or waits for ${rest}.`;
  }
  return say`The flow overshoots its target: the burner goes off ${times} and rests or waits for ${rest}.`;
}

/** Whether the burner goes off because it cannot burn as little as the coil takes: the flow rises past its target at least output. */
export function cycles(result: Result): boolean {
  const heating = heatingPhases(result);
  const passed = heating.some(
    ({ limit }, index) => limit === 'resting' && heating[index - 1]?.limit === 'minimum',
  );
  return passed && result.measures.minimumTime >= CLEARLY;
}

/** The limit of the flow as it was set, `80 °C limit`; without a number where it moves. */
function flowLimitWords({ variant }: Result): string {
  const { boiler, heating } = variant;
  if (boiler.targets === 'separate') {
    return `${settingText('boiler.hotWaterFlow', boiler.hotWaterFlow)} limit`;
  }
  return heating.control === 'stat'
    ? `${settingText('boiler.heatingFlow', boiler.heatingFlow)} limit`
    : 'limit';
}

const MOMENT = 0.01; // of the time the coil was served
const CLEARLY = 60; // s, longer than the controller needs to settle after it has lit
