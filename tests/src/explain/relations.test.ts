import { describe, expect, test } from 'vitest';
import { formulaMathML } from '../../../shared/formulaMathML.ts';
import { relations } from '../../../src/explain/relations/all.ts';

describe.each(relations.map((record) => [record.key, record] as const))('%s', (_key, record) => {
  test(`its example gives ${record.example.gives}`, () => {
    const { given, gives, digits } = record.example;
    expect(record.compute(given)).toBeCloseTo(gives, digits); // the decimals the example states
  });

  test('its formula names each of its terms once or more, and 0 others', () => {
    const named = new Set([...record.formula.matchAll(/\{(\w+)\}/g)].map(([, key]) => key));
    named.delete('result');
    expect([...named].sort()).toEqual(record.terms.map(({ key }) => key).sort());
    expect(Object.keys(record.example.given).sort()).toEqual([...named].sort());
    expect(formulaMathML(record)).toMatch(/^<math/);
  });

  test('it answers all 5 questions in words', () => {
    for (const words of [
      record.sentence,
      record.where,
      record.range,
      record.outside,
      record.changes,
    ]) {
      expect(words.length).toBeGreaterThan(6);
    }
  });
});

test('40 relations have 40 keys', () => {
  expect(new Set(relations.map(({ key }) => key)).size).toBe(40);
});
