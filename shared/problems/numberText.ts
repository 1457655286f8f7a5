import type { NumberField } from '../fields/row.ts';
import { plainText } from '../format.ts';
import { toSI, type UnitName, units } from '../units.ts';

/** A quantity that is asked for; a setting is one. The default, in its unit, is the example. */
export type AskedNumber = Pick<NumberField, 'label' | 'unit' | 'default'>;

/** What was typed, in SI, or what is wrong with it. */
export type NumberText =
  | { readonly value: number }
  | { readonly code: 'number' | 'comma' | 'unit'; readonly message: string };

/**
 * Reads a number as people type it, with its unit behind it or without: `1,5`, ` 1.5 kW`, `2,5 kΩ`. Limits are not looked at.
 * @param text  what was typed
 */
export function readNumberText(text: string, asked: AskedNumber): NumberText {
  const tidy = text.replace(/[\u2212\u2013]/g, '-').trim();
  const match = /^([+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?)\s*(.*)$/is.exec(tidy);
  const no = (code: 'number' | 'comma' | 'unit', words: string): NumberText => ({
    code,
    message: `${asked.label} ${words}`,
  });
  if (!match) {
    const got = tidy === '' ? '' : `; “${clipped(tidy)}” is not one`;
    return no('number', `needs a number, such as ${plainText(asked.default, asked.unit)}${got}.`);
  }
  const [, digits, unit] = match;
  if (/^[+-]?[1-9]\d{0,2},\d{3}$/.test(digits)) {
    const whole = digits.replace(',', '');
    const part = String(Number(digits.replace(',', '.')));
    return no('comma', `can be read two ways in “${clipped(tidy)}”: write ${whole} or ${part}.`);
  }
  const multiple = multipleOf(unit, asked.unit);
  if (multiple === undefined) {
    const { words, symbol } = units[asked.unit];
    const given = words === '' ? 'has no unit' : `is given in ${words} (${symbol})`;
    return no('unit', `${given}; “${clipped(unit)}” is not read.`);
  }
  return { value: toSI(Number(digits.replace(',', '.')) * multiple, asked.unit) };
}

/** How many of the asked unit a spelled unit is; undefined when it is another quantity's. */
function multipleOf(spelled: string, name: UnitName): number | undefined {
  if (spelled === '') return 1;
  const { symbol, words } = units[name];
  const wanted = bare(spelled);
  if ([symbol, words].some((known) => known !== '' && bare(known) === wanted)) return 1;
  const also = Object.entries(alsoSpelled[name] ?? {});
  return also.find(([known]) => bare(known) === wanted)?.[1];
}

/** Letters and signs only, small, with figures for raised figures. */
function bare(text: string): string {
  return text
    .toLowerCase()
    .replace(/[\s\u00a0·()]/g, '')
    .replace('²', '2');
}

/** A text that was typed, short enough for a sentence. */
export function clipped(text: string): string {
  return text.length > 30 ? `${text.slice(0, 30)}…` : text;
}

/** Other spellings of a unit, and how many of it each is. */
const alsoSpelled: Partial<Record<UnitName, Readonly<Record<string, number>>>> = {
  celsius: { C: 1, 'deg C': 1, degrees: 1 },
  times: { x: 1 },
  litre: { litre: 1 },
  minute: { minute: 1 },
  hour: { hour: 1 },
  metre: { metre: 1 },
  kilowattHourPerDay: { 'kWh/day': 1, 'kWh per day': 1 },
  ohm: { ohm: 1, R: 1, k: 1000, kΩ: 1000, kohm: 1000, kohms: 1000, kilohms: 1000 },
  percent: { 'per cent': 1 },
};
