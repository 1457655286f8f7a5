import { KnownExamples } from './KnownExamples.svelte.ts';
import { browserKeep, type Keep } from './keep.ts';
import { holdsBench, type Kept, readBench } from './keptBench.ts';

/** What is known before anything is drawn. */
export interface Visit {
  readonly keep: Keep;
  readonly kept: Kept;
  readonly examples: KnownExamples;
}

/** Finds what the last visit left. What reads it is fetched only where there is something to read. */
export async function beginVisit(keep = browserKeep()): Promise<Visit> {
  const examples = new KnownExamples();
  if (!holdsBench(keep)) return { keep, kept: { kind: 'nothing' }, examples };
  // it may be any of the examples; what is said of it would move the page if it came late
  const [kept] = await Promise.all([readBench(keep), examples.fetch()]);
  return { keep, kept, examples };
}
