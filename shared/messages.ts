import type { Result } from './result.ts';
import type { Study } from './study.ts';
import type { ArrangementThrow } from './arrangementThrow.ts';
import type { Variant } from './variant.ts';

/** To the worker. A newer `run` supersedes an older one; `stop` ends whatever is under way. */
export type Request =
  | {
      readonly kind: 'run';
      readonly number: number;
      readonly variant: Variant;
      /** Without the studies while a handle is being dragged. */
      readonly studies: boolean;
      /** Instead of the run and the studies beside it: why it takes so long. */
      readonly why?: boolean;
      /** In order of time; none when left out. The studies are of the variant as it stands. */
      readonly throws?: readonly ArrangementThrow[];
    }
  | { readonly kind: 'stop' };

/** From the worker, each with the number of the request it answers. */
export type Reply =
  | { readonly kind: 'progress'; readonly number: number; readonly done: number }
  | { readonly kind: 'result'; readonly number: number; readonly result: Result }
  | { readonly kind: 'study'; readonly number: number; readonly study: Study }
  | { readonly kind: 'finished'; readonly number: number }
  | {
      readonly kind: 'fault';
      readonly number: number;
      readonly message: string;
      readonly details: string;
    };
