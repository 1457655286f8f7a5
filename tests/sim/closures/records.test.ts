import { describe, expect, test } from 'vitest';
import { formulaMathML } from '../../../shared/formulaMathML.ts';
import { sources } from '../../../shared/sources.ts';
import { records } from '../../../sim/closures/records.ts';

describe.each(records.map((record) => [record.key, record] as const))('%s', (_, record) => {
  test('gives the example it prints', () => {
    const { given, gives, digits } = record.example;
    // The last printed digit of the example may be rounded, hence half of it
    expect(Math.abs(record.compute(given) - gives)).toBeLessThanOrEqual(0.5 * 10 ** -digits);
  });

  test('answers a change in each of its terms', () => {
    const { given } = record.example;
    const before = record.compute(given);
    for (const term of record.terms) {
      const changed = { ...given, [term.key]: given[term.key] * 1.01 + 1e-9 };
      expect(record.compute(changed), term.name).not.toBe(before);
    }
  });

  test('names every term in its formula, and no other', () => {
    const inFormula = new Set([...record.formula.matchAll(/\{(\w+)\}/g)].map((m) => m[1]));
    expect(inFormula).toEqual(new Set(['result', ...record.terms.map((t) => t.key)]));
    expect(Object.keys(record.example.given).sort()).toEqual(record.terms.map((t) => t.key).sort());
  });

  test('prints balanced MathML in symbols and with numbers, and cites a known source', () => {
    const values = { ...record.example.given, result: record.example.gives };
    for (const markup of [formulaMathML(record), formulaMathML(record, values)]) {
      expect(markup).not.toMatch(/[{}]|NaN|undefined/);
      expect(unbalanced(markup)).toEqual([]);
    }
    expect(sources[record.source].title.length).toBeGreaterThan(0);
    for (const words of [
      record.sentence,
      record.where,
      record.range,
      record.outside,
      record.changes,
    ]) {
      expect(words.length).toBeGreaterThan(5);
    }
  });
});

test('no two relations share a key', () => {
  expect(new Set(records.map((r) => r.key)).size).toBe(records.length);
});

test('a tag left open is found, so the check above can fail', () => {
  expect(unbalanced('<math><mrow><mi>x</mi></math>')).not.toEqual([]);
});

/** Tags that are open at the end or closed out of turn. */
function unbalanced(markup: string): string[] {
  const open: string[] = [];
  for (const [, slash, name, single] of markup.matchAll(/<(\/?)(\w+)[^>]*?(\/?)>/g)) {
    if (single) continue;
    if (!slash) open.push(name);
    else if (open.at(-1) === name) open.pop();
    else return [...open, `/${name}`];
  }
  return open;
}
