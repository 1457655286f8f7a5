import type { Field } from '../fields/row.ts';
import type { Problem } from '../problems/problem.ts';

/** A problem with a place in a file; `row` when that place is a setting with a control. */
export function inFile(field: string, code: string, message: string, row?: Field): Problem {
  return { field, path: row?.path ?? null, code, message };
}

/** What a value from JSON is, in words. */
export function kindOf(value: unknown): string {
  if (value === null) return 'null';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'an object';
  return typeof value === 'string' ? 'text' : `the ${typeof value} ${String(value)}`;
}

/** A text from a file, short enough for a sentence. */
export function clipped(text: string): string {
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}

/** Whether a value from JSON is an object with keys. */
export function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
