import type { Variant } from '../../shared/variant.ts';
import { PointCache } from '../worker/pointCache.ts';
import type { PointPool } from '../worker/pointPool.ts';
import type { PoolEnding } from '../worker/pool.ts';
import { type FoundMap, type MapAsked, MapUnderWay } from './mapUnderWay.ts';

export type { Cell } from '../worker/pointCache.ts';

/** The maps of a page: the newest that was asked for, coarse at first, then finer. What was computed once is remembered. */
export class MapRun {
  /** The latest that can be drawn: it has its coarse level, or is all there will be of it. */
  found = $state.raw<FoundMap | null>(null);
  /** `found` belongs to what was asked before. */
  isStale = $state(false);
  /** Share of the points that are there, 0 to 1; null while there is nothing to wait for, or not yet long enough to say so. */
  progress = $state<number | null>(null);
  /** How the latest ended; null while it is under way, and before the first. */
  ending = $state<PoolEnding | null>(null);
  /** Why no worker could be kept alive. */
  details = $state('');

  readonly #pool: PointPool;
  readonly #cache: PointCache;
  #newest: MapUnderWay | null = null;
  #number = 0;
  #shownAt = Number.NEGATIVE_INFINITY;
  #redraw: ReturnType<typeof setTimeout> | undefined;
  #patience: ReturnType<typeof setTimeout> | undefined;

  constructor(pool: PointPool, cache = new PointCache()) {
    this.#pool = pool;
    this.#cache = cache;
  }

  /** A map may be asked for soon: the workers are started. */
  wake(): void {
    this.#pool.wake();
  }

  /** Computes a map, in place of any that is under way; what of it is remembered is there at once. */
  ask(asked: MapAsked): void {
    const map = new MapUnderWay($state.snapshot(asked) as MapAsked, this.#cache);
    this.#settle();
    this.#newest = map;
    this.ending = null;
    this.isStale = this.found !== null;
    if (map.isDrawable) this.#show(map);
    if (map.done < map.of) this.#patience = setTimeout(() => this.#tell(map), QUIET);
    const { base, measures } = asked.grid;
    this.#number = this.#pool.begin({
      lane: 'map',
      job: { base: $state.snapshot(base) as Variant, asked: [...measures] },
      take: (most) => map.take(most),
      left: () => map.left,
      found: (runs) => {
        map.put(runs);
        if (this.#newest === map && map.isDrawable) this.#showSoon(map);
      },
      ended: (ending, details) => {
        if (this.#newest !== map) return;
        this.#settle();
        if (map.done > 0) this.#show(map);
        this.ending = ending;
        this.details = details;
      },
    });
  }

  /** Ends the map that is under way; the points that are there stay. */
  stop(): void {
    this.#pool.stop(this.#number);
  }

  /** The page is left: everything ends, the workers too. */
  rest(): void {
    this.#pool.rest();
  }

  #show(map: MapUnderWay): void {
    clearTimeout(this.#redraw);
    this.#redraw = undefined;
    this.#shownAt = performance.now();
    this.found = map.picture();
    this.isStale = false;
    if (this.progress !== null) this.#tell(map);
  }

  /**
   * Draws no more often than the eye follows, or drawing would keep the page busy; and by itself, not while a worker is heard,
   * so that what is pressed meanwhile is answered in between.
   */
  #showSoon(map: MapUnderWay): void {
    const wait = this.#shownAt + REDRAW - performance.now();
    this.#redraw ??= setTimeout(() => this.#show(map), Math.max(0, wait));
  }

  #tell({ done, of }: MapUnderWay): void {
    this.progress = done / of;
  }

  #settle(): void {
    clearTimeout(this.#patience);
    clearTimeout(this.#redraw);
    this.#redraw = undefined;
    this.progress = null;
  }
}

/** Nothing is said of a wait shorter than this, ms. */
const QUIET = 200;
/** Between two pictures of a map that is under way, ms. */
const REDRAW = 250;
