import { expect, test } from 'vitest';
import { askedRow, askedRows } from '../../shared/asked.ts';
import {
  comparedApart,
  comparedElse,
  comparedGroups,
  comparedLabel,
} from '../../shared/comparedMeasures.ts';

const first = comparedGroups.flatMap(({ keys }) => keys);

test('10 measures are compared at first sight, 4 of them by a run besides the reheat', () => {
  expect(first).toHaveLength(10);
  expect(comparedApart).toEqual(['usableWhenCalled', 'callsPerDay', 'dayLowestRoom', 'fuelPerDay']);
});

test('each of the 36 measures of the reheat is compared once, at first sight or beyond it', () => {
  const all = [...first, ...comparedElse.keys];
  expect(new Set(all).size).toBe(all.length);
  const ofRun = askedRows.filter(({ of }) => of === 'run').map(({ key }) => key);
  expect(all.filter((key) => askedRow(key).of === 'run').toSorted()).toEqual(ofRun.toSorted());
});

test('0 labels of a day say again that they are of the day, and those that are of one day say so', () => {
  expect(comparedGroups[1].keys.map(comparedLabel)).toEqual([
    'Calls for hot water per day',
    'Lowest room temperature',
    'Fuel for hot water per day',
  ]);
  expect(comparedLabel('recovery')).toBe('Recovery time');
});
