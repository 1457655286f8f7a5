import { problemsOf } from '../../shared/problems.ts';
import type { Result } from '../../shared/result.ts';
import type { Variant } from '../../shared/variant.ts';
import { type Port, Run } from './Run.svelte.ts';
import { settingsText } from './settingsText.ts';

/** The results of all variants of a bench, by a worker of its own; what was found once is kept. */
export class VariantRuns {
  #found = $state.raw<ReadonlyMap<string, Result>>(new Map());
  #run: Run;
  #asked = 0;

  /** @param start  makes the worker, when something is to be computed */
  constructor(start: () => Port) {
    this.#run = new Run(start);
  }

  get fault() {
    return this.#run.fault;
  }

  /** The result of a variant, whatever its name; null where there is none yet. */
  of(variant: Variant): Result | null {
    return this.#found.get(settingsText(variant)) ?? null;
  }

  /** Computes what is missing, one after the other; the newest list counts. Settings that cannot be run are left out. */
  async want(variants: readonly Variant[]): Promise<void> {
    this.#asked += 1;
    const asked = this.#asked;
    for (const variant of variants) {
      if (asked !== this.#asked) return;
      if (this.of(variant) !== null || problemsOf(variant).length > 0) continue;
      const ending = await this.#run.request(variant, false);
      if (ending === 'lost') return;
      const { result } = this.#run;
      if (ending === 'finished' && result !== null) this.#keep(variant, result);
    }
  }

  startAgain(variants: readonly Variant[]): void {
    this.#run.startAgain(false);
    void this.want(variants);
  }

  dispose(): void {
    this.#run.dispose();
  }

  #keep(variant: Variant, result: Result): void {
    const kept = [...this.#found, [settingsText(variant), result] as const];
    this.#found = new Map(kept.slice(-MOST));
  }
}

const MOST = 24; // results: some 200 kB each
