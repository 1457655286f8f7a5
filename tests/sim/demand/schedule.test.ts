import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayPattern } from '../../../shared/drawPattern.ts';
import { makePlant } from '../../../sim/plant/plant.ts';
import { ownDraws, Waiting } from '../../../sim/demand/schedule.ts';
import { idealVariant } from '../../make/idealVariant.ts';
import { marchToEnd } from '../../make/marchToEnd.ts';
import { plainVariant } from '../../make/plainVariant.ts';

const draw = (at: number, volume: number, flow: number) => ({ at, volume, flow, name: 'draw' });
const store = makePlant(idealVariant({ layers: 4, setPoint: 0, duration: 86_400 }));

/** When the tap opened and shut, s. */
function edgesOf(draws: readonly ReturnType<typeof draw>[]) {
  const kinds = ['drawStarted', 'drawEnded'];
  const { marks } = marchToEnd(store, { draws });
  return marks.map(({ mark }) => mark).filter(({ kind }) => kinds.includes(kind));
}

test('60 l at 6 l/min from the 10th minute open at 600 s and shut at 1200 s', () => {
  const edges = edgesOf([draw(600, 0.06, 1e-4)]);
  expect(edges.map(({ at }) => Number(at.toFixed(6)))).toEqual([600, 1200]); // to a microsecond
  expect(edges.map(({ kind }) => kind)).toEqual(['drawStarted', 'drawEnded']);
});

test('a draw due at 300 s during one that ends at 600 s begins at 600 s without a gap', () => {
  const edges = edgesOf([draw(0, 0.06, 1e-4), draw(300, 0.01, 2e-4)]);
  expect(edges.map(({ at }) => Number(at.toFixed(6)))).toEqual([0, 600, 600, 650]);
});

test('a variant with 0 l to draw has 0 draws, with 50 l it has 1, mixed where it is mixed', () => {
  const base = plainVariant('draws');
  expect(ownDraws({ ...base, draw: { ...base.draw, volume: 0 } })).toEqual([]);
  const some = { ...base.draw, volume: 0.05 };
  expect(ownDraws({ ...base, draw: some })).toHaveLength(1);
  expect(ownDraws({ ...base, draw: some })[0].mixedTo).toBeUndefined();
  expect(ownDraws({ ...base, draw: { ...some, taken: 'mixed' } })[0].mixedTo).toBe(40);
});

test('the day of 8 draws is 120 l, each begun when it is due', () => {
  const edges = edgesOf(dayPattern);
  expect(edges).toHaveLength(16);
  const starts = edges.filter(({ kind }) => kind === 'drawStarted').map(({ at }) => at);
  dayPattern.forEach(({ at }, index) => {
    expect(Math.abs(starts[index] - at)).toBeLessThan(1e-6); // s, rounding
  });
  expect(dayPattern.reduce((sum, { volume }) => sum + volume, 0)).toBeCloseTo(0.12, 12); // m³
});

test('200 lists of draws in any order are handed out in order of time, none lost', () => {
  const anyDraw = fc
    .tuple(
      fc.integer({ min: 0, max: 7200 }),
      fc.integer({ min: 1, max: 100 }),
      fc.integer({ min: 1, max: 20 }),
    )
    .map(([at, litres, rate]) => draw(at, litres / 1000, rate / 60_000));
  fc.assert(
    fc.property(fc.array(anyDraw, { maxLength: 8 }), (draws) => {
      const waiting = new Waiting(draws);
      const taken: ReturnType<typeof draw>[] = [];
      while (waiting.next < Number.POSITIVE_INFINITY) {
        const due = waiting.next;
        taken.push(waiting.take());
        expect(taken[taken.length - 1].at).toBe(due);
      }
      expect(waiting.left).toHaveLength(0);
      expect(taken.map(({ at }) => at)).toEqual(draws.map(({ at }) => at).sort((a, b) => a - b));
      expect(new Set(taken)).toEqual(new Set(draws));
    }),
    { numRuns: 200 },
  );
});
