import type { ArrangementThrow } from '../../shared/arrangementThrow.ts';
import type { Reply, Request } from '../../shared/messages.ts';
import type { Result } from '../../shared/result.ts';
import type { Study } from '../../shared/study.ts';
import type { Variant } from '../../shared/variant.ts';

/** The latest study of each kind; null until the first has come. */
export type Studies = { readonly [K in Study['kind']]: Extract<Study, { kind: K }> | null };

/** Before any study has come. */
export const noStudies: Studies = {
  placement: null,
  differential: null,
  arrangement: null,
  coolDown: null,
  delivery: null,
  day: null,
  minutes: null,
  changes: null,
  spread: null,
};

/** How a request ended. `superseded`: a newer one took its place. `lost`: the worker died. */
export type Ending = 'finished' | 'superseded' | 'stopped' | 'lost';

/** Our mistake, for the edge of the app: one sentence, and details to copy. */
export interface Fault {
  readonly message: string;
  readonly details: string;
}

/** As much of a worker as is needed. */
export type Port = Pick<Worker, 'postMessage' | 'terminate'> & {
  onmessage: ((event: MessageEvent) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  onmessageerror: ((event: MessageEvent) => void) | null;
};

interface Asked {
  readonly variant: Variant;
  readonly studies: boolean;
  readonly throws: readonly ArrangementThrow[];
  readonly settle: (ending: Ending) => void;
}

/** The worker and what it found last. Only the newest request counts. */
export class Run {
  result = $state.raw<Result | null>(null);
  /**
   * The latest result that was asked for with its studies: what everything but the drawing and the curves shows. It stays
   * while a handle is dragged, and follows in a task of its own, so that the curve is painted first.
   */
  steady = $state.raw<Result | null>(null);
  /** What stood when a drag began, to see what changed. */
  before = $state.raw<Result | null>(null);
  studies = $state.raw<Studies>(noStudies);
  /** The studies belong to an earlier result. */
  studiesAreStale = $state(false);
  /** Those that have come since, finished or so far. */
  #fresh = $state.raw<ReadonlySet<Study['kind']>>(new Set());
  /** 0 to 1; null while there is nothing to wait for, or not yet long enough to say so. */
  progress = $state<number | null>(null);
  fault = $state.raw<Fault | null>(null);

  #start: () => Port;
  #why: boolean;
  #port: Port | null = null;
  #number = 0;
  #sentAt = 0;
  #underWay: Asked | null = null;
  #awaitsResult = false;
  #next: Asked | null = null;
  #latest: Asked | null = null;
  #hurry: ReturnType<typeof setTimeout> | undefined;
  #patience: ReturnType<typeof setTimeout> | undefined;
  #held: ReturnType<typeof setTimeout> | undefined;

  /**
   * @param start  makes the worker; called again when one has died
   * @param why    asks each time why it takes so long, instead of for the run and what is beside it
   */
  constructor(start: () => Port, why = false) {
    this.#start = start;
    this.#why = why;
  }

  /** Starts the worker before there is anything to ask. */
  wake(): void {
    this.#attempt(() => {});
  }

  /** Whether a study belongs to an earlier request. */
  isStale(kind: Study['kind']): boolean {
    return this.studiesAreStale && !this.#fresh.has(kind);
  }

  /**
   * Asks for a run, in place of any that was asked for before.
   * @param studies  also the studies beside the bench; left out while a handle is being dragged
   * @param throws   of the switch between arrangements, in order of time
   */
  request(
    variant: Variant,
    studies: boolean,
    throws: readonly ArrangementThrow[] = [],
  ): Promise<Ending> {
    return new Promise((settle) => {
      const asked = {
        variant: $state.snapshot(variant) as Variant,
        studies,
        throws: $state.snapshot(throws) as readonly ArrangementThrow[],
        settle,
      };
      this.#latest = asked;
      this.#next?.settle('superseded');
      this.#next = null;
      if (this.fault) {
        settle('lost');
      } else if (this.#awaitsResult && performance.now() - this.#sentAt < HOLD) {
        // a short run is let finish, or a fast drag would never show a curve
        this.#next = asked;
        clearTimeout(this.#hurry);
        this.#hurry = setTimeout(() => this.#sendNext(), HOLD);
      } else {
        this.#send(asked);
      }
    });
  }

  /** Keeps the present result as the one before, until `release`; shown once the first move has been painted. */
  hold(): void {
    const held = this.result;
    clearTimeout(this.#held);
    this.#held = setTimeout(() => {
      this.before = held;
    });
  }

  release(): void {
    clearTimeout(this.#held);
    this.before = null;
  }

  /** Ends whatever is under way; what was found stays. */
  stop(): void {
    if (this.#port) this.#post({ kind: 'stop' });
    this.#settleAll('stopped');
  }

  /** After the worker died: a new one, and the latest request again. */
  startAgain(studies = true): void {
    this.fault = null;
    if (this.#latest) void this.request(this.#latest.variant, studies, this.#latest.throws);
  }

  /** Ends the worker. */
  dispose(): void {
    this.#settleAll('stopped');
    this.#port?.terminate();
    this.#port = null;
  }

  #sendNext(): void {
    clearTimeout(this.#hurry);
    const asked = this.#next;
    this.#next = null;
    if (asked) this.#send(asked);
  }

  #send(asked: Asked): void {
    this.#underWay?.settle('superseded');
    this.#underWay = asked;
    this.#awaitsResult = true;
    this.#sentAt = performance.now();
    this.#number += 1;
    this.studiesAreStale = true;
    this.#fresh = new Set();
    this.progress = null;
    clearTimeout(this.#patience);
    this.#patience = setTimeout(() => {
      if (this.#underWay === asked) this.progress = 0;
    }, QUIET);
    this.#post({
      kind: 'run',
      number: this.#number,
      variant: asked.variant,
      studies: asked.studies,
      why: this.#why,
      throws: asked.throws,
    });
  }

  #post(request: Request): void {
    this.#attempt((port) => port.postMessage(request));
  }

  #attempt(use: (port: Port) => void): void {
    try {
      this.#port ??= this.#listen(this.#start());
      use(this.#port);
    } catch (fault) {
      this.#lose(fault instanceof Error ? `${fault.message}\n${fault.stack ?? ''}` : String(fault));
    }
  }

  #listen(port: Port): Port {
    port.onmessage = ({ data }) => this.#hear(data as Reply);
    port.onerror = (event) => this.#lose(`${event.message} ${event.filename}:${event.lineno}`);
    port.onmessageerror = () => this.#lose('a reply could not be read');
    return port;
  }

  #hear(reply: Reply): void {
    if (reply.number !== this.#number || !this.#underWay) return;
    switch (reply.kind) {
      case 'progress':
        if (this.progress !== null) this.progress = Math.max(this.progress, reply.done);
        break;
      case 'result':
        this.result = reply.result;
        if (this.#underWay.studies) this.#follow(reply.result);
        this.#awaitsResult = false;
        this.#sendNext();
        break;
      case 'study':
        this.studies = { ...this.studies, [reply.study.kind]: reply.study };
        this.#fresh = new Set([...this.#fresh, reply.study.kind]);
        break;
      case 'finished':
        this.studiesAreStale = !this.#underWay.studies;
        this.#settleUnderWay('finished');
        break;
      case 'fault':
        this.#lose(reply.details);
        break;
    }
  }

  #follow(result: Result): void {
    setTimeout(() => {
      if (this.result === result) this.steady = result;
    });
  }

  #lose(details: string): void {
    this.#port?.terminate();
    this.#port = null;
    this.fault = {
      message: 'The part that computes has stopped. Your settings are safe.',
      details,
    };
    this.#settleAll('lost');
  }

  #settleAll(ending: Ending): void {
    clearTimeout(this.#hurry);
    this.#next?.settle(ending);
    this.#next = null;
    this.#settleUnderWay(ending);
  }

  #settleUnderWay(ending: Ending): void {
    clearTimeout(this.#patience);
    this.progress = null;
    this.#awaitsResult = false;
    this.#underWay?.settle(ending);
    this.#underWay = null;
  }
}

/** A run that takes longer than this gives way to a newer request, ms. */
const HOLD = 150;

/** Nothing is said of a wait shorter than this, ms. */
const QUIET = 200;
