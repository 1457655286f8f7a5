import fc from 'fast-check';
import { expect } from 'vitest';
import type { ClosureRecord, TermValues } from '../../shared/closureRecord.ts';
import { recordOf } from './recordOf.ts';

/** The least and the largest value of a term, SI. */
type Span = readonly [least: number, most: number];

/** Which way the result of a relation goes when a term goes up, all else as it was. */
export type Ways = Readonly<Record<string, 'up' | 'down' | 'same'>>;

/**
 * Fails unless the relation goes with each named term as said: at 100 random places within the spans, between two values of
 * the term a hundredth of its span or more apart. A term without a span stands as in the record's own example.
 */
export function expectMoves(name: string, spans: Readonly<Record<string, Span>>, ways: Ways): void {
  const record = recordOf(name);
  for (const key of [...Object.keys(spans), ...Object.keys(ways)]) {
    expect(
      record.terms.map((term) => term.key),
      `${record.key} has no such term`,
    ).toContain(key);
  }
  for (const [key, way] of Object.entries(ways)) expectMove(record, spans, key, way);
}

function expectMove(
  record: ClosureRecord,
  spans: Readonly<Record<string, Span>>,
  key: string,
  way: Ways[string],
): void {
  const place = fc.record(
    Object.fromEntries(Object.entries(spans).map(([term, span]) => [term, within(span)])),
  );
  const [least, most] = spans[key];
  const two = fc
    .tuple(within(spans[key]), within(spans[key]))
    .filter(([a, b]) => Math.abs(a - b) >= (most - least) / 100);
  fc.assert(
    fc.property(place, two, (at, [a, b]) => {
      const given: TermValues = { ...record.example.given, ...at };
      const low = record.compute({ ...given, [key]: Math.min(a, b) });
      const high = record.compute({ ...given, [key]: Math.max(a, b) });
      const what = `${record.key} with more ${key}`;
      if (way === 'up') expect(high, what).toBeGreaterThan(low);
      else if (way === 'down') expect(high, what).toBeLessThan(low);
      else expect(high, what).toBe(low);
    }),
    { numRuns: 100, seed: 1 },
  );
}

function within([min, max]: Span): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true });
}
