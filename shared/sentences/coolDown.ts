import { citation } from '../citation.ts';
import type { CoolDown } from '../coolDown.ts';
import { celsius, duration, figure, percent, shown } from '../format.ts';
import type { Result } from '../result.ts';
import { type FigureWords, say } from './sentence.ts';

/** What a store does that is left alone. */
export function coolDownFinding(study: CoolDown): FigureWords {
  const last = study.time.length - 1;
  const after = `${figure(study.time[last] / 3600, 0)} h`;
  const { lostInDay, loss } = study;
  const [verb, flow] = lostInDay >= 0 ? ['loses', loss[0]] : ['gains', -loss[0]];
  return {
    heading: say`Left alone the store ${verb} ${lostText(study)} in the first 24 h, and its top is at ${celsius(study.top[last])} after ${after}.`,
    summary: [
      say`All of it starts at ${celsius(study.top[0])} in air at ${celsius(study.surroundings)} and ${verb} ${shown(flow, 'watt', 1)} at first; after ${after} its mean is ${celsius(study.mean[last])} and its bottom ${celsius(study.bottom[last])}.`,
      study.coolAfter === null
        ? say`The top stays at 40 °C or more for those ${after}.`
        : study.coolAfter === 0
          ? say`The top is below 40 °C from the start.`
          : say`The top falls below 40 °C after ${duration(study.coolAfter)}.`,
    ],
  };
}

/** What is lost, or gained, in the first 24 h: `1.47 kWh`. */
export function lostText({ lostInDay }: CoolDown): string {
  return shown(Math.abs(lostInDay), 'kilowattHour', 2);
}

/**
 * What the fuel for a day's loss costs; empty where a run says nothing of its efficiency or nothing
 * is lost.
 */
export function lossCost({ lostInDay }: CoolDown, { variant, measures }: Result): string {
  const { efficiency } = measures;
  if (efficiency === null || efficiency <= 0 || lostInDay <= 0) return '';
  const cost = (lostInDay / efficiency) * variant.prices.fuel;
  return `At your price of fuel and this run’s efficiency of ${percent(efficiency)} that day costs ${shown(cost, 'money', 2)}.`;
}

/** How far what the cool-down gives is from the loss that went in. @param put  W/K */
export function recoveredWords({ conductance }: CoolDown, put: number): string {
  if (conductance === null || put <= 0) return '';
  const found = `The log ratio of its mean gives back ${shown(conductance, 'wattPerKelvin', 2)}`;
  const low = 1 - conductance / put;
  return low < 0.0005
    ? `${found}.`
    : `${found}, ${figure(100 * low, 1)} % less: the bottom cools first, so the skin is colder than the mean.`;
}

/** A store that cools is warm for long. */
export const coolingCaution = `A store left to cool passes through 20 to 45 °C, where Legionella multiplies: before it is used again heat all of it to 60 °C, and let local codes and the maker’s instructions come first. ${citation('legionellaRange')}.`;
