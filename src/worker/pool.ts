import type { PoolReply, PoolRequest, RunAsked, RunFound } from '../../shared/poolMessages.ts';
import { type Batch, type Hand, letGo, type PoolPort, takeOn } from './poolHand.ts';

/** How a task ended. `superseded`: a newer one of its lane took its place. `lost`: no worker could be kept alive. */
export type PoolEnding = 'finished' | 'superseded' | 'stopped' | 'lost';

/** Many runs that belong together. `J`, `A` and `P` are plain data: what they share, what sets one apart, what it gives. */
export interface Task<J, A, P> {
  /** A newer task takes the place of an older one of the same lane. */
  readonly lane: string;
  readonly job: J;
  /** The next runs, at most so many; none once all have been handed out. Their keys differ. */
  readonly take: (most: number) => readonly RunAsked<A>[];
  /** Runs that have not been handed out. */
  readonly left: () => number;
  /** Some runs are there, each once, in any order; the last of them may come after the task was stopped. */
  readonly found: (runs: readonly RunFound<P>[]) => void;
  /** @param details  why no worker could be kept alive, for those who ask */
  readonly ended: (ending: PoolEnding, details: string) => void;
}

/** A task that has not ended. */
interface Open<J, A, P> {
  readonly number: number;
  readonly task: Task<J, A, P>;
  /** Runs whose worker died, to be repeated one at a time. */
  readonly again: RunAsked<A>[];
  /** How often the worker of a run died. */
  readonly deaths: Map<number, number>;
  /** Runs that workers hold. */
  held: number;
  /** All runs have been handed out at least once. */
  isDrained: boolean;
  /** Time of one run, ms; unknown until the first have come. */
  each: number | null;
}

/**
 * Workers that share out the runs of a task, the newest task first. They are started when there is something to do. One
 * that dies, or falls silent, is replaced and its runs are repeated, each alone, so that a run that kills every worker is
 * found out and given up with a reason.
 */
export class Pool<J, A, P> {
  readonly #start: () => PoolPort;
  readonly #count: number;
  readonly #watchEvery: number;
  #hands: Hand<A>[] = [];
  #open: Open<J, A, P>[] = []; // the newest first
  #ended: Open<J, A, P>[] = []; // the latest of them: a worker may still report
  #number = 0;
  #stillborn = 0; // workers in a row that died before they said a word
  #watch: ReturnType<typeof setInterval> | undefined;

  /**
   * @param start       makes a worker; called again when one has died
   * @param count       of workers
   * @param watchEvery  between two looks whether they live, ms
   */
  constructor(start: () => PoolPort, count: number, watchEvery = WATCH) {
    this.#start = start;
    this.#count = count;
    this.#watchEvery = watchEvery;
  }

  /** Workers that are there. */
  get size(): number {
    return this.#hands.length;
  }

