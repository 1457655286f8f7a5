import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import type { ClosureRecord } from '../../../shared/closureRecord.ts';
import { dayMeasureRows, type DayMeasures } from '../../../shared/day.ts';
import { measureRows, type Measures } from '../../../shared/result.ts';
import { records } from '../../../sim/closures/records.ts';
import { relations } from '../../../src/explain/relations/all.ts';
import { deliveryKeys, hygieneKeys, type WorkingKey } from '../../../src/explain/working.ts';
import { workingOf } from '../../../src/explain/workings.ts';
import { type UnlikeRun, unlikeRuns } from '../../make/unlikeRuns.ts';

/** A record that some working shows, and whether all of its numbers stood in it at least once. */
type Found = Map<string, 'open' | 'filled'>;

const all: readonly ClosureRecord[] = [...records, ...relations];
let runs: UnlikeRun[] = [];
beforeAll(() => {
  runs = unlikeRuns();
}, 120_000);

/** The keys that open from a number on the page: measured tables, and whatever a component names. */
const seen: readonly WorkingKey[] = [
  ...Object.keys(measureRows).map((key) => `measure.${key as keyof Measures}` as const),
  ...Object.keys(dayMeasureRows).map((key) => `day.${key as keyof DayMeasures}` as const),
  ...hygieneKeys,
  ...deliveryKeys,
  ...namedIn('src/explain'),
];

function namedIn(folder: string): WorkingKey[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith('.svelte'))
    .flatMap((file) => [
      ...readFileSync(`${folder}/${file}`, 'utf8').matchAll(/\bof="([a-z]+\.[A-Za-z]+)"/g),
    ])
    .map(([, key]) => key as WorkingKey);
}

/** Walks the workings that open from these keys, and all that they open further, at three moments of a run. */
function walk(found: Found, { result, day, delivered }: UnlikeRun, from: readonly WorkingKey[]) {
  const end = result.outcome.at;
  const moments = [0, (result.measures.recovery ?? end) / 2, end];
  const asked = new Set<WorkingKey>();
  const open = [...from];
  while (open.length > 0) {
    const key = open.pop() as WorkingKey;
    if (asked.has(key)) continue;
    asked.add(key);
    for (const at of moments) {
      const working = workingOf(key, result, at, { day, delivered });
      expect(working.title, key).not.toMatch(/NaN|undefined|null|Infinity/);
      expect(working.note, key).not.toMatch(/NaN|undefined|null|Infinity/);
      for (const step of working.steps) {
        for (const value of Object.values(step.values)) {
          expect(Number.isFinite(value), `${key}: ${step.record.key}`).toBe(true);
        }
        const isWhole = [...step.record.terms.map((term) => term.key), 'result'].every(
          (term) => step.values[term] !== undefined,
        );
        const before = found.get(step.record.key);
        found.set(step.record.key, isWhole || before === 'filled' ? 'filled' : 'open');
      }
      open.push(...working.further.map((next) => next.key));
    }
  }
  return asked;
}

const lacking = (found: Found, wanted: readonly ClosureRecord[]) => ({
  'reached by no working': wanted.filter(({ key }) => !found.has(key)).map(({ key }) => key),
  'never with its numbers': wanted
    .filter(({ key }) => found.get(key) === 'open')
    .map(({ key }) => key),
});

const nothing = { 'reached by no working': [], 'never with its numbers': [] };

describe('of 74 closures and 40 relations', () => {
  test('every one is reached from a number on the page, and at least once with its numbers', () => {
    const found: Found = new Map();
    for (const run of runs) walk(found, run, seen);
    expect(lacking(found, all)).toEqual(nothing);
    expect(all).toHaveLength(114);
  }, 60_000);

  test('one that no working shows is told by its name', () => {
    const found: Found = new Map();
    walk(found, runs[0], seen);
    const stray = { ...records[0], key: 'stray' };
    expect(lacking(found, [...all, stray])['reached by no working']).toContain('stray');
    // one run alone does not reach what other settings need
    expect(lacking(found, all)['reached by no working']).toContain('jacketLoss');
    expect(lacking(found, all)['never with its numbers']).toContain('surplus');
  });

  test('what a working opens further is a working again, in each of 16 runs', () => {
    for (const run of runs) {
      const asked = walk(new Map(), run, seen);
      expect(asked.size).toBeGreaterThan(90);
    }
    expect(runs).toHaveLength(16);
  }, 60_000);
});
