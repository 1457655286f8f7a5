import { duration, settingText } from '../format.ts';
import { type Constraint, constraints, paceTotals } from '../pace.ts';
import { timeOf } from '../phaseTime.ts';
import type { Limit, Result } from '../result.ts';
import type { Seconds } from '../units.ts';
import { heatingPhases, servesCoil, shownTime } from './phases.ts';
import { capital, measured, type Part, type Sentence, say } from './sentence.ts';

/** Who set the pace of a reheat and what held its boiler, three sentences at most; none when it did nothing for it. */
export function paceOf(result: Result): readonly Sentence[] {
  return [setters(result), limits(result), cycling(result)].filter(
    (each): each is Sentence => each !== null,
  );
}

/** The longest first; a moment is not worth telling. */
function setters(result: Result): Sentence | null {
  const [first, ...others] = paceShares(result).filter(({ key }) => constraints[key].gains);
  if (first === undefined) return null;
  const rest = others.map(({ key, time }) => `, ${setterWords[key]} for ${duration(time)}`);
  return say`${capital(paceSaid([first.key]))} for ${minutesOf(result, first)}${rest.join('')}.`;
}

/** How long each constraint set the pace before the stat was satisfied; a moment is left out. The longest first. */
export function paceShares({
  pace,
  measures,
  outcome,
}: Result): readonly { readonly key: Constraint; readonly time: Seconds }[] {
  const until = measures.recovery ?? outcome.at;
  const least = Math.max(shownTime, MOMENT * until);
  return paceTotals(pace, until).filter(({ time }) => time >= least);
}

/** The minutes of a constraint; those at full output can open their working. */
export function minutesOf(
  { measures }: Result,
  { key, time }: { readonly key: Constraint; readonly time: Seconds },
): Part {
  const isMeasure = key === 'output' && Math.abs(time - measures.outputLimitTime) < shownTime / 2;
  return isMeasure ? measured(measures, 'outputLimitTime') : duration(time);
}

/** Who or what it is, within a sentence. */
const setterWords: Readonly<Record<Constraint, string>> = {
  sensor: 'the sensor',
  programme: 'the programme',
  valve: 'a valve',
  heating: 'heating’s share',
  output: 'boiler output',
  resting: 'the boiler’s rest',
  flowLimit: 'the flow limit',
  primaryFlow: 'the primary flow',
  coil: 'the coil',
  heater: 'the immersion heater',
  satisfied: 'nothing',
};

/** What sets the pace, as a clause: `the coil sets the pace`. */
export function paceSaid(by: readonly Constraint[]): string {
  switch (by[0]) {
    case undefined:
      return '';
    case 'sensor':
      return 'the cylinder waits for its sensor';
    case 'programme':
      return 'the programme is shut';
    case 'valve':
      return 'a valve is moving';
    case 'satisfied':
      return 'the stat is satisfied';
    default:
      return `${by.map((key) => setterWords[key]).join(' and ')} ${by.length > 1 ? 'set' : 'sets'} the pace`;
  }
}

/** Full output first and the flow at its limit then; where one of them held all the time the pace says enough. */
function limits(result: Result): Sentence | null {
  const { hasOutput, hasFlow } = told(result);
  if (!hasOutput || !hasFlow) return null;
  const { measures } = result;
  const atOutput = measured(measures, 'outputLimitTime');
  const atFlow = measured(measures, 'flowLimitTime');
  const limit = flowLimitWords(result);
  const heating = heatingPhases(result);
  const starts = (held: Limit) => heating.filter((p) => p.limit === held).map((p) => p.from);
  return Math.max(...starts('output')) < Math.min(...starts('flowLimit'))
    ? say`The boiler is at full output for ${atOutput}; after that its flow is at the ${limit} for ${atFlow} and the coil passes what it can.`
    : say`The boiler is at full output for ${atOutput}; for ${atFlow} its flow is at the ${limit} and the coil passes what it can.`;
}

/** Which of the two limits is worth telling: not one that held for a moment while the boiler lit. */
function told(result: Result): { readonly hasOutput: boolean; readonly hasFlow: boolean } {
  const { outputLimitTime, flowLimitTime } = result.measures;
  const least = Math.max(shownTime, MOMENT * timeOf(heatingPhases(result), servesCoil));
  return { hasOutput: outputLimitTime >= least, hasFlow: flowLimitTime >= least };
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
