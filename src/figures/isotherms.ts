import { contours } from 'd3';
import type { Trace } from '../../shared/result.ts';
import { profileAt } from '../../shared/sampleAt.ts';
import type { Celsius, Metres, Seconds } from '../../shared/units.ts';

/** The part of the field at or above one temperature. */
export interface Isotherm {
  readonly temperature: Celsius;
  /** Path data, pixels. */
  readonly path: string;
}

/** A temperature printed on its line, pixels. */
export interface IsothermLabel {
  readonly temperature: Celsius;
  readonly x: number;
  readonly y: number;
}

/** Temperatures of the store on an even grid of moments, with its place on paper. */
export interface Field {
  /** [column][layer] °C */
  readonly columns: readonly (readonly Celsius[])[];
  readonly x: (column: number) => number;
  /** Height above the base to pixels. */
  readonly y: (height: Metres) => number;
  readonly height: Metres;
}

const columnCount = 96;

/**
 * The field from the start of the run to a moment.
 * @param end  last moment, s
 * @param x    seconds to pixels
 * @param y    height to pixels
 */
export function fieldOf(
  trace: Trace,
  height: Metres,
  end: Seconds,
  x: (seconds: number) => number,
  y: (height: number) => number,
): Field {
  const at = (column: number) => (column / (columnCount - 1)) * end;
  const columns = Array.from({ length: columnCount }, (_, column) => profileAt(trace, at(column)));
  return { columns, x: (column) => x(at(column)), y, height };
}

/** Regions at or above each temperature, one within the other from the coldest up. */
export function isotherms(field: Field, temperatures: readonly Celsius[]): Isotherm[] {
  const layers = field.columns[0].length;
  const [wide, tall] = [field.columns.length + 2, layers + 2];
  // the rim repeats the edge, so that the closing side of a region lies outside the frame
  const grid = new Array<number>(wide * tall);
  for (let row = 0; row < tall; row += 1) {
    const layer = Math.min(layers - 1, Math.max(0, row - 1));
    for (let column = 0; column < wide; column += 1) {
      const from = Math.min(field.columns.length - 1, Math.max(0, column - 1));
      grid[row * wide + column] = field.columns[from][layer];
    }
  }
  const place = ([column, row]: readonly number[]) => {
    const x = field.x(column - 1.5);
    const y = field.y(((row - 1) / layers) * field.height);
    return `${x.toFixed(1)} ${y.toFixed(1)}`;
  };
  return contours()
    .size([wide, tall])
    .thresholds([...temperatures])(grid)
    .map(({ value, coordinates }) => ({
      temperature: value,
      path: coordinates
        .flatMap((rings) => rings.map((ring) => `M${ring.map(place).join('L')}Z`))
        .join(''),
    }));
}

/**
 * Where the temperature of each line is printed: where it passes three quarters of the height, or
 * else two thirds of the time; left out where it would touch the one before.
 */
export function isothermLabels(
  field: Field,
  temperatures: readonly Celsius[],
  right: number,
): IsothermLabel[] {
  const layers = field.columns[0].length;
  const placed: IsothermLabel[] = [];
  const isClear = (x: number, y: number) =>
    x >= field.x(0) + 14 &&
    x <= right - 14 &&
    y >= field.y(field.height) + 10 &&
    y <= field.y(0) - 10 &&
    placed.every((label) => Math.abs(label.x - x) > 30 || Math.abs(label.y - y) > 18);
  for (const temperature of temperatures) {
    const upright = crossing(
      field.columns.map((column) => column[Math.floor(layers * 0.72)]),
      temperature,
    );
    const across = crossing(field.columns[Math.floor(field.columns.length * 0.66)], temperature);
    const spots: [number, number][] = [];
    if (upright !== null) spots.push([field.x(upright), field.y(field.height * 0.72)]);
    if (across !== null) {
      const height = ((across + 0.5) / layers) * field.height;
      spots.push([field.x(Math.floor(field.columns.length * 0.66)), field.y(height)]);
    }
    const spot = spots.find(([x, y]) => isClear(x, y));
    if (spot !== undefined) placed.push({ temperature, x: spot[0], y: spot[1] });
  }
  return placed;
}

/** Place of the first crossing upwards, between two entries. */
function crossing(values: readonly number[], level: number): number | null {
  for (let index = 1; index < values.length; index += 1) {
    const [from, to] = [values[index - 1], values[index]];
    if (from < level && to >= level) return index - 1 + (level - from) / (to - from);
  }
  return null;
}
