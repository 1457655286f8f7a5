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
  #wanted = new Map<Who, ReadonlyMap<string, Wanted>>();
  /** Numbers of the tasks that have not ended, by run. */
  #underWay = new Map<string, number>();

  constructor(pool: PointPool, cache = new PointCache()) {
    this.pool = pool;
    this.cache = cache;
  }

  /** A measure of a variant, whatever its name; null where it is not known yet. */
  of(variant: Variant, measure: Asked): Cell | null {
    void this.#news;
    const content = contentAsItStands(variant);
    return this.cache.find(content, measure) ?? this.#failed.get(content)?.get(measure) ?? null;
  }

  /** Computes what is missing of some variants, and gives up what one had wanted before and nobody wants any more. */
  want(who: Who, variants: readonly Variant[], measures: readonly Asked[]): void {
    const missing = this.#missing(variants, measures);
    this.#wanted.set(who, missing);
    for (const [run, number] of [...this.#underWay]) {
      if (![...this.#wanted.values()].some((runs) => runs.has(run))) this.pool.stop(number);
    }
    // the pool takes up the newest first
    for (const [run, each] of [...missing].reverse()) {
      if (!this.#underWay.has(run)) this.#begin(run, each);
    }
    this.#news += 1;
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

  #begin(run: string, { content, base, asked }: Wanted): void {
    const runs = [{ key: 0, asked: [] }];
    let isOver = false;
    for (const key of asked) this.#failed.get(content)?.delete(key);
    const fail = (fault: string) => {
      const cells = cellsOf({ key: 0, fault }, asked);
      this.#failed.set(content, new Map([...(this.#failed.get(content) ?? []), ...cells]));
    };
    const number = this.pool.begin({
      lane: run,
      job: { base, asked },
      take: (most) => runs.splice(0, most),
      found: ([found]) => {
        if ('point' in found) this.cache.keep(content, cellsOf(found, asked));
        else fail(found.fault);
        this.#news += 1;
      },
      ended: (ending) => {
        isOver = true;
        this.#underWay.delete(run);
        if (ending !== 'lost') return;
        fail('no worker could be kept alive');
        this.#news += 1;
      },
    });
    // where no worker can be started, it ends before it has a number
    if (!isOver) this.#underWay.set(run, number);
  }
}

const contentAsItStands = (variant: Variant): string => contentOf(variant, [])([]);
