import type { NumberField } from '../fields/row.ts';
import type { Variant } from '../variant.ts';
import { readNumberText } from './numberText.ts';
import { type Problem, problemAt } from './problem.ts';
import { settingProblem } from './ranges.ts';

/** What was typed, as a value in SI, or what is wrong with it. */
export type Parsed = { readonly value: number } | { readonly problem: Problem };

/**
 * Reads a setting as people type it: `1,5`, ` 1.5 `, `1.5 kW`. Checks the limits of the field too.
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
  const read = readNumberText(text, field);
  return 'message' in read ? { problem: problemAt(field.path, read.code, read.message) } : read;
}
