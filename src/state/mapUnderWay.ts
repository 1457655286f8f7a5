import { type Asked, askedFirst, askedRow } from '../../shared/asked.ts';
import { comparedApart } from '../../shared/comparedMeasures.ts';
import { type Grid, type Override, overridesAt, pointCount } from '../../shared/grid.ts';
import type { Gap, Point } from '../../shared/point.ts';
import type { RunAsked, RunFound } from '../../shared/poolMessages.ts';
import { type Cell, contentOf, type PointCache } from '../worker/pointCache.ts';
import { emptyGrid, levelsOf, type MapGrid, NONE, UNKNOWN, VALUE } from './mapGrid.ts';
import { MapOrder } from './mapOrder.ts';

/** A map to be computed: one axis, or the upward one and then the one across. The first of its measures is drawn. */
export interface MapAsked {
  readonly grid: Grid;
  /** The upward axis is one of words. */
  readonly rowsAreWords: boolean;
}

/** A map as far as it is computed. */
export interface FoundMap extends MapAsked {
  readonly measure: Asked;
  /** Of the measure, SI. */
  readonly values: MapGrid;
  /** [place] why there is no value; null where there is one, or nothing is known yet */
  readonly gaps: readonly (Gap | null)[];
  /** Places that are known, of so many. */
  readonly done: number;
  readonly of: number;
}

/** A measure and those that come from the same run, which cost nothing more; recovery alone ends its run early. */
export function askedTogether(measure: Asked): readonly Asked[] {
  if (measure === 'recovery') return [measure];
  const { of } = askedRow(measure);
  const all = new Set([measure, ...askedFirst, ...comparedApart]);
  return [...all].filter((key) => askedRow(key).of === of);
}

/** Two maps are one where this is: of the settings that are mapped it does not matter what the variant says. */
export function mapSignature({ grid, rowsAreWords }: MapAsked): string {
  const { base, axes, measures } = grid;
  const content = contentOf(
    base,
    axes.map(({ path }) => path),
  );
  return JSON.stringify([content(axes.map(() => '…')), axes, measures[0], rowsAreWords]);
}

/** A map of which nothing is known yet. */
export function emptyMap(asked: MapAsked): FoundMap {
  const { axes, measures } = asked.grid;
  const of = pointCount(asked.grid);
  const rows = axes.length > 1 ? axes[0].values.length : 1;
  return {
    ...asked,
    measure: measures[0],
    values: emptyGrid(of / rows, rows, asked.rowsAreWords),
    gaps: new Array(of).fill(null),
    done: 0,
    of,
  };
}

/** A map while it is computed. What is remembered of it is there from the start. */
export class MapUnderWay {
  readonly #asked: MapAsked;
  readonly #cache: PointCache;
  readonly #values: MapGrid;
  readonly #gaps: (Gap | null)[];
  readonly #order: MapOrder;
  readonly #coarse: readonly number[];
  readonly #contentAt: (place: number) => string;
  #done = 0;

  constructor(asked: MapAsked, cache: PointCache) {
    const { grid } = asked;
    const { values, gaps } = emptyMap(asked);
    this.#asked = asked;
    this.#cache = cache;
    this.#values = values;
    this.#gaps = [...gaps];
    const { columns } = values;
    const [level] = levelsOf(this.#values);
    this.#coarse = level.rows.flatMap((row) => level.columns.map((each) => row * columns + each));
    const content = contentOf(
      grid.base,
      grid.axes.map(({ path }) => path),
    );
    this.#contentAt = (place) => content(overridesAt(grid, place).map(([, value]) => value));
    for (let place = 0; place < this.of; place += 1) {
      const known = cache.find(this.#contentAt(place), grid.measures[0]);
      if (known) this.#set(place, known);
    }
    this.#order = new MapOrder(this.#values);
  }

  get done(): number {
    return this.#done;
  }

  get of(): number {
    return this.#gaps.length;
  }

  /** Points that were not handed out. */
  get left(): number {
    return this.#order.left;
  }

  /** Whether there is a picture: the coarse level is there. */
  get isDrawable(): boolean {
    return this.#coarse.every((place) => this.#values.states[place] !== UNKNOWN);
  }

  /** The next points to compute. */
  take(most: number): RunAsked<readonly Override[]>[] {
    const { grid } = this.#asked;
    return this.#order.take(most).map((key) => ({ key, asked: overridesAt(grid, key) }));
  }

  /** Takes in what was found, and remembers it. */
  put(runs: readonly RunFound<Point>[]): void {
    const { measures } = this.#asked.grid;
    for (const run of runs) {
      const cells = cellsOf(run, measures);
      if ('point' in run) this.#cache.keep(this.#contentAt(run.key), cells);
      const cell = cells.get(measures[0]);
      if (cell) this.#set(run.key, cell);
    }
  }

  /** What is known by now; it does not change any more. */
  picture(): FoundMap {
    const { values, states } = this.#values;
    return {
      ...this.#asked,
      measure: this.#asked.grid.measures[0],
      values: { ...this.#values, values: values.slice(), states: states.slice() },
      gaps: [...this.#gaps],
      done: this.#done,
      of: this.of,
    };
  }

  #set(place: number, { value, gap }: Cell): void {
    const { values, states } = this.#values;
    if (states[place] === UNKNOWN) this.#done += 1;
    states[place] = value === null ? NONE : VALUE;
    values[place] = value ?? Number.NaN;
    this.#gaps[place] = gap;
  }
}

/** What a run gave for each of its measures. */
export function cellsOf(run: RunFound<Point>, measures: readonly Asked[]): Map<Asked, Cell> {
  return new Map(
    measures.map((measure, index) => [
      measure,
      'point' in run
        ? { value: run.point.values[index], gap: run.point.gaps[index] }
        : {
            value: null,
            gap: { kind: 'endedEarly', outcome: null, sentences: [failed(run.fault)] },
          },
    ]),
  );
}

const failed = (fault: string) => `It could not be computed: ${fault}.`;
