import type { Seconds } from '../../shared/units.ts';

/**
 * The state inside a step the solver has taken: through the states and rates at both ends, and through the rate at a third
 * of the way, so a polynomial of the fourth degree with an error that falls with the fifth power of the step. It is linear in
 * states and rates, so the sums of energy close inside a step as they do at its ends.
 */
// source: Hermite interpolation with one bootstrapped slope, textbook (Hairer, Nørsett, Wanner, II.6), from memory
export class Interpolant {
  /** [slot] at the end, for the next step its start. */
  readonly #rateAtStart: Float64Array;
  readonly #rateAtEnd: Float64Array;
  readonly #start: Float64Array;
  readonly #end: Float64Array;
  /** [slot] coefficient of s² (1 − s)². */
  readonly #bend: Float64Array;
  readonly #between: number[];
  readonly #derivative: (y: ArrayLike<number>) => ArrayLike<number>;
  #from: Seconds = 0;
  #to: Seconds = Number.NaN;
  #length: Seconds = 1;
  #isBent = false;

  /** @param derivative  rates [slot] of a state; may hand back the same array each time */
  constructor(slots: number, derivative: (y: ArrayLike<number>) => ArrayLike<number>) {
    this.#rateAtStart = new Float64Array(slots);
    this.#rateAtEnd = new Float64Array(slots);
    this.#start = new Float64Array(slots);
    this.#end = new Float64Array(slots);
    this.#bend = new Float64Array(slots);
    this.#between = new Array<number>(slots).fill(0);
    this.#derivative = derivative;
  }

  /** Where a row of steps begins. */
  begin(from: Seconds, y: ArrayLike<number>): void {
    this.#end.set(y);
    this.#to = from;
    this.#rateAtEnd.set(this.#derivative(y));
  }

  /** The rates at the end of the last step, where that is the time asked for; else null. Spares the solver a call a step. */
  ratesAtEnd(time: Seconds): Float64Array | null {
    return time === this.#to ? this.#rateAtEnd : null;
  }

  /** Takes up the next step. Evaluates the derivative at its end. @param y  state at `to` */
  advance(from: Seconds, to: Seconds, y: ArrayLike<number>): void {
    this.#start.set(this.#end);
    this.#rateAtStart.set(this.#rateAtEnd);
    this.#end.set(y);
    this.#rateAtEnd.set(this.#derivative(y));
    this.#from = from;
    this.#to = to;
    this.#length = to - from;
    this.#isBent = false;
  }

  /** One component at a time inside the step. */
  value(slot: number, time: Seconds): number {
    if (!this.#isBent) this.#bendIt();
    const s = (time - this.#from) / this.#length;
    const hump = s * (1 - s);
    return this.#cubic(slot, s) + hump * hump * this.#bend[slot];
  }

  /** Where a component turns back inside the step, by the cubic through both ends; null when it does not. */
  turningTime(slot: number): Seconds | null {
    const start = this.#rateAtStart[slot];
    const end = this.#rateAtEnd[slot];
    if (!(start * end < 0)) return null;
    // slope of the cubic at a share s of the step: start + b s + a s²
    const mean = (this.#end[slot] - this.#start[slot]) / this.#length;
    const a = 3 * (start + end) - 6 * mean;
    const b = 6 * mean - 4 * start - 2 * end;
    const root = Math.sqrt(b * b - 4 * a * start);
    const q = -0.5 * (b + (b < 0 ? -root : root));
    const s = start / q;
    const other = q / a;
    return this.#from + this.#length * (s > 0 && s < 1 ? s : other);
  }

  /** The whole state at a time inside the step, [slot]; the same array every time. */
  stateAt(time: Seconds): readonly number[] {
    for (let slot = 0; slot < this.#between.length; slot++) {
      this.#between[slot] = this.value(slot, time);
    }
    return this.#between;
  }

  /** Value of the cubic through both ends. @param s  share of the step */
  #cubic(slot: number, s: number): number {
    const h = this.#length;
    const rise = this.#end[slot] - this.#start[slot];
    const before = h * this.#rateAtStart[slot] - rise;
    const after = rise - h * this.#rateAtEnd[slot];
    return this.#start[slot] + s * (rise + (1 - s) * ((1 - s) * before + s * after));
  }

  /** Bends the cubic so that its slope at a third of the step is the rate there. */
  #bendIt(): void {
    const h = this.#length;
    for (let slot = 0; slot < this.#between.length; slot++) {
      this.#between[slot] = this.#cubic(slot, THIRD);
    }
    const rates = this.#derivative(this.#between);
    for (let slot = 0; slot < this.#between.length; slot++) {
      const rise = this.#end[slot] - this.#start[slot];
      const after = rise - h * this.#rateAtEnd[slot];
      // Slopes at a third: of s (1 − s)² none, of s² (1 − s) 1/3, of s² (1 − s)² 4/27
      this.#bend[slot] = (27 / 4) * (h * rates[slot] - rise - after / 3);
    }
    this.#isBent = true;
  }
}

const THIRD = 1 / 3;
