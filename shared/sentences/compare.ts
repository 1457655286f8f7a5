import { type Asked, askedRow } from '../asked.ts';
import { minutes, shown } from '../format.ts';
import type { Difference } from '../differences.ts';
import type { Measures } from '../result.ts';
import { fromSI, type UnitName, units } from '../units.ts';
import { capital } from './sentence.ts';

/** What one variant came to; null where its settings cannot be run, or not yet. */
export interface Compared {
  readonly letter: string;
  readonly measures: Pick<Measures, 'recovery'> | null;
}

/** Which of the variants is there soonest, against the first of them: with a verb and a number. */
export function compareFinding(all: readonly Compared[]): string {
  const [base, ...others] = all;
  if (base === undefined || base.measures === null) return 'Variant A has no result yet';
  const timed = others.flatMap(({ letter, measures }) =>
    measures?.recovery == null ? [] : [{ letter, recovery: measures.recovery }],
  );
  const from = base.measures.recovery;
  const [best] = timed.toSorted((one, other) => one.recovery - other.recovery);
  if (best === undefined) {
    return from === null
      ? 'No variant is satisfied within its run'
      : `${base.letter} recovers in ${minutes(from)}${others.length > 0 ? '; no other variant does within its run' : ''}`;
  }
  if (from === null) {
    return `${best.letter} recovers in ${minutes(best.recovery)}; ${base.letter} does not within its run`;
  }
  const gain = printedDifference('minute', 1, from, best.recovery);
  if (Math.abs(gain) < LEAST) {
    return `${best.letter} recovers in ${minutes(best.recovery)}, as ${base.letter} does`;
  }
  return gain > 0
    ? `${best.letter} recovers in ${minutes(best.recovery)}, ${minutes(gain)} sooner than ${base.letter}`
    : `${base.letter} recovers in ${minutes(from)}, ${minutes(-gain)} sooner than ${best.letter}`;
}

/** A measure of one variant against that of the first: `11.0 min less`; empty where either has none. */
export function differenceText(key: Asked, value: number | null, base: number | null): string {
  const { unit, digits } = askedRow(key);
  return differenceOf(unit, digits, value, base);
}

/** The same for any value with a unit. */
export function differenceOf(
  unit: UnitName,
  digits: number,
  value: number | null,
  base: number | null,
): string {
  if (value === null || base === null) return '';
  const text = (size: number) =>
    unit === 'percent'
      ? `${shown(size, 'percent', digits).replace(/\s?%$/, '')} points`
      : shown(size, unit === 'celsius' ? 'kelvin' : unit, digits);
  const difference = printedDifference(unit, digits, value, base);
  const [size, none] = [text(Math.abs(difference)), text(0)];
  if (size === none) return 'the same';
  return `${size} ${difference < 0 ? 'less' : 'more'}`;
}

/** Between two values as they are printed, so that who takes one from the other finds the same; SI. */
function printedDifference(unit: UnitName, digits: number, value: number, base: number): number {
  const printed = (each: number) => Number(fromSI(each, unit).toFixed(digits));
  return (printed(value) - printed(base)) * units[unit].factor;
}

/** What a variant has that the first has not: `Coil surface 1.20 m², flow 75 °C`; or that nothing differs. */
export function differsWords(differences: readonly Difference[], place: number): string {
  const own = differences.filter(({ texts }) => texts[place] !== texts[0]);
  if (own.length === 0) return 'The same settings';
  const named = own
    .slice(0, NAMED)
    .map(({ label, texts }) => `${label[0].toLowerCase()}${label.slice(1)} ${texts[place]}`);
  const left = own.length - named.length;
  return capital([...named, ...(left > 0 ? [`${left} more`] : [])].join(', '));
}

const LEAST = 3; // s, 0.05 min: what does not show in minutes with one digit
const NAMED = 3; // settings: as many as a line holds
