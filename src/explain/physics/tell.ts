import type { DayMeasures } from '../../../shared/day.ts';
import { measureWords, quantityText, shown } from '../../../shared/format.ts';
import type { Measures, Quantity } from '../../../shared/result.ts';
import { partsOf } from '../../../shared/sentences/sentence.ts';
import { dayMeasureText } from '../../../shared/sentences/dayMeasures.ts';
import { MIXED } from '../../../sim/closures/mixedLitres.ts';
import type { PartKey, Step, WorkingKey } from '../working.ts';
import { workingOf } from '../workings.ts';
import type { Here, Live, Told } from './section.ts';

/** A paragraph with live numbers between its words. */
export function tell(words: TemplateStringsArray, ...numbers: readonly (string | Live)[]): Told {
  return partsOf(words, numbers);
}

/** A sampled quantity at the moment. */
export const now = ({ reading }: Here, quantity: Quantity): Live => ({
  text: quantityText(quantity, reading.of(quantity)),
  of: `moment.${quantity}`,
});

/** A measure of the reheat. */
export const measured = ({ result }: Here, key: keyof Measures): Live => ({
  text: measureWords(key, result.measures[key]),
  of: `measure.${key}`,
});

/** A measure of the day; a dash where none has been run. */
export const ofDay = ({ day }: Here, key: keyof DayMeasures): Live => ({
  text: dayMeasureText(key, day?.measures[key] ?? null, day?.shownDays ?? 1),
  of: `day.${key}`,
});

/** A number of one part of the installation, already in words. */
export const part = (text: string, of: PartKey): Live => ({ text, of });

/** Relations of a working as it shows them, in the order asked; those it does not have at the moment are left out. */
export function shownIn(here: Here, key: WorkingKey, ...records: readonly string[]): Step[] {
  const { steps } = workingOf(key, here.result, here.at, { day: here.day });
  if (records.length === 0) return steps.slice(0, 2);
  return records.flatMap((record) => steps.filter((step) => step.record.key === record));
}

/** Whether a measure of the reheat was reached. */
export const has = ({ result }: Here, key: keyof Measures): boolean =>
  result.measures[key] !== null;

/** What usable water is counted at. */
export const usableAt = shown(MIXED, 'celsius', 0);

/** Said in place of numbers that only stand while water runs through the coil. */
export const atRest = tell`At this moment the coil is at rest, or its water is only setting out, and symbols below stay open: put the moment into the reheat to fill them.`;
