import { fieldAt } from '../../shared/fields.ts';
import type { Axis } from '../../shared/grid.ts';
import { fromSI, toSI } from '../../shared/units.ts';
import type { FieldPath } from '../../shared/variant.ts';
import type { Scale } from '../charts/scale.ts';
import { type MapGrid, NONE, VALUE } from '../state/mapGrid.ts';

/** Where a value stands among the values of an axis: 0 at the first, 1 at the second; before and behind them on the same slope. */
export function positionOf(values: readonly number[], value: number): number {
  if (values.length < 2) return 0;
  const above = values.findIndex((each) => each >= value);
  const high = above < 0 ? values.length - 1 : Math.max(1, above);
  return high - 1 + (value - values[high - 1]) / (values[high] - values[high - 1]);
}

/** The other way round. */
export function valueOfPosition(values: readonly number[], position: number): number {
  if (values.length < 2) return values[0];
  const low = Math.min(values.length - 2, Math.max(0, Math.floor(position)));
  return values[low] + (position - low) * (values[low + 1] - values[low]);
}

/** Positions along an axis to pixels. @param scale  of the shown unit */
export function positionScale({ path, values }: Axis, scale: Scale): (position: number) => number {
  const { unit } = numberField(path);
  // worked out once: every point of every line asks
  const pixels = numbersOf(values).map((value) => scale(fromSI(value, unit)));
  return (position) => valueOfPosition(pixels, position);
}

/** What a map has at a place between its points. */
export interface PlaceValue {
  /** SI; NaN where nothing is known */
  readonly value: number;
  readonly state: number;
  /** The nearest point of the grid. */
  readonly nearest: number;
}

/**
 * The value between the four points around a place, straight both ways; the state is that of the nearest.
 * @param grid  of which every place is filled
 */
export function placeValue(grid: MapGrid, column: number, row: number): PlaceValue {
  const { columns, rows, values, states } = grid;
  const inside = (position: number, count: number) => Math.min(count - 1, Math.max(0, position));
  const x = inside(column, columns);
  const y = inside(row, rows);
  const [left, low] = [Math.floor(x), Math.floor(y)];
  const [right, high] = [Math.ceil(x), Math.ceil(y)];
  const at = (up: number, across: number) => values[up * columns + across];
  const along = (up: number) => mix(at(up, left), at(up, right), x - left);
  const nearest = Math.round(y) * columns + Math.round(x);
  return { value: mix(along(low), along(high), y - low), state: states[nearest], nearest };
}

const mix = (one: number, other: number, share: number) =>
  share === 0 ? one : one + share * (other - one);

/** A value at a step of its setting, inside the axis; SI. */
export function settled({ path, values }: Axis, value: number): number {
  const numbers = numbersOf(values);
  const { unit, step } = numberField(path);
  const shown = Number((Math.round(fromSI(value, unit) / step) * step).toPrecision(12));
  return Math.min(numbers[numbers.length - 1], Math.max(numbers[0], toSI(shown, unit)));
}

/** Least and most of an axis in its shown unit. */
export function domainOf({ path, values }: Axis): [number, number] {
  const { unit } = numberField(path);
  const numbers = numbersOf(values);
  return [fromSI(numbers[0], unit), fromSI(numbers[numbers.length - 1], unit)];
}

/** The field of an axis of numbers. */
export function numberField(path: FieldPath) {
  const field = fieldAt(path);
  if (field.kind !== 'number') throw new Error(`${path} is a choice; expected a number`);
  return field;
}

/** The values of an axis of numbers. */
export function numbersOf(values: readonly (number | string)[]): readonly number[] {
  return values as readonly number[];
}

/** A stretch of a row of points without a value, from its first to its last column. */
export interface NoneRun {
  readonly row: number;
  readonly from: number;
  readonly to: number;
}

/** Points without a value that fit, as stretches of rows. */
export function noneRuns(grid: MapGrid, fits: (place: number) => boolean): NoneRun[] {
  const runs: NoneRun[] = [];
  for (let row = 0; row < grid.rows; row += 1) {
    for (let column = 0; column < grid.columns; column += 1) {
      const place = row * grid.columns + column;
      if (grid.states[place] !== NONE || !fits(place)) continue;
      const last = runs.at(-1);
      if (last?.row === row && last.to === column - 1)
        runs[runs.length - 1] = { ...last, to: column };
      else runs.push({ row, from: column, to: column });
    }
  }
  return runs;
}

/** The place deepest inside an area, where a word has most room; null of an empty one. */
export function deepest(
  { columns, rows }: MapGrid,
  isInside: (place: number) => boolean,
): number | null {
  let inside = new Set(
    Array.from({ length: columns * rows }, (_, place) => place).filter(isInside),
  );
  let last: number | null = null;
  while (inside.size > 0) {
    const places = [...inside];
    last = places[Math.floor(places.length / 2)];
    const around = (place: number) => {
      const column = place % columns;
      // beyond the frame counts as inside: a word may lean on it
      return [
        column === 0 || inside.has(place - 1),
        column === columns - 1 || inside.has(place + 1),
        place < columns || inside.has(place - columns),
        place >= columns * (rows - 1) || inside.has(place + columns),
      ].every(Boolean);
    };
    const next = new Set(places.filter(around));
    if (next.size === inside.size) break;
    inside = next;
  }
  return last;
}

/** Whether anything of a map can be drawn as a value. */
export function hasValues({ states }: MapGrid): boolean {
  return states.includes(VALUE);
}
