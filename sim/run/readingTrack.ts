import type { Seconds } from '../../shared/units.ts';
import type { System } from '../solve/system.ts';

/** Keeps what the controller reads at equal times, and nothing else; NaN while it shows a fault. */
export class ReadingTrack {
  readonly #system: System;
  readonly #step: Seconds;
  readonly #values: Float64Array;
  #last = Number.NaN;
  #filled = 0;

  /** @param step  between samples @param samples  as many as there is room for, the first at the start */
  constructor(system: System, step: Seconds, samples: number) {
    this.#system = system;
    this.#step = step;
    this.#values = new Float64Array(samples);
  }

  sample(time: Seconds, y: ArrayLike<number>): void {
    const { hasFault, slots } = this.#system;
    this.#last = hasFault ? Number.NaN : this.#system.reading(y[slots.bead]);
    const index = Math.round(time / this.#step);
    if (Math.abs(time - index * this.#step) > this.#step * CLOSE) return; // a switch between two samples
    if (index >= this.#values.length) return;
    this.#values[index] = this.#last;
    this.#filled = index + 1;
  }

  /** [sample] °C; from where the run ended on, what it read then. */
  readings(): Float64Array {
    return this.#values.fill(this.#last, this.#filled);
  }
}

const CLOSE = 1e-6; // of a step: sums of steps are off by rounding
