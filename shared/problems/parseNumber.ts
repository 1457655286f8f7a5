import type { NumberField } from '../fields/row.ts';
import { plainText } from '../format.ts';
import { toSI, type UnitName, units } from '../units.ts';
import type { Variant } from '../variant.ts';
import { type Problem, problemAt } from './problem.ts';
import { settingProblem } from './ranges.ts';

/** What was typed, as a value in SI, or what is wrong with it. */
export type Parsed = { readonly value: number } | { readonly problem: Problem };

/**
 * Reads a number as people type it: `1,5`, ` 1.5 `, `1.5 kW`. Checks the limits of the field too.
 * @param text     what was typed
 * @param field    the setting, whose unit may follow the number
 * @param variant  narrows the limits to the cylinder in hand
 */
export function parseNumber(text: string, field: NumberField, variant?: Variant): Parsed {
  const read = readNumber(text, field);
  if ('problem' in read) return read;
  const problem = settingProblem(field, read.value, variant);
  return problem ? { problem } : read;
}

/** As `parseNumber`, whatever the limits. */
export function readNumber(text: string, field: NumberField): Parsed {
  const tidy = text.replace(/[\u2212\u2013]/g, '-').trim();
  const match = /^([+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?)\s*(.*)$/is.exec(tidy);
  const no = (code: string, words: string): Parsed => ({
    problem: problemAt(field.path, code, `${field.label} ${words}`),
  });
  const example = plainText(field.default, field.unit);
  if (!match) {
    return no(
      'number',
      tidy === ''
        ? `needs a number, such as ${example}.`
        : `needs a number, such as ${example}; “${clipped(tidy)}” is not one.`,
    );
  }
  const [, digits, unit] = match;
  if (/^[+-]?[1-9]\d{0,2},\d{3}$/.test(digits)) {
    const whole = digits.replace(',', '');
    const part = String(Number(digits.replace(',', '.')));
    return no('comma', `can be read two ways in “${clipped(tidy)}”: write ${whole} or ${part}.`);
  }
  if (unit !== '' && !isUnit(unit, field.unit)) {
    const wanted = units[field.unit];
    const words =
      wanted.words === '' ? 'has no unit' : `is given in ${wanted.words} (${wanted.symbol})`;
    return no('unit', `${words}; “${clipped(unit)}” is not read.`);
  }
  return { value: toSI(Number(digits.replace(',', '.')), field.unit) };
}

/** Whether a text names a unit, by its symbol or in words. */
function isUnit(text: string, name: UnitName): boolean {
  const { symbol, words } = units[name];
  const wanted = bare(text);
  const spelled: readonly string[] = [symbol, words, ...(alsoWritten[name] ?? [])];
  return spelled.some((spelling) => spelling !== '' && bare(spelling) === wanted);
}

/** Letters and signs only, small, with figures for raised figures. */
function bare(text: string): string {
  return text
    .toLowerCase()
    .replace(/[\s\u00a0·()]/g, '')
    .replace('²', '2');
}

function clipped(text: string): string {
  return text.length > 30 ? `${text.slice(0, 30)}…` : text;
}

const alsoWritten: Partial<Record<UnitName, readonly string[]>> = {
  celsius: ['C', 'deg C'],
  times: ['x'],
  litre: ['litre'],
  minute: ['minute'],
  hour: ['hour'],
  metre: ['metre'],
  kilowattHourPerDay: ['kWh/day', 'kWh per day'],
};
