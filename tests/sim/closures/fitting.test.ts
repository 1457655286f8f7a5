import { expect, test } from 'vitest';
import { copperTubes } from '../../../sim/closures/copperTube.ts';
import { equivalentLength, quadraticDrop } from '../../../sim/closures/fitting.ts';

test('10 kPa at 15 l/min are 40 kPa at 30 l/min, 1.111 kPa at 5 l/min and 0 without flow', () => {
  const at = (litresPerMinute: number) => quadraticDrop(10_000, 15, litresPerMinute);
  expect(at(15)).toBe(10_000);
  expect(at(30)).toBe(40_000);
  expect(at(5)).toBeCloseTo(1111.11, 2); // a ninth
  expect(at(0)).toBe(0);
});

test('a valve with Kv 4 loses 6.25 kPa at 1 m³/h', () => {
  expect(quadraticDrop(1e5, 4, 1)).toBe(6250); // 1 bar × (1 / 4)²
});

test('a shut valve loses infinitely much at any flow and nothing without flow', () => {
  expect(quadraticDrop(Number.POSITIVE_INFINITY, 15, 1e-9)).toBe(Number.POSITIVE_INFINITY);
  expect(quadraticDrop(Number.POSITIVE_INFINITY, 15, 0)).toBe(0);
});

test('in 22 mm tube an elbow counts as 0.606 m, a pulled bend as 0.242 m, a tee branch as 1.212 m', () => {
  const { bore } = copperTubes['22'];
  expect(equivalentLength('elbow', bore)).toBeCloseTo(0.606, 9); // 30 × 20.2 mm
  expect(equivalentLength('pulledBend', bore)).toBeCloseTo(0.2424, 9); // 12 × 20.2 mm
  expect(equivalentLength('teeBranch', bore)).toBeCloseTo(1.212, 9); // 60 × 20.2 mm
});
