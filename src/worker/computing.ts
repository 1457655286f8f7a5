import type { PoolReply, PoolRequest, RunFound } from '../../shared/poolMessages.ts';

/** How a worker of a pool reaches the world, so that a test can stand in for it. */
export interface PoolLine<P> {
  readonly post: (reply: PoolReply<P>) => void;
  /** Resolves when messages that have arrived have been handed over. */
  readonly tick: () => Promise<void>;
  /** ms */
  readonly now: () => number;
}

/**
 * Computes runs one after the other as they are asked for, and posts them several at a time, so that the page is not kept
 * busy by messages. What belongs to a task that is dropped is abandoned between two slices; what is finished is still posted.
 * @param compute  yields so that it can be interrupted, and returns what it found
 * @returns what to call with each request as it arrives
 */
export function computing<J, A, P>(
  compute: (job: J, asked: A) => Generator<unknown, P>,
  line: PoolLine<P>,
): (request: PoolRequest<J, A>) => void {
  type Batch = Extract<PoolRequest<J, A>, { kind: 'compute' }>;
  let waiting: Batch[] = [];
  let underWay: Batch | null = null;
  let isWorking = false;
  let since = 0; // the last look at the messages
  let heard = 0; // the last post

  async function work(): Promise<void> {
    isWorking = true;
    since = heard = line.now();
    for (;;) {
      const batch = waiting.shift();
      if (!batch) break;
      underWay = batch;
      await workOff(batch);
    }
    underWay = null;
    isWorking = false;
  }

  async function workOff(batch: Batch): Promise<void> {
    let done: RunFound<P>[] = [];
    let from = line.now();
    const hand = () => {
      const now = line.now();
      if (done.length > 0) {
        line.post({ kind: 'found', task: batch.task, runs: done, spent: now - from });
      }
      done = [];
      from = heard = now;
    };
    for (const { key, asked } of batch.runs) {
      const found = await inSlices(batch, key, asked);
      if (found !== null) done.push(found);
      if (found === null || (await isDropped(batch))) break;
      if (line.now() - heard >= TOGETHER) hand();
    }
    hand();
  }

  /** Runs to the end, or gives null when its task has been dropped. */
  async function inSlices(batch: Batch, key: number, asked: A): Promise<RunFound<P> | null> {
    try {
      const steps = compute(batch.job, asked);
      for (;;) {
        const step = steps.next();
        if (step.done) return { key, point: step.value };
        if (await isDropped(batch)) return null;
      }
    } catch (fault) {
      return { key, fault: fault instanceof Error ? fault.message : String(fault) };
    }
  }

  /** Looks at the messages once a slice. */
  async function isDropped(batch: Batch): Promise<boolean> {
    const now = line.now();
    if (now - since >= SLICE) {
      if (now - heard >= BREATH) {
        heard = now;
        line.post({ kind: 'busy' });
      }
      await line.tick();
      since = line.now();
    }
    return underWay !== batch;
  }

  return (request) => {
    if (request.kind === 'drop') {
      waiting = waiting.filter(({ task }) => task !== request.task);
      if (underWay?.task === request.task) underWay = null;
      return;
    }
    waiting.push(request);
    if (!isWorking) void work();
  };
}

/** Work between two looks at the messages, ms; half a frame at 60 frames a second. */
const SLICE = 8;
/** Runs that are finished within this time are posted together, ms: the page redraws no more often than that. */
const TOGETHER = 40;
/** Without a word for longer than this a worker says that it lives, ms. */
const BREATH = 250;
