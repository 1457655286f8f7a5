import { duration } from '../../../shared/format.ts';

/** What a terminal is, as far as a bar needs it. */
export interface Terminal {
  readonly isTTY?: boolean;
  readonly write: (text: string) => unknown;
}

/** A line that says how far a batch is; nothing where nobody looks. */
export class ProgressBar {
  readonly #terminal: Terminal;
  readonly #of: number;
  readonly #done: number;
  readonly #now: () => number;
  readonly #began: number;
  #shown = Number.NEGATIVE_INFINITY;

  /** @param done  rows finished before @param now  ms, in tests another clock */
  constructor(terminal: Terminal, of: number, done: number, now: () => number = Date.now) {
    this.#terminal = terminal;
    this.#of = of;
    this.#done = done;
    this.#now = now;
    this.#began = now();
  }

  /** @param rows  finished in all */
  show(rows: number): void {
    const now = this.#now();
    if (this.#terminal.isTTY !== true || now - this.#shown < EVERY) return;
    this.#shown = now;
    this.#terminal.write(`\r${this.#line(rows, (now - this.#began) / 1000)}\u001b[K`);
  }

  /** Takes the line away. */
  clear(): void {
    if (this.#terminal.isTTY === true) this.#terminal.write('\r\u001b[K');
  }

  #line(rows: number, seconds: number): string {
    const marks = this.#of === 0 ? WIDTH : Math.floor((WIDTH * rows) / this.#of);
    const bar = '#'.repeat(marks).padEnd(WIDTH, '.');
    const here = rows - this.#done;
    const left = here > 0 ? `, ${duration((seconds / here) * (this.#of - rows))} left` : '';
    return `[${bar}] ${rows} of ${this.#of} rows${left}`;
  }
}

const WIDTH = 30;
const EVERY = 100; // ms
