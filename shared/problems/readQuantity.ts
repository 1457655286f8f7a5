import type { NumberField } from '../fields/row.ts';
import { plainText } from '../format.ts';
import { fromSI, toSI, type UnitName, units } from '../units.ts';

/** A quantity that is asked for; a setting is one. Limits and example are in its unit. */
export type Asked = Pick<NumberField, 'label' | 'unit' | 'least' | 'most' | 'default'>;

/** What was typed, in SI, or one sentence on what is wrong with it. */
export type ReadQuantity = { readonly value: number } | { readonly problem: string };

/**
 * Reads a quantity as people type it: `2,5 kΩ`, ` 2463 `, `60 °C`. Checks its limits too.
 * @param text   what was typed
 * @param asked  whose unit may follow the number, and whose default is the example
 */
export function readQuantity(text: string, asked: Asked): ReadQuantity {
  const { label, least, most } = asked;
  const tidy = text.replace(/[\u2212\u2013]/g, '-').trim();
  const match = /^([+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?)\s*(.*)$/is.exec(tidy);
  if (!match) {
    const got = tidy === '' ? '' : `; “${clipped(tidy)}” is not one`;
    return {
      problem: `${label} needs a number, such as ${plainText(asked.default, asked.unit)}${got}.`,
    };
  }
  const [, digits, unit] = match;
  if (/^[+-]?[1-9]\d{0,2},\d{3}$/.test(digits)) {
    const part = String(Number(digits.replace(',', '.')));
    return {
      problem: `${label} can be read two ways in “${clipped(tidy)}”: write ${digits.replace(',', '')} or ${part}.`,
    };
  }
  const multiple = multipleOf(unit, asked.unit);
  if (multiple === undefined) {
    const { words, symbol } = units[asked.unit];
    return {
      problem: `${label} is given in ${words} (${symbol}); “${clipped(unit)}” is not read.`,
    };
  }
  const value = toSI(Number(digits.replace(',', '.')) * multiple, asked.unit);
  const now = fromSI(value, asked.unit);
  if (now >= least && now <= most) return { value };
  const [from, to] = [least, most].map((limit) => plainText(limit, asked.unit));
  const found = Number.isFinite(now) ? plainText(now, asked.unit) : 'beyond all measure';
  return { problem: `${label} must be between ${from} and ${to}; it is ${found}.` };
}

/** How many of the asked unit a spelled unit is; undefined when it is another quantity's. */
function multipleOf(spelled: string, name: UnitName): number | undefined {
  if (spelled === '') return 1;
  const { symbol, words } = units[name];
  const wanted = bare(spelled);
  if ([symbol, words].some((known) => bare(known) === wanted)) return 1;
  const also = Object.entries(alsoSpelled[name] ?? {});
  return also.find(([known]) => bare(known) === wanted)?.[1];
}

/** Small letters and signs only. */
function bare(text: string): string {
  return text.toLowerCase().replace(/[\s\u00a0]/g, '');
}

function clipped(text: string): string {
  return text.length > 30 ? `${text.slice(0, 30)}…` : text;
}

/** Other spellings of a unit, and how many of it each is. */
const alsoSpelled: Partial<Record<UnitName, Readonly<Record<string, number>>>> = {
  celsius: { C: 1, 'deg C': 1, degrees: 1 },
  ohm: { ohm: 1, R: 1, k: 1000, kΩ: 1000, kohm: 1000, kohms: 1000, kilohms: 1000 },
  percent: { 'per cent': 1 },
};
