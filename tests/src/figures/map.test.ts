import { describe, expect, test } from 'vitest';
import { linearScale } from '../../../src/charts/scale.ts';
import {
  contourLabels,
  contoursOf,
  contourValues,
  type MapPlan,
} from '../../../src/figures/mapContours.ts';
import {
  deepest,
  noneRuns,
  placeValue,
  positionOf,
  settled,
  valueOfPosition,
} from '../../../src/figures/mapPlace.ts';
import { mapTable } from '../../../src/figures/mapTable.ts';
import { settingsOf, standOf } from '../../../src/figures/mapVariants.ts';
import { emptyGrid, filledGrid, type MapGrid, NONE, VALUE } from '../../../src/state/mapGrid.ts';
import { withOverrides } from '../../../shared/grid.ts';
import { inventedMap } from '../../make/inventedMap.ts';

/** A grid of values by column and row; null has none. */
function gridOf(columns: number, rows: number, at: (column: number, row: number) => number | null) {
  const grid: MapGrid = emptyGrid(columns, rows);
  for (let place = 0; place < columns * rows; place += 1) {
    const value = at(place % columns, Math.floor(place / columns));
    grid.values[place] = value ?? Number.NaN;
    grid.states[place] = value === null ? NONE : VALUE;
  }
  return grid;
}
const planOf = ({ columns, rows }: MapGrid): MapPlan => ({
  x: linearScale([0, columns - 1], [0, 400]),
  y: linearScale([0, rows - 1], [300, 0]),
  left: 0,
  right: 400,
  top: 0,
  bottom: 300,
});

describe('lines of equal value', () => {
  test('of a plane that rises from 0 to 80 to the right, 20 stands at a quarter of the width', () => {
    const grid = gridOf(9, 7, (column) => 10 * column);
    const [line] = contoursOf(filledGrid(grid), [20], planOf(grid));
    expect(line.pieces).toHaveLength(1);
    for (const [x] of line.pieces[0]) expect(x).toBeCloseTo(100, 6); // straight between points
    expect(Math.min(...line.pieces[0].map(([, y]) => y))).toBeCloseTo(0, 6);
    expect(Math.max(...line.pieces[0].map(([, y]) => y))).toBeCloseTo(300, 6);
  });

  test('values from 0 to 80 min are drawn every 10 min', () => {
    const grid = gridOf(9, 7, (column) => 600 * column);
    expect(contourValues(grid, 60).map((value) => value / 60)).toEqual([
      0, 10, 20, 30, 40, 50, 60, 70, 80,
    ]);
  });

  test('where most of the map lies between 2 lines there are 5 or more within', () => {
    const grid = gridOf(11, 1, (column) => (column === 10 ? 100 : 30 + column));
    const inside = contourValues(grid, 1).filter((value) => value >= 30 && value <= 40);
    expect(inside.length).toBeGreaterThanOrEqual(5);
  });

  test('a map of one value has 0 lines', () => {
    expect(
      contourValues(
        gridOf(5, 5, () => 7),
        1,
      ),
    ).toEqual([]);
  });

  test('each of 5 labels stands on its own line, and none on another label', () => {
    const grid = gridOf(9, 7, (column, row) => 10 * column + 3 * row);
    const plan = planOf(grid);
    const lines = contoursOf(filledGrid(grid), [20, 30, 40, 50, 60], plan);
    const labels = contourLabels(lines, grid, plan, String, []);
    expect(labels).toHaveLength(5);
    for (const { value, x, y } of labels) {
      const column = plan.x(0) + (x / 400) * 8;
      const row = ((300 - y) / 300) * 6;
      expect(10 * column + 3 * row).toBeCloseTo(value, 6); // on a plane lines are straight
    }
  });

  test('a label keeps clear of where there is no value', () => {
    const grid = gridOf(9, 7, (column, row) => (row > 2 ? null : 10 * column));
    const plan = planOf(grid);
    const labels = contourLabels(contoursOf(filledGrid(grid), [40], plan), grid, plan, String, []);
    expect(labels).toHaveLength(1);
    expect(labels[0].y).toBeGreaterThan(plan.y(2.5));
  });
});

