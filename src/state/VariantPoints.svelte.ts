import type { Asked } from '../../shared/asked.ts';
import type { Variant } from '../../shared/variant.ts';
import { type Cell, contentOf, PointCache } from '../worker/pointCache.ts';
import type { PointPool } from '../worker/pointPool.ts';
import { askedTogether, cellsOf } from './mapUnderWay.ts';

/** A run that is wanted: of one variant, for measures that come from the same run. */
interface Wanted {
  readonly content: string;
  readonly base: Variant;
  readonly asked: readonly Asked[];
}

/** Who wants something: the table of the variants, or the map on which they stand. */
type Who = 'table' | 'map';

/** Measures of variants as they stand that take a run of a pool; what was computed once is remembered. */
export class VariantPoints {
  readonly pool: PointPool;
  readonly cache: PointCache;
  /** Rises when there is something new to read. */
  #news = $state(0);
  /** What could not be computed, by content; tried again when it is next wanted. */
  #failed = new Map<string, Map<Asked, Cell>>();
  /** Runs that are not there yet, in the order in which they are wanted; those of the map go first. */
  readonly #wanted: Readonly<Record<Who, Map<string, Wanted>>> = {
    map: new Map(),
    table: new Map(),
  };
  /** Numbers of the tasks that have not ended, by run. */
  #underWay = new Map<string, number>();
  readonly #most: number;

  /** @param most  runs that are handed to the pool at once: it takes up the newest first, and these have an order */
  constructor(pool: PointPool, cache = new PointCache(), most = 2) {
    this.pool = pool;
    this.cache = cache;
    this.#most = most;
  }

  /** A measure of a variant, whatever its name; null where it is not known yet. */
  of(variant: Variant, measure: Asked): Cell | null {
    void this.#news;
    const content = contentAsItStands(variant);
    return this.cache.find(content, measure) ?? this.#failed.get(content)?.get(measure) ?? null;
  }

  /** Computes what is missing of some variants, and gives up what one had wanted before and nobody wants any more. */
  want(who: Who, variants: readonly Variant[], measures: readonly Asked[]): void {
    this.#wanted[who].clear();
    for (const [run, each] of this.#missing(variants, measures)) this.#wanted[who].set(run, each);
    const all = this.#all();
    for (const [run, number] of [...this.#underWay]) {
      if (!all.has(run)) this.pool.stop(number);
    }
    this.#deal();
    this.#news += 1;
  }

  #all(): Map<string, Wanted> {
    return new Map([...this.#wanted.map, ...this.#wanted.table]);
  }

  #deal(): void {
    for (const [run, each] of this.#all()) {
      if (this.#underWay.size >= this.#most) break;
      // the one before may have found that nothing can be computed
      if (this.#all().has(run) && !this.#underWay.has(run)) this.#begin(run, each);
    }
  }

  /** The runs that are not remembered: of all variants for the first measure, then for what another run gives. */
  #missing(variants: readonly Variant[], measures: readonly Asked[]): Map<string, Wanted> {
    const wanted = new Map<string, Wanted>();
    for (const measure of measures) {
      const asked = askedTogether(measure).toSorted(); // one run, whichever of its measures is wanted
      for (const variant of variants) {
        const content = contentAsItStands(variant);
        if (this.cache.find(content, measure)) continue;
        const base = $state.snapshot(variant) as Variant;
        wanted.set(`${asked.join()} ${content}`, { content, base, asked });
      }
    }
    return wanted;
  }

  #begin(run: string, wanted: Wanted): void {
    const { content, base, asked } = wanted;
    const runs = [{ key: 0, asked: [] }];
    for (const key of asked) this.#failed.get(content)?.delete(key);
    this.#underWay.set(run, Number.NaN); // it may end before it has a number, where no worker can be started
    const number = this.pool.begin({
      lane: run,
      job: { base, asked },
      take: (most) => runs.splice(0, most),
      left: () => runs.length,
      found: ([found]) => {
        this.#isThere(run);
        if ('point' in found) this.cache.keep(content, cellsOf(found, asked));
        else this.#fail(wanted, found.fault);
        this.#news += 1;
      },
      ended: (ending) => {
        this.#underWay.delete(run);
        if (ending === 'finished') this.#deal();
        if (ending === 'lost') this.#lose();
      },
    });
    if (this.#underWay.has(run)) this.#underWay.set(run, number);
  }

  #isThere(run: string): void {
    for (const runs of Object.values(this.#wanted)) runs.delete(run);
  }

  #fail({ content, asked }: Wanted, fault: string): void {
    const cells = cellsOf({ key: 0, fault }, asked);
    this.#failed.set(content, new Map([...(this.#failed.get(content) ?? []), ...cells]));
  }

  /** No worker can be kept alive: nothing that is wanted will come. */
  #lose(): void {
    for (const [run, each] of this.#all()) {
      this.#isThere(run);
      this.#fail(each, 'no worker could be kept alive');
    }
    this.#news += 1;
  }
}

const contentAsItStands = (variant: Variant): string => contentOf(variant, [])([]);
