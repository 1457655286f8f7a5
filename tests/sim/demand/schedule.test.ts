import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayPattern } from '../../../shared/drawPattern.ts';
import { plainVariant } from '../../make/plainVariant.ts';
import { drawEdges, ownDraws } from '../../../sim/demand/schedule.ts';

const draw = (at: number, volume: number, flow: number) => ({ at, volume, flow, name: 'draw' });

test('60 l at 6 l/min from the 10th minute open at 600 s and shut at 1200 s', () => {
  const edges = drawEdges([draw(600, 0.06, 1e-4)]);
  expect(edges.map(({ at }) => at)).toEqual([600, 1200]);
  expect(edges.map(({ flow }) => flow)).toEqual([1e-4, 0]);
});

test('a draw due at 300 s during one that ends at 600 s begins at 600 s without a gap', () => {
  const edges = drawEdges([draw(0, 0.06, 1e-4), draw(300, 0.01, 2e-4)]);
  expect(edges.map(({ at }) => at)).toEqual([0, 600, 650]);
  expect(edges.map(({ flow }) => flow)).toEqual([1e-4, 2e-4, 0]);
});

test('a variant with 0 l to draw has 0 draws, with 50 l it has 1', () => {
  const base = plainVariant('draws');
  expect(ownDraws({ ...base, draw: { ...base.draw, volume: 0 } })).toEqual([]);
  expect(ownDraws({ ...base, draw: { ...base.draw, volume: 0.05 } })).toHaveLength(1);
});

test('the day of 8 draws is 120 l, none of them during another', () => {
  const edges = drawEdges(dayPattern);
  expect(drawnBy(edges)).toBeCloseTo(0.12, 12); // m³
  expect(edges).toHaveLength(16);
});

test('200 lists of draws in any order draw all their water, at one flow at a time', () => {
  const anyDraw = fc
    .tuple(
      fc.integer({ min: 0, max: 7200 }),
      fc.integer({ min: 1, max: 100 }),
      fc.integer({ min: 1, max: 20 }),
    )
    .map(([at, litres, rate]) => draw(at, litres / 1000, rate / 60_000));
  fc.assert(
    fc.property(fc.array(anyDraw, { maxLength: 8 }), (draws) => {
      const edges = drawEdges(draws);
      const wanted = draws.reduce((sum, { volume }) => sum + volume, 0);
      expect(drawnBy(edges)).toBeCloseTo(wanted, 12); // rounding
      for (let i = 1; i < edges.length; i++) expect(edges[i].at).toBeGreaterThan(edges[i - 1].at);
    }),
    { numRuns: 200 },
  );
});

/** Water drawn between edges, m³. */
function drawnBy(edges: readonly { at: number; flow: number }[]): number {
  let sum = 0;
  for (let i = 1; i < edges.length; i++) sum += edges[i - 1].flow * (edges[i].at - edges[i - 1].at);
  return sum;
}
