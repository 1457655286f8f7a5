import type { ArrangementThrow } from '../../shared/arrangementThrow.ts';
import type { Reply, Request } from '../../shared/messages.ts';
import type { Result } from '../../shared/result.ts';
import type { SoFar, Study } from '../../shared/study.ts';
import type { Variant } from '../../shared/variant.ts';
import { buffersOf } from './buffersOf.ts';

/** Yields the share done, and where it is drawn before it is finished, what is known so far. */
export type StudyOf = (variant: Variant) => Generator<number | SoFar, Study>;

/** What the worker can do. Each generator yields the share done, 0 to 1, and returns what it found. */
export interface Work {
  readonly run: (variant: Variant) => Generator<number, Result>;
  /** A run in whose course the switch is thrown; fetched when first asked for. */
  readonly thrown: () => Promise<
    (variant: Variant, throws: readonly ArrangementThrow[]) => Generator<number, Result>
  >;
  /** One after the other, when the request asks for them; fetched once the first result stands. */
  readonly studies: () => Promise<readonly StudyOf[]>;
  readonly studyCount: number;
  /** The same, when the request asks why. */
  readonly why: () => Promise<readonly StudyOf[]>;
  readonly whyCount: number;
}

/** How the handler reaches the world, so that a test can stand in for it. */
export interface Line {
  readonly post: (reply: Reply, transfer: Transferable[]) => void;
  /** Resolves when messages that have arrived have been handed over. */
  readonly tick: () => Promise<void>;
  /** ms */
  readonly now: () => number;
}

/**
 * Answers requests one at a time. The newest wins: an older one is abandoned between two slices.
 * @returns what to call with each request as it arrives
 */
export function answering(work: Work, line: Line): (request: Request) => void {
  let newest: Extract<Request, { kind: 'run' }> | null = null;
  let isWorking = false;

  async function answerAll(): Promise<void> {
    isWorking = true;
    while (newest) {
      // requests that came in one burst are all read before any work is done for the first
      await line.tick();
      const request = newest;
      if (!request) break;
      await answer(request);
      if (newest === request) newest = null;
    }
    isWorking = false;
  }

  async function answer(request: Extract<Request, { kind: 'run' }>): Promise<void> {
    const { number, variant, why = false, throws = [] } = request;
    const isStale = () => newest !== request;
    const runs = why ? 0 : 1;
    const parts = runs + (why ? work.whyCount : request.studies ? work.studyCount : 0);
    try {
      if (!why) {
        const run = throws.length > 0 ? (await work.thrown())(variant, throws) : work.run(variant);
        const result = await inSlices(run, number, 0, parts, isStale);
        if (!result) return;
        line.post({ kind: 'result', number, result }, buffersOf(result));
      }
      const studies = why ? await work.why() : request.studies ? await work.studies() : [];
      for (const [done, study] of studies.entries()) {
        const found = await inSlices(study(variant), number, runs + done, parts, isStale);
        if (!found) return;
        line.post({ kind: 'study', number, study: found }, buffersOf(found));
      }
      line.post({ kind: 'finished', number }, []);
    } catch (fault) {
      const { message, stack } = fault instanceof Error ? fault : new Error(String(fault));
      line.post({ kind: 'fault', number, message, details: stack ?? message }, []);
    }
  }

  /** Runs to the end, or gives null when a newer request makes this one stale. */
  async function inSlices<T>(
    steps: Generator<number | SoFar, T>,
    number: number,
    part: number,
    parts: number,
    isStale: () => boolean,
  ): Promise<T | null> {
    let since = line.now();
    for (;;) {
      const step = steps.next();
      if (step.done) return step.value;
      const { done, study } = typeof step.value === 'number' ? untold(step.value) : step.value;
      if (study !== null) line.post({ kind: 'study', number, study }, []);
      else if (line.now() - since < SLICE) continue;
      line.post({ kind: 'progress', number, done: (part + done) / parts }, []);
      await line.tick();
      if (isStale()) return null;
      since = line.now();
    }
  }

  return (request) => {
    newest = request.kind === 'run' ? request : null;
    if (newest && !isWorking) void answerAll();
  };
}

const untold = (done: number) => ({ done, study: null });

/** Work between two looks at the messages, ms; half a frame at 60 frames a second. */
const SLICE = 8;
