import { expect, test } from 'vitest';
import { type Gaining, gaining, paceTotals } from '../../../shared/pace.ts';
import { leaders, paceStretches } from '../../../sim/measure/pace.ts';

const gains = (some: Partial<Record<Gaining, number[]>>, samples: number) =>
  Object.fromEntries(
    gaining.map((key) => [key, some[key] ?? new Array<number>(samples).fill(0)]),
  ) as Record<Gaining, number[]>;

test('1000 W from the coil and 950 W from the flow share the lead, 800 W would not', () => {
  const of = (flow: number) =>
    leaders((key) => ({ coil: 1000, primaryFlow: flow })[key as 'coil'] ?? 0);
  expect(of(950)).toEqual(['coil', 'primaryFlow']);
  expect(of(1050)).toEqual(['primaryFlow', 'coil']);
  expect(of(800)).toEqual(['coil']);
});

test('where nothing brings anything the flow limit holds', () => {
  expect(leaders(() => 0)).toEqual(['flowLimit']);
});

test('gains that cross at 30 s of 60 s change the lead there, through a tie, to 1 s', () => {
  const stretches = paceStretches({
    time: [0, 60],
    sole: [null, null],
    gain: gains({ output: [1000, 0], coil: [0, 1000] }, 2),
  });
  expect(stretches.map(({ by }) => by.join())).toEqual(['output', 'output,coil', 'coil']);
  // equal to a tenth where coil is 0.9 of output: at 60 · 0.9 / 1.9 s, and its mirror image
  expect(Math.abs(stretches[0].to - (60 * 0.9) / 1.9)).toBeLessThan(1);
  expect(Math.abs(stretches[1].to - 60 / 1.9)).toBeLessThan(1);
});

test('a switch is sampled on both sides, and the stretch changes exactly there', () => {
  const stretches = paceStretches({
    time: [0, 40, 40, 100],
    sole: [null, null, 'programme', 'programme'],
    gain: gains({ output: [5, 5, 0, 0] }, 4),
  });
  expect(stretches).toEqual([
    { from: 0, to: 40, by: ['output'] },
    { from: 40, to: 100, by: ['programme'] },
  ]);
});

test('of 40 min, 10 shared by two and 30 by one, the two get 35 and 5', () => {
  const stretches = [
    { from: 0, to: 600, by: ['coil', 'output'] as const },
    { from: 600, to: 2400, by: ['coil'] as const },
    { from: 2400, to: 3000, by: ['satisfied'] as const },
  ];
  const totals = paceTotals({ stretches, gain: gains({}, 0) as never }, 2400);
  expect(totals).toEqual([
    { key: 'coil', time: 2100 },
    { key: 'output', time: 300 },
  ]);
});
