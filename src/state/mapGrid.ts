/** What is known at one place of a map: not yet anything, a value, or that there is none. */
export const UNKNOWN = 0;
export const VALUE = 1;
export const NONE = 2;

/** The places of a map, row by row from the lower left. */
export interface MapGrid {
  readonly columns: number;
  readonly rows: number;
  /** The rows are words, not numbers: nothing lies between them. */
  readonly rowsAreWords: boolean;
  /** [row * columns + column]; NaN where there is none */
  readonly values: Float64Array;
  /** [row * columns + column] UNKNOWN, VALUE or NONE */
  readonly states: Uint8Array;
}

/** A grid of which nothing is known. */
export function emptyGrid(columns: number, rows: number, rowsAreWords = false): MapGrid {
  const values = new Float64Array(columns * rows).fill(Number.NaN);
  return { columns, rows, rowsAreWords, values, states: new Uint8Array(columns * rows) };
}

/**
 * Positions along an axis from coarse to fine: each list holds the one before, the first the ends and three between, the
 * last all.
 */
export function finerAndFiner(count: number, isWords = false): number[][] {
  const all = Array.from({ length: count }, (_, index) => index);
  if (isWords) return [all];
  const lists: number[][] = [];
  for (let pieces = COARSEST; pieces < count - 1; pieces *= 2) {
    lists.push(
      Array.from({ length: pieces + 1 }, (_, k) => Math.round((k * (count - 1)) / pieces)),
    );
  }
  return [...lists, all];
}

/** A level of refinement: the positions along both axes. */
export interface Level {
  readonly columns: readonly number[];
  readonly rows: readonly number[];
}

/** The levels of a grid, from coarse to fine. */
export function levelsOf({ columns, rows, rowsAreWords }: MapGrid): Level[] {
  const across = finerAndFiner(columns);
  const up = finerAndFiner(rows, rowsAreWords);
  return Array.from({ length: Math.max(across.length, up.length) }, (_, level) => ({
    columns: across[Math.min(level, across.length - 1)],
    rows: up[Math.min(level, up.length - 1)],
  }));
}

/** A position on a finer list between two of a coarser one, and how far between, 0 to 1. */
interface Between {
  readonly low: number;
  readonly high: number;
  readonly share: number;
}

/** Where each position of an axis lies on a coarser list. */
export function between(coarse: readonly number[], count: number): Between[] {
  let above = 0;
  return Array.from({ length: count }, (_, position) => {
    while (coarse[above] < position) above += 1;
    const high = coarse[above];
    const low = high === position ? position : coarse[above - 1];
    return { low, high, share: high === low ? 0 : (position - low) / (high - low) };
  });
}

/**
 * The same grid with everything filled in: what is not computed yet lies straight between its neighbours on the next coarser
 * level, and where there is no value it goes on from beside, so that lines run under what covers it. `states` says of
 * each place what its nearest computed neighbours are.
 */
export function filledGrid(grid: MapGrid): MapGrid {
  const { columns } = grid;
  const values = Float64Array.from(grid.values);
  const states = Uint8Array.from(grid.states);
  const levels = levelsOf(grid);
  levels.slice(1).forEach((level, index) => {
    const across = between(levels[index].columns, columns);
    const up = between(levels[index].rows, grid.rows);
    for (const row of level.rows) {
      for (const column of level.columns) {
        const place = row * columns + column;
        if (states[place] !== UNKNOWN) continue;
        const x = across[column];
        const y = up[row];
        const corners: [number, number][] = [
          [y.low * columns + x.low, (1 - y.share) * (1 - x.share)],
          [y.low * columns + x.high, (1 - y.share) * x.share],
          [y.high * columns + x.low, y.share * (1 - x.share)],
          [y.high * columns + x.high, y.share * x.share],
        ];
        fillFrom(place, corners, values, states);
      }
    }
  });
  runOn(grid, values);
  return { ...grid, values, states };
}

/** Weighs the corners that have a value; the heavier kind of corner says which kind the place is. */
function fillFrom(
  place: number,
  corners: readonly (readonly [number, number])[],
  values: Float64Array,
  states: Uint8Array,
): void {
  let sum = 0;
  let weight = 0;
  let none = 0;
  for (const [corner, share] of corners) {
    if (share === 0 || corner === place) continue;
    if (states[corner] === VALUE) {
      sum += share * values[corner];
      weight += share;
    } else if (states[corner] === NONE) none += share;
  }
  if (weight > 0) values[place] = sum / weight;
  if (weight > 0 || none > 0) states[place] = none > weight ? NONE : VALUE;
}

/** Lets values run on into places without one, ring by ring. */
function runOn({ columns, rows, rowsAreWords }: MapGrid, values: Float64Array): void {
  if (values.every(Number.isNaN)) return;
  for (let isOver = false; !isOver;) {
    isOver = true;
    const before = Float64Array.from(values);
    for (let place = 0; place < values.length; place += 1) {
      if (!Number.isNaN(before[place])) continue;
      const beside = besideOf(place, columns, rows, rowsAreWords)
        .map((other) => before[other])
        .filter((value) => !Number.isNaN(value));
      if (beside.length === 0) continue;
      values[place] = beside.reduce((sum, value) => sum + value, 0) / beside.length;
      isOver = false;
    }
  }
}

/** The places left, right, under and over a place. */
function besideOf(place: number, columns: number, rows: number, rowsAreWords: boolean): number[] {
  const column = place % columns;
  const row = (place - column) / columns;
  const beside: number[] = [];
  if (column > 0) beside.push(place - 1);
  if (column < columns - 1) beside.push(place + 1);
  if (rowsAreWords) return beside;
  if (row > 0) beside.push(place - columns);
  if (row < rows - 1) beside.push(place + columns);
  return beside;
}

/** Pieces of an axis on the coarsest level. */
const COARSEST = 4;
