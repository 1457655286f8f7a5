import {
  between,
  filledGrid,
  type Level,
  levelsOf,
  type MapGrid,
  NONE,
  UNKNOWN,
} from './mapGrid.ts';

/**
 * The order in which the places of a map are computed: the coarse level first, then every finer one, and within a level
 * first where the measure bends most, by what is known at that moment. In the end every place has been handed out once.
 */
export class MapOrder {
  readonly #grid: MapGrid;
  readonly #levels: readonly Level[];
  readonly #handedOut: Uint8Array;
  #level = 0;
  #left: number;
  #waiting: number[] = [];

  /** @param grid  is read again at each level, as it fills; what is known already is not handed out */
  constructor(grid: MapGrid) {
    this.#grid = grid;
    this.#levels = levelsOf(grid);
    this.#handedOut = new Uint8Array(grid.states.length);
    this.#left = grid.states.reduce((sum, state) => sum + (state === UNKNOWN ? 1 : 0), 0);
  }

  /** Places that were neither known at the start nor handed out. */
  get left(): number {
    return this.#left;
  }

  /** The next places, at most so many; none once all have been handed out. */
  take(most: number): number[] {
    const taken: number[] = [];
    while (taken.length < most) {
      // a new level is lined up only once the page asks again, and may know more
      if (this.#waiting.length === 0 && (taken.length > 0 || !this.#next())) break;
      const place = this.#waiting.shift();
      if (place === undefined || this.#handedOut[place] === 1) continue;
      this.#handedOut[place] = 1;
      if (this.#grid.states[place] === UNKNOWN) taken.push(place);
    }
    this.#left -= taken.length;
    return taken;
  }

  /** Lines up the next level that has something to hand out; false after the last. */
  #next(): boolean {
    while (this.#level < this.#levels.length) {
      const { columns, rows } = this.#levels[this.#level];
      const places = rows
        .flatMap((row) => columns.map((column) => row * this.#grid.columns + column))
        .filter((place) => this.#handedOut[place] === 0);
      const bends = this.#level === 0 ? null : bendsOf(this.#grid, this.#levels[this.#level - 1]);
      this.#waiting = bends
        ? places.sort((one, other) => bends[other] - bends[one] || one - other)
        : places;
      this.#level += 1;
      if (places.length > 0) return true;
    }
    return false;
  }
}

/** How much the measure bends beside each place, seen on a level that is known: the change of its slope, in the unit of the map. */
export function bendsOf(grid: MapGrid, level: Level): Float64Array {
  const { columns, rows, rowsAreWords } = grid;
  const { values, states } = filledGrid(grid);
  const known = values.filter(Number.isFinite);
  const range = known.length === 0 ? 0 : Math.max(...known) - Math.min(...known);
  const bends = new Float64Array(columns * rows);
  const at = (row: number, column: number) => row * columns + column;
  const bent = (one: number | null, middle: number, other: number | null) => {
    if (one === null || other === null) return 0;
    // an edge between what is possible and what is not is worth as much as the whole range
    const isEdge = (states[one] === NONE) !== (states[other] === NONE);
    const turn = Math.abs(values[one] - 2 * values[middle] + values[other]);
    return (isEdge ? range : 0) + (Number.isFinite(turn) ? turn : 0);
  };
  level.rows.forEach((row, up) => {
    level.columns.forEach((column, across) => {
      const here = at(row, column);
      const beside = (offset: number) => {
        const other = level.columns[across + offset];
        return other === undefined ? null : at(row, other);
      };
      const over = (offset: number) => {
        const other = level.rows[up + offset];
        return other === undefined ? null : at(other, column);
      };
      bends[here] =
        bent(beside(-1), here, beside(1)) + (rowsAreWords ? 0 : bent(over(-1), here, over(1)));
    });
  });
  const x = between(level.columns, columns);
  const y = between(level.rows, rows);
  return Float64Array.from(bends, (_, place) => {
    const column = x[place % columns];
    const row = y[Math.floor(place / columns)];
    return Math.max(
      bends[at(row.low, column.low)],
      bends[at(row.low, column.high)],
      bends[at(row.high, column.low)],
      bends[at(row.high, column.high)],
    );
  });
}
