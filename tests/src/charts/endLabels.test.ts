import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { spread } from '../../../src/charts/endLabels.ts';

describe('names at line ends', () => {
  test('3 names that do not touch stay where they want to be', () => {
    expect(spread([100, 20, 60], 15, 0, 120)).toEqual([100, 20, 60]);
  });

  test('3 names for one height stand 15 pixels apart around it', () => {
    expect(spread([60, 60, 60], 15, 0, 120)).toEqual([45, 60, 75]);
  });

  test('2 names at the lower edge move up into the frame', () => {
    expect(spread([119, 120], 15, 0, 120)).toEqual([97.5, 112.5]);
  });

  test('up to 7 names never overlap, never leave 0 to 150 and keep the order of their lines', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -50, max: 200, noNaN: true }), { maxLength: 7 }),
        (wishes) => {
          const places = spread(wishes, 15, 0, 150);
          const order = wishes.map((_, index) => index).sort((a, b) => wishes[a] - wishes[b]);
          order.forEach((index, rank) => {
            expect(places[index]).toBeGreaterThanOrEqual(7.5 - 1e-6);
            expect(places[index]).toBeLessThanOrEqual(142.5 + 1e-6);
            if (rank > 0) {
              expect(places[index] - places[order[rank - 1]]).toBeGreaterThanOrEqual(15 - 1e-6);
            }
          });
        },
      ),
      { numRuns: 300 },
    );
  });
});