describe('places of a map', () => {
  test('0.9 lies at 0.8 of a step between 0.5 and 1.0, and back', () => {
    expect(positionOf([0.5, 1, 1.5], 0.9)).toBeCloseTo(0.8, 12);
    expect(valueOfPosition([0.5, 1, 1.5], 0.8)).toBeCloseTo(0.9, 12);
    expect(positionOf([0.5, 1, 1.5], 2)).toBe(3);
  });

  test('between 4 points the value is straight both ways', () => {
    const grid = gridOf(3, 3, (column, row) => column + 10 * row);
    expect(placeValue(grid, 0.5, 1.25).value).toBeCloseTo(13, 12);
    expect(placeValue(grid, 0.4, 1.4).nearest).toBe(3);
  });

  test('a value is put to the step of its setting and kept on the axis', () => {
    const axis = { path: 'coil.area' as const, values: [0.5, 1, 1.5] };
    expect(settled(axis, 0.9137)).toBeCloseTo(0.9, 12);
    expect(settled(axis, 9)).toBe(1.5);
  });

  test('3 × 2 points without a value are 2 stretches, and the word stands inside', () => {
    const grid = gridOf(5, 4, (column, row) => (column < 3 && row > 1 ? null : 1));
    expect(noneRuns(grid, () => true)).toEqual([
      { row: 2, from: 0, to: 2 },
      { row: 3, from: 0, to: 2 },
    ]);
    const place = deepest(grid, (each) => grid.states[each] === NONE) ?? -1;
    expect(grid.states[place]).toBe(NONE);
  });
});

describe('a variant on a map', () => {
  const map = inventedMap('plane');
  const { base } = map.grid;

  test('stands at its coil of 0.85 m² and 80 °C; moved, it is told 3 settings, the known area among them', () => {
    expect(standOf(base, map)).toEqual({ across: 0.85, upward: 80 });
    expect(settingsOf({ across: 1, upward: 70 }, map)).toEqual([
      ['coil.given', 'area'],
      ['coil.area', 1],
      ['boiler.hotWaterFlow', 70],
    ]);
  });

  test('that is known by 12 m of 22 mm tube stands at its area, 0.829 m²; one known by a rating does not stand on it', () => {
    const tube = withOverrides(base, [['coil.given', 'geometry']]);
    expect(standOf(tube, map)?.across).toBeCloseTo(Math.PI * 0.022 * 12, 12);
    expect(standOf(withOverrides(base, [['coil.given', 'rating']]), map)).toBeNull();
  });
});

describe('the table', () => {
  test('of 9 × 9 points has 9 rows and 8 columns of them, the highest flow first, with a word for what is missing', () => {
    const map = inventedMap('plane');
    const table = mapTable({ ...map, values: map.values.values });
    expect(table.rows).toHaveLength(9);
    expect(table.columns).toHaveLength(9);
    expect(table.columns[0]).toBe('flow target for hot water, °C');
    expect(table.rows[0][0]).toBe('86');
    expect(table.rows[8][1]).toBe('not satisfied');
    expect(table.caption).toContain('72 of 81 points');
  });

  test('of one setting has a row for each of 9 points with its unit in the cell', () => {
    const map = inventedMap('line');
    const table = mapTable({ ...map, values: map.values.values });
    expect(table.rows).toHaveLength(9);
    expect(table.rows[0]).toEqual(['0.5', '46.7\u00a0min']); // 20 + 400 / (0.5 × 30)
  });

  test('of 32 points no closer than 0.0001 m² has 8 headings that differ', () => {
    const map = inventedMap('plane', 32);
    const near = {
      ...map.grid.axes[1],
      values: map.grid.axes[1].values.map((_, n) => 0.5 + n / 1e4),
    };
    const table = mapTable({
      ...map,
      grid: { ...map.grid, axes: [map.grid.axes[0], near] },
      values: map.values.values,
    });
    expect(new Set(table.columns).size).toBe(table.columns.length);
  });
});
