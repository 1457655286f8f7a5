import { describe, expect, test } from 'vitest';
import {
  emptyGrid,
  filledGrid,
  finerAndFiner,
  type MapGrid,
  NONE,
  UNKNOWN,
  VALUE,
} from '../../../src/state/mapGrid.ts';
import { MapOrder } from '../../../src/state/mapOrder.ts';

/** Takes all, a handful at a time, and computes each at once. */
function takenInOrder(grid: MapGrid, valueAt: (column: number, row: number) => number | null) {
  const order = new MapOrder(grid);
  const taken: number[] = [];
  for (;;) {
    const places = order.take(3);
    if (places.length === 0) return taken;
    for (const place of places) {
      taken.push(place);
      set(grid, place, valueAt(place % grid.columns, Math.floor(place / grid.columns)));
    }
  }
}

function set(grid: MapGrid, place: number, value: number | null) {
  grid.values[place] = value ?? Number.NaN;
  grid.states[place] = value === null ? NONE : VALUE;
}

describe('from coarse to fine', () => {
  test('15 positions come as 5, 9 and 15, each list in the next, with both ends in the first', () => {
    const lists = finerAndFiner(15);
    expect(lists.map((list) => list.length)).toEqual([5, 9, 15]);
    expect(lists[0]).toEqual([0, 4, 7, 11, 14]);
    lists.slice(1).forEach((list, index) => {
      expect(lists[index].every((position) => list.includes(position))).toBe(true);
    });
  });

  test.each([2, 3, 5, 17, 32])('%i positions end as all of them', (count) => {
    const lists = finerAndFiner(count);
    expect(lists.at(-1)).toEqual(Array.from({ length: count }, (_, index) => index));
  });

  test('words come all at once', () => {
    expect(finerAndFiner(3, true)).toEqual([[0, 1, 2]]);
  });
});

describe('the order of a map', () => {
  test('all 1024 places of 32 × 32 are handed out once, the 25 of the coarse level first', () => {
    const taken = takenInOrder(emptyGrid(32, 32), (column, row) => column * row);
    expect(new Set(taken).size).toBe(1024);
    const coarse = new Set(finerAndFiner(32)[0]);
    for (const place of taken.slice(0, 25)) {
      expect(coarse.has(place % 32) && coarse.has(Math.floor(place / 32))).toBe(true);
    }
  });

  test('after the coarse 5 of 17 the bend between 12 and 16 comes before the straight part', () => {
    const taken = takenInOrder(emptyGrid(17, 1), (column) => Math.max(0, column - 12) ** 2);
    expect(taken.slice(0, 5)).toEqual([0, 4, 8, 12, 16]);
    expect(new Set(taken.slice(5, 7))).toEqual(new Set([10, 14]));
  });

  test('an edge between what is possible and what is not comes first', () => {
    const taken = takenInOrder(emptyGrid(17, 1), (column) => (column < 3 ? null : 10 + column));
    expect(taken[5]).toBe(2);
  });

  test('what is known already is not handed out', () => {
    const grid = emptyGrid(5, 5);
    for (let place = 0; place < 20; place += 1) set(grid, place, 1);
    expect(takenInOrder(grid, () => 1)).toEqual([20, 21, 22, 23, 24]);
  });

  test('3 rows of words and 9 columns give 27 places', () => {
    const taken = takenInOrder(emptyGrid(9, 3, true), (column) => column);
    expect(new Set(taken).size).toBe(27);
  });
});

describe('what is not computed yet', () => {
  test('lies straight between what is: a plane of 9 × 9 from its 25 coarse places, exactly', () => {
    const grid = emptyGrid(9, 9);
    const plane = (place: number) => 2 * (place % 9) + 3 * Math.floor(place / 9);
    for (const row of [0, 2, 4, 6, 8]) {
      for (const column of [0, 2, 4, 6, 8]) set(grid, row * 9 + column, plane(row * 9 + column));
    }
    const filled = filledGrid(grid);
    for (const [place, value] of filled.values.entries()) {
      expect(value).toBeCloseTo(plane(place), 12); // rounding
    }
    expect(filled.states.every((state) => state === VALUE)).toBe(true);
    expect(grid.states.filter((state) => state === UNKNOWN)).toHaveLength(56);
  });

  test('a place without a value takes the mean of the 4 beside it, and is still told apart', () => {
    const grid = emptyGrid(3, 3);
    for (let place = 0; place < 9; place += 1) set(grid, place, place);
    set(grid, 4, null);
    const filled = filledGrid(grid);
    expect(filled.values[4]).toBe(4);
    expect(filled.states[4]).toBe(NONE);
  });

  test('nothing is filled between words', () => {
    const grid = emptyGrid(2, 3, true);
    for (const place of [0, 1, 4, 5]) set(grid, place, 7);
    expect(filledGrid(grid).values.slice(2, 4)).toEqual(Float64Array.of(Number.NaN, Number.NaN));
  });
});
