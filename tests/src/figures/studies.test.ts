import { describe, expect, test } from 'vitest';
import type { StudyPoint } from '../../../shared/study.ts';
import {
  missedStretches,
  nearestPoint,
  studyTable,
  studyValueAt,
} from '../../../src/figures/studyTable.ts';

const point = (value: number, recovery: number | null): StudyPoint => ({
  value,
  callsAtStart: true,
  recovery,
  usableAtSatisfied: recovery === null ? null : 0.3,
  usableAtCall: recovery === null ? null : 0.2,
  reheatAfterCall: recovery === null ? null : 600,
  callsPerDay: 3,
});
const points = [point(0.1, null), point(0.2, null), point(0.4, 1200), point(0.6, 1800)];
const recovery = (each: StudyPoint) => each.recovery;

describe('a study between its points', () => {
  test('half way from 1200 s at 0.4 m to 1800 s at 0.6 m is 1500 s', () => {
    expect(studyValueAt(points, recovery, 0.5)).toBeCloseTo(1500, 9); // exact but for rounding
    expect(studyValueAt(points, recovery, 0.4)).toBe(1200);
  });

  test('beside 0.2 m, which was not reached, and beyond 0.6 m there is no value', () => {
    expect(studyValueAt(points, recovery, 0.3)).toBeNaN();
    expect(studyValueAt(points, recovery, 0.7)).toBeNaN();
    expect(studyValueAt(points, recovery, 0.05)).toBeNaN();
  });

  test('0.1 and 0.2 m are 1 stretch that was not reached', () => {
    expect(missedStretches(points, recovery)).toEqual([{ from: 0.1, to: 0.2 }]);
    expect(missedStretches(points, (each) => each.callsPerDay)).toEqual([]);
  });

  test('the point nearest to 0.47 m is the one at 0.4 m', () => {
    expect(nearestPoint(points, 0.47)?.value).toBe(0.4);
    expect(nearestPoint([], 0.47)).toBeNull();
  });
});

describe('a study as a table', () => {
  test('the highest sensor comes first, and what was not reached is said in words', () => {
    const { columns, rows } = studyTable({ kind: 'placement', points });
    expect(columns).toHaveLength(5);
    expect(rows[0]).toEqual(['0.60', '30.0', '300', '200', '10.0']);
    expect(rows[3]).toEqual(['0.10', 'not reached', 'not reached', 'not reached', 'not reached']);
  });

  test('differentials come as they rise, with 3 calls a day', () => {
    const { columns, rows } = studyTable({ kind: 'differential', points });
    expect(columns.at(-1)).toBe('calls a day');
    expect(rows[2]).toEqual(['0.4', '20.0', '300', '200', '10.0', '3']);
  });
});
