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
  const now = fromSI(read.value, asked.unit);
  if (now >= asked.least && now <= asked.most) return read;
  const [from, to] = [asked.least, asked.most].map((limit) => plainText(limit, asked.unit));
  const found = Number.isFinite(now) ? plainText(now, asked.unit) : 'beyond all measure';
  return { problem: `${asked.label} must be between ${from} and ${to}; it is ${found}.` };
}
