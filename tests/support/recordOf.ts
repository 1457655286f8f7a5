import type { ClosureRecord, TermValues } from '../../shared/closureRecord.ts';
import { records } from '../../sim/closures/records.ts';
import { relations } from '../../src/explain/relations/all.ts';

/** Every relation that can be printed: the published ones, then the balances. */
export const everyRecord: readonly ClosureRecord[] = [...records, ...relations];

/** One relation by its key. */
export function recordOf(key: string): ClosureRecord {
  const found = everyRecord.find((record) => record.key === key);
  if (!found) throw new Error(`${key} is no relation; expected one`);
  return found;
}

/** The result of a relation at its own example, some terms put to other values. SI. */
export function resultOf(key: string, given: TermValues = {}): number {
  const record = recordOf(key);
  return record.compute({ ...record.example.given, ...given });
}

/** The keys of what a relation depends on. */
export function termsOf(key: string): string[] {
  return recordOf(key).terms.map((term) => term.key);
}
