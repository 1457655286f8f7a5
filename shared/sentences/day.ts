import { arrangementOf } from '../arrangements.ts';
import type { DayRun, DrawReport } from '../day.ts';
import { fails, missingHeat } from '../drawFails.ts';
import { figure, litres, minutes, shown } from '../format.ts';
import type { Seconds } from '../units.ts';
import { endings } from './bench.ts';
import { atClock, coldLitres, drawAt, warmTime } from './dayDraws.ts';
import { type FigureWords, type Sentence, say } from './sentence.ts';

/** What a day in use came to: who ran cold, or how near it was; then whether it repeats, and what was drawn and lost. */
export function dayFinding(day: DayRun): FigureWords {
  return { heading: heading(day), summary: [standing(day), totals(day)] };
}

/** The moment the heading tells of: where the worst draw ran cold, else the least usable water. */
export function toldMoment(day: DayRun): Seconds {
  const worst = worstOf(day.draws.filter(fails));
  if (worst === null) return day.measures.leastUsableAt;
  return worst.from + (warmTime(day, worst) ?? 0);
}

function heading(day: DayRun): Sentence {
  const { draws, measures, shownDays, variant } = day;
  const failing = draws.filter(fails);
  const worst = worstOf(failing);
  if (worst !== null) {
    return failing.length === 1 ? oneFails(day, worst) : severalFail(day, failing, worst);
  }
  if (draws.length === 0) {
    const { hotWaterCalls } = measures;
    const lost = shown(measures.standingLoss, 'kilowattHour', 2);
    return say`Nothing is drawn in ${span(day)}: the cylinder loses ${lost} and the stat calls ${times(hotWaterCalls)}.`;
  }
  const when = atClock(measures.leastUsableAt, shownDays);
  const left =
    measures.leastUsable < 0.0005
      ? `, but nothing usable at 40\u00a0°C is left ${when}`
      : `: at least ${litres(measures.leastUsable)} usable at 40\u00a0°C are left, ${when}`;
  if (variant.day.pattern === 'household' || variant.day.pattern === 'own') {
    return say`Nobody runs cold in ${span(day)}${left}.`;
  }
  const judged = draws.filter(({ isCut }) => !isCut).length;
  return say`All ${figure(judged, 0)} draws get their useful heat${left}.`;
}

function oneFails(day: DayRun, draw: DrawReport): Sentence {
  const who = capital(drawAt(draw, day));
  if (draw.coldTime > 0) {
    const cold = `${coldLitres(draw.coldVolume)} come out too cold`;
    const warm = warmTime(day, draw);
    return warm === null
      ? say`${who} never comes warm: ${cold}.`
      : say`${who} runs cold after ${minutes(warm)}: ${cold}.`;
  }
  const missing = missingHeat(draw);
  return missing > 0
    ? say`${who} falls ${shown(missing, 'kilowattHour', 3)} of useful heat short.`
    : say`${who} does not reach the ${shown(draw.peak, 'celsius', 0)} it has to.`;
}

function severalFail(day: DayRun, failing: readonly DrawReport[], worst: DrawReport): Sentence {
  const count = `${figure(failing.length, 0)} of ${figure(day.draws.length, 0)} draws`;
  const areCold = failing.every(({ coldTime }) => coldTime > 0);
  const sum = (of: (draw: DrawReport) => number) => failing.reduce((all, one) => all + of(one), 0);
  const missing = sum(missingHeat);
  const much = areCold
    ? `${litres(sum(({ coldVolume }) => coldVolume))} come out too cold`
    : missing > 0
      ? `${shown(missing, 'kilowattHour', 2)} of useful heat are missing`
      : 'they do not get as hot as they have to';
  return say`${count} ${areCold ? 'run cold' : 'fall short'}: ${much}; the worst is ${drawAt(worst, day)}.`;
}

/** Whether what is shown repeats itself, or why it ended early. */
function standing(day: DayRun): Sentence {
  const { outcome, shownDays, simulatedDays, difference, isSteady, variant } = day;
  if (outcome.kind !== 'finished') {
    return say`${endings[outcome.kind]} ${atClock(outcome.at, shownDays)}, short of ${span(day)}: the numbers go up to there.`;
  }
  if (variant.day.repeat === 'stated') {
    return shownDays === 1
      ? say`One day, from a store that was reheated before it; it ends up to ${kelvins(difference)} from how it began.`
      : say`${figure(shownDays, 0)} days one after the other, from a store that was reheated before the first.`;
  }
  const shownDay = `day ${figure(simulatedDays, 0)}`;
  if (isSteady) return say`This is ${shownDay}, which ends as it began.`;
  if (variant.day.pasteurise === 'once') {
    return say`The day of heating through stands alone: it ends up to ${kelvins(difference)} from how it began.`;
  }
  const why = arrangementOf(variant.heating.arrangement).heated
    ? 'heating that comes and goes'
    : 'calls that come at other times of the day';
  return say`The days do not repeat themselves: even ${shownDay}, shown here, ends up to ${kelvins(difference)} from how it began, for ${why} may keep two days from being equal.`;
}

function totals(day: DayRun): Sentence {
  const { draws, measures, shownDays } = day;
  if (draws.length === 0) {
    return say`At least ${litres(measures.leastUsable)} are usable, ${atClock(measures.leastUsableAt, shownDays)}.`;
  }
  const { standingLoss } = measures;
  const lost = `${standingLoss < 0 ? 'gains' : 'loses'} ${shown(Math.abs(standingLoss), 'kilowattHour', 2)}`;
  return say`In ${span(day)} ${litres(measures.drawn)} are drawn at the tap, ${litres(measures.fromStore)} of them out of the store, and the cylinder ${lost}.`;
}

/** The draw that got least of what it wanted; of equals the first. */
function worstOf(failing: readonly DrawReport[]): DrawReport | null {
  const weight = (draw: DrawReport) => draw.coldVolume + missingHeat(draw) / HEAT_OF_A_CUBIC_METRE;
  return failing.reduce<DrawReport | null>(
    (worst, draw) => (worst === null || weight(draw) > weight(worst) ? draw : worst),
    null,
  );
}

/** The time shown: `24 h`, `7 days`. */
function span({ shownDays }: DayRun): string {
  return shownDays === 1 ? '24\u00a0h' : `${figure(shownDays, 0)}\u00a0days`;
}

function kelvins(difference: number): string {
  return shown(difference, 'kelvin', difference < 0.095 ? 2 : 1);
}

function times(count: number): string {
  return `${figure(count, 0)} ${count === 1 ? 'time' : 'times'}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

// to set heat beside litres: water 30 K above the cold, 4.2 MJ/(m³ K)
const HEAT_OF_A_CUBIC_METRE = 1.26e8;
