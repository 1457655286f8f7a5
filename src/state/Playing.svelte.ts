import type { ArrangementThrow } from '../../shared/arrangementThrow.ts';
import type { Arrangement } from '../../shared/arrangements.ts';
import type { Seconds } from '../../shared/units.ts';
import type { TimeCursor } from './TimeCursor.svelte.ts';

/** A run that is played: how far, how fast, and when the switch between arrangements was thrown. */
export class Playing {
  isRunning = $state(false);
  /** Minutes of the run in a second. */
  speed = $state(2);
  /** In order of time. */
  throws = $state.raw<readonly ArrangementThrow[]>([]);
  #moment: TimeCursor;
  /** Of the run, that has gone by and is not shown yet. */
  #owed: Seconds = 0;

  constructor(moment: TimeCursor) {
    this.#moment = moment;
  }

  /** The arrangement at the moment. @param own  of the variant, before any throw */
  arrangement(own: Arrangement): Arrangement {
    const last = this.throws.findLast(({ at }) => at <= this.#moment.seconds);
    return last?.arrangement ?? own;
  }

  /** Throws the switch at the moment; gives the throw, or null where it stands so already. */
  throwTo(arrangement: Arrangement, own: Arrangement): ArrangementThrow | null {
    const at = this.#moment.seconds;
    if (arrangement === this.arrangement(own)) return null;
    const thrown = { at, arrangement };
    this.throws = [...this.throws.filter((earlier) => earlier.at < at), thrown];
    return thrown;
  }

  /**
   * Lets time go by, up to the end, where it pauses.
   * @param seconds  on the clock on the wall
   * @param end      of the run, s
   * @param isWhole  moves the moment by whole minutes only
   */
  pass(seconds: Seconds, end: Seconds, isWhole: boolean): void {
    this.#owed += seconds * this.speed * MINUTE;
    const step = isWhole ? Math.floor(this.#owed / MINUTE) * MINUTE : this.#owed;
    if (step === 0) return;
    this.#owed -= step;
    this.#goTo(this.#moment.seconds + step, end);
  }

  /** On to the next whole minute. */
  step(end: Seconds): void {
    this.isRunning = false;
    this.#goTo((Math.floor(this.#moment.seconds / MINUTE + 1e-9) + 1) * MINUTE, end);
  }

  /** Nothing has been thrown, and the run has not begun. */
  toStart(): void {
    this.forget();
    this.#moment.set(0);
  }

  /** Pauses, with the switch as if it had never been touched. */
  forget(): void {
    this.isRunning = false;
    this.throws = [];
    this.#owed = 0;
  }

  #goTo(seconds: Seconds, end: Seconds): void {
    this.#moment.set(Math.min(seconds, end));
    if (seconds < end) return;
    this.isRunning = false;
    this.#owed = 0;
  }
}

/** What can be chosen, minutes of the run in a second. */
export const speeds = [1, 2, 5, 10] as const;

const MINUTE = 60; // s
