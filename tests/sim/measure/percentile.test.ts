import { expect, test } from 'vitest';
import { percentile } from '../../../sim/measure/percentile.ts';

test('of 1 to 10 a tenth lies below 1.5, half below 5.5 and nine tenths below 9.5', () => {
  const sorted = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
  expect([0.1, 0.5, 0.9].map((share) => percentile(sorted, share))).toEqual([1.5, 5.5, 9.5]);
});

test('of 1 value every share is that value', () => {
  expect([0, 0.5, 1].map((share) => percentile([41], share))).toEqual([41, 41, 41]);
});

test('beyond the middle of the first and the last it stays at them', () => {
  expect([0, 1].map((share) => percentile([3, 5, 9], share))).toEqual([3, 9]);
});

test('with 2 of 8 longer than any, the median is known and nine tenths are not', () => {
  const sorted = [1, 2, 3, 4, 5, 6, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  expect(percentile(sorted, 0.5)).toBe(4.5);
  expect(percentile(sorted, 0.9)).toBe(Number.POSITIVE_INFINITY);
});

test('between the last that got there and one that did not it is longer than any', () => {
  expect(percentile([1, 2, 3, Number.POSITIVE_INFINITY], 0.75)).toBe(Number.POSITIVE_INFINITY);
});