  /** Starts the workers that are not there yet, so that the next task finds them with their modules loaded. */
  wake(): void {
    while (this.#hands.length < this.#count && this.#hire() !== null);
  }

  /** Begins a task, before all that are open. @returns its number */
  begin(task: Task<J, A, P>): number {
    this.#number += 1;
    this.#stillborn = 0;
    const open: Open<J, A, P> = {
      number: this.#number,
      task,
      again: [],
      deaths: new Map(),
      held: 0,
      isDrained: false,
      each: null,
    };
    const older = this.#open.filter((each) => each.task.lane === task.lane);
    this.#open.unshift(open);
    for (const each of older) this.#close(each, 'superseded');
    this.#deal();
    return open.number;
  }

  /** Ends a task; what was found of it has been told and stands. */
  stop(number: number): void {
    const open = this.#open.find((each) => each.number === number);
    if (!open) return;
    this.#close(open, 'stopped');
    this.#deal();
  }

  /** Ends all tasks and all workers; the next task starts them again. */
  rest(): void {
    for (const hand of this.#hands) letGo(hand);
    this.#hands = [];
    for (const open of [...this.#open]) this.#close(open, 'stopped');
    this.#keepWatch();
  }

  #close(open: Open<J, A, P>, ending: PoolEnding, details = ''): void {
    if (!this.#open.includes(open)) return;
    this.#open = this.#open.filter((each) => each !== open);
    this.#ended = [...this.#ended, open].slice(-REMEMBERED);
    for (const hand of this.#hands) {
      const others = hand.batches.filter(({ task }) => task !== open.number);
      if (others.length === hand.batches.length) continue;
      hand.batches = others;
      this.#post(hand, { kind: 'drop', task: open.number });
    }
    open.task.ended(ending, details);
  }

  /** Gives every worker something to do and one batch more, so that it need not wait for the page. */
  #deal(): void {
    // to each in turn, so that the last batches are shared out too
    for (let most = 1; most <= AHEAD; most += 1) {
      for (let place = 0; place < this.#count; place += 1) {
        while (this.#dealTo(place, most));
      }
    }
    const isDone = ({ held, again, isDrained }: Open<J, A, P>) =>
      isDrained && held === 0 && again.length === 0;
    for (const open of this.#open.filter(isDone)) this.#close(open, 'finished');
    this.#keepWatch();
  }

  /** Gives a worker one batch more; false when it has so many already, or there is none. */
  #dealTo(place: number, most: number): boolean {
    const hand = this.#hands[place];
    const held = hand?.batches ?? [];
    if (held.length >= most || held.some(({ isAlone }) => isAlone)) return false;
    const next = this.#next(held.length === 0);
    if (next === null) return false;
    const { open, batch } = next;
    open.held += batch.runs.length;
    const able = hand ?? this.#hire();
    if (able === null) return false;
    able.batches.push(batch);
    const { job } = open.task;
    this.#post(able, { kind: 'compute', task: open.number, job, runs: batch.runs });
    return this.#hands.includes(able);
  }

  /** What is to be computed next. @param isIdle  whether it is for a worker that holds nothing */
  #next(isIdle: boolean): { open: Open<J, A, P>; batch: Batch<A> } | null {
    for (const open of this.#open) {
      const once = isIdle ? this.#once(open) : undefined;
      if (once) return { open, batch: { task: open.number, runs: [once], isAlone: true } };
      const runs = open.task.take(this.#most(open));
      if (runs.length > 0) return { open, batch: { task: open.number, runs, isAlone: false } };
      open.isDrained = true;
    }
    return null;
  }

  /** How many runs to post at once: towards the end fewer and fewer, so that the workers end together. */
  #most({ task, each }: Open<J, A, P>): number {
    if (each === null) return 1;
    const length = Math.max(each, 0.1);
    const share = Math.max(task.left() / (2 * this.#count), SMALL / length);
    return Math.max(1, Math.min(MOST, Math.round(Math.min(BATCH / length, share))));
  }

  /** The run to repeat that is least under suspicion. */
  #once({ again, deaths }: Open<J, A, P>): RunAsked<A> | undefined {
    again.sort((one, other) => (deaths.get(one.key) ?? 0) - (deaths.get(other.key) ?? 0));
    return again.shift();
  }

  #hire(): Hand<A> | null {
    try {
      const hand = takeOn<A, P>(
        this.#start(),
        (from, reply) => this.#hear(from, reply),
        (lost, details) => this.#lose(lost, details),
      );
      this.#hands.push(hand);
      return hand;
    } catch (fault) {
      this.#giveUp(String(fault));
      return null;
    }
  }

  #post(hand: Hand<A>, request: PoolRequest<J, A>): void {
    hand.port.postMessage(request);
  }

  #hear(hand: Hand<A>, reply: PoolReply<P>): void {
    hand.silent = 0;
    hand.isAwake = true;
    this.#stillborn = 0;
    if (reply.kind !== 'found') return;
    const isIt = ({ number }: Open<J, A, P>) => number === reply.task;
    const open = this.#open.find(isIt);
    if (open) {
      const keys = new Set(reply.runs.map(({ key }) => key));
      hand.batches = hand.batches.flatMap((batch) => {
        if (batch.task !== reply.task) return [batch];
        const left = batch.runs.filter(({ key }) => !keys.has(key));
        return left.length === 0 ? [] : [{ ...batch, runs: left }];
      });
      open.held -= keys.size;
      open.each = reply.spent / keys.size;
    }
    (open ?? this.#ended.find(isIt))?.task.found(reply.runs);
    this.#deal();
  }

  #lose(hand: Hand<A>, details: string): void {
    letGo(hand);
    this.#hands = this.#hands.filter((each) => each !== hand);
    if (!hand.isAwake) this.#stillborn += 1;
    if (this.#stillborn >= STILLBORN) {
      this.#giveUp(details);
      return;
    }
    hand.batches.forEach(({ task, runs }, place) => {
      const open = this.#open.find(({ number }) => number === task);
      if (!open) return;
      open.held -= runs.length;
      for (const run of runs) {
        // only what was under way may have been the reason
        if (place > 0 || !hand.isAwake || this.#survives(open, run)) open.again.push(run);
      }
    });
    this.#deal();
  }

  /** Notes that the worker of a run died; false when it has happened too often, and the run is given up. */
  #survives(open: Open<J, A, P>, { key }: RunAsked<A>): boolean {
    const deaths = (open.deaths.get(key) ?? 0) + 1;
    open.deaths.set(key, deaths);
    if (deaths < DEATHS) return true;
    open.task.found([{ key, fault: `the worker that computed it died ${DEATHS} times` }]);
    return false;
  }

  #giveUp(details: string): void {
    for (const open of [...this.#open]) this.#close(open, 'lost', details);
    this.#keepWatch();
  }

  /** Watches over the workers for as long as one of them holds something. */
  #keepWatch(): void {
    const isBusy = this.#hands.some(({ batches }) => batches.length > 0);
    if (isBusy && this.#watch === undefined) {
      this.#watch = setInterval(() => this.#look(), this.#watchEvery);
    } else if (!isBusy) {
      clearInterval(this.#watch);
      this.#watch = undefined;
    }
  }

  // looks are counted, not time: a machine that slept has looked once
  #look(): void {
    for (const hand of this.#hands) {
      hand.silent = hand.batches.length > 0 ? hand.silent + 1 : 0;
    }
    const isGone = ({ silent, isAwake }: Hand<A>) => silent > (isAwake ? SILENT : SLOW_START);
    for (const hand of this.#hands.filter(isGone)) this.#lose(hand, 'a worker fell silent');
  }
}

/** Batches a worker holds at most. */
const AHEAD = 2;
/** Work that is posted to a worker at once, ms: what a newer task waits for at most, times the batches ahead. */
const BATCH = 40;
/** Less is not posted at once, ms: messages would cost more than they save. */
const SMALL = 8;
/** Runs that are posted to a worker at once, at most. */
const MOST = 64;
/** After so many deaths of its worker a run is given up; some of them it may have shared, or not be the reason of. */
const DEATHS = 6;
/** After so many workers in a row that died unborn there is no use in starting another. */
const STILLBORN = 3;
const WATCH = 500; // ms
/** Looks without a word from a worker that holds something: 5 s of the 0.25 s within which it says that it lives. */
const SILENT = 10;
/** Of a worker that has not begun: it may still be on its way through a slow network, 30 s. */
const SLOW_START = 60;
const REMEMBERED = 4;
