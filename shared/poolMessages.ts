/** One run that is asked of a pool of workers: its number within its task, and what sets it apart from the others. */
export interface RunAsked<A> {
  readonly key: number;
  readonly asked: A;
}

/** To a worker of a pool. `job` is what all runs of a task have in common. */
export type PoolRequest<J, A> =
  | {
      readonly kind: 'compute';
      readonly task: number;
      readonly job: J;
      readonly runs: readonly RunAsked<A>[];
    }
  | {
      /** Abandons whatever is left of a task. */
      readonly kind: 'drop';
      readonly task: number;
    };

/** What one run gave, or how it failed. */
export type RunFound<P> =
  { readonly key: number; readonly point: P } | { readonly key: number; readonly fault: string };

/** From a worker of a pool. `busy` says only that it lives, while one run takes long. */
export type PoolReply<P> =
  | { readonly kind: 'awake' }
  | { readonly kind: 'busy' }
  | {
      readonly kind: 'found';
      readonly task: number;
      readonly runs: readonly RunFound<P>[];
      /** Spent on them, ms. */
      readonly spent: number;
    };
