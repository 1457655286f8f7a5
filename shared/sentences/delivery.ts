import { citation } from '../citation.ts';
import { type Delivered, type DeliveredAt, FIRST_HOUR, type FirstHour } from '../delivery.ts';
import { celsius, duration, figure, litres, shown } from '../format.ts';
import { fromSI } from '../units.ts';

const moments: Readonly<Record<DeliveredAt['when'], string>> = {
  start: 'as the run starts',
  satisfied: 'when the stat is satisfied',
  called: 'when it next calls',
};

/** Usable water moment by moment, in litres: drawn, estimated, and the first less the second. */
export function deliveryRows({
  moments: found,
}: Delivered): readonly (readonly [string, string, string, string])[] {
  const inLitres = (volume: number) => figure(fromSI(volume, 'litre'), 1);
  return found.map(({ when, drawn, estimate }) => [
    moments[when],
    inLitres(drawn),
    inLitres(estimate),
    inLitres(drawn - estimate),
  ]);
}

/** What the store gives, in one sentence. */
export function usableWords({ moments: found }: Delivered): string {
  const satisfied = found.find(({ when }) => when === 'satisfied');
  const called = found.find(({ when }) => when === 'called');
  if (satisfied === undefined) {
    const [start] = found;
    return `The stat is not satisfied in this run; as it starts the store gives ${litres(start.drawn)} at 40\u00a0°C.`;
  }
  const left =
    called === undefined
      ? 'It does not call again in this run.'
      : `When it next calls, after ${duration(called.at)}, ${litres(called.drawn)} are left.`;
  return `When the stat is satisfied, after ${duration(satisfied.at)}, the store gives ${litres(satisfied.drawn)} of mixed water at 40\u00a0°C. ${left}`;
}

/** How usable water is found, both ways. */
export const usableRule = `Drawn: at 10\u00a0l/min with nothing heating, until the outlet falls to 40\u00a0°C, counted as mixed water at 40\u00a0°C (${citation('ecodesignTanks')}, definition of V40; the draw of EN 16147, from memory). Estimate: every layer at 40\u00a0°C or more at that moment, mixed down; it knows nothing of what a draw stirs.`;

/** What the first hour gives. */
export function firstHourWords(found: FirstHour | null): string {
  if (found === null) {
    return 'The stat is not satisfied within the run, so there is no first hour to measure.';
  }
  const { volume, draws, mean, isSustained } = found;
  if (isSustained) {
    return `The boiler keeps up: a draw of ${flow} goes on for two hours without falling by ${fall}.`;
  }
  const count = `${figure(draws, 0)} ${draws === 1 ? 'draw' : 'draws'}`;
  return volume > 0
    ? `In its first hour the store gives ${litres(volume)} in ${count}, at ${celsius(mean)} in the mean.`
    : `In its first hour the store gives ${litres(0)}.`;
}

const flow = shown(FIRST_HOUR.flow, 'litrePerMinute', 1);
const fall = shown(FIRST_HOUR.fall, 'kelvin', 1);

/** How the first hour is measured. */
export const firstHourRule = `Another measure, not to be set beside the one above: by the procedure of 10 CFR 430 Subpart B Appendix E, its numbers from memory. Incoming water at ${celsius(FIRST_HOUR.cold)}; from a store that is satisfied, draws at ${flow}, the boiler at work; a draw ends ${fall} below where it began, the next begins when the stat is satisfied again, and one that is open at the full hour is let end.`;
