import type { NumberField } from '../fields/row.ts';
import { plainText } from '../format.ts';
import { fromSI } from '../units.ts';
import { readNumberText } from './numberText.ts';

/** A quantity that is asked for; a setting is one. Limits and example are in its unit. */
export type Asked = Pick<NumberField, 'label' | 'unit' | 'least' | 'most' | 'default'>;

/** What was typed, in SI, or one sentence on what is wrong with it. */
export type ReadQuantity = { readonly value: number } | { readonly problem: string };

/** Reads a quantity as people type it, and checks its limits. @param text  what was typed */
export function readQuantity(text: string, asked: Asked): ReadQuantity {
  const read = readNumberText(text, asked);
  if ('message' in read) return { problem: read.message };
  const problem = beyondLimits(read.value, asked);
  return problem === null ? read : { problem };
}

/**
 * One sentence on a quantity beyond its limits, or null.
 * @param value  SI
 * @param say    how a number in the unit reads
 */
export function beyondLimits(
  value: number,
  { label, unit, least, most }: Omit<Asked, 'default'>,
  say = (shown: number) => plainText(shown, unit),
): string | null {
  const now = fromSI(value, unit);
  if (now >= least && now <= most) return null;
  const found = Number.isFinite(now) ? say(now) : 'beyond all measure';
  return `${label} must be between ${say(least)} and ${say(most)}; it is ${found}.`;
}
