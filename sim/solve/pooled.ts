import type { Seconds } from '../../shared/units.ts';
import { type IntegrateSettings, integrate, type Observe, type Piece } from './integrate.ts';
import type { Pools } from './pools.ts';

/**
 * Integrates with one number for each pool in place of one for each layer: the layers of a pool share temperature and rate
 * between two events, so the solver need not carry them all. What goes in and out is the whole state.
 */
export class Pooled {
  readonly #layers: number;
  readonly #slots: number;
  /** [pool] its lowest layer, and at the end the number of layers. */
  #first = new Int32Array(0);
  #pools = 0;
  /** The last state asked for, [slot]. */
  readonly #whole: number[];

  /** @param slots  of the whole state, of which the layers are the first */
  constructor(layers: number, slots: number) {
    this.#layers = layers;
    this.#slots = slots;
    this.#whole = new Array<number>(slots).fill(0);
  }

  /** `integrate`, with the same errors weighed as it weighs them in the whole state. */
  integrate(
    pools: Pools,
    derivative: (y: number[], time: Seconds) => ArrayLike<number>,
    from: Seconds,
    y: readonly number[],
    to: Seconds,
    settings: IntegrateSettings & { readonly relativeTolerance: number },
    observe: Observe,
  ): Piece {
    this.#first = pools.first.slice(0, pools.count + 1);
    this.#pools = pools.count;
    const rates = this.#packed(y);
    const piece = integrate(
      (now, time) => this.#pack(derivative(this.#unpack(now), time), rates),
      from,
      this.#packed(y),
      to,
      { ...settings, ...this.#tolerances(settings) },
      (start, finish, now) => {
        const event = observe(start, finish, this.#unpack(now));
        return event === null ? null : { time: event.time, state: this.#packed(event.state) };
      },
    );
    return { ...piece, state: [...this.#unpack(piece.state)] };
  }

  /**
   * The solver judges the mean square over what it carries: a pool of many layers has to weigh as they did, and fewer
   * numbers make each of them weigh more.
   */
  #tolerances({
    absoluteTolerance,
    relativeTolerance,
  }: IntegrateSettings & { readonly relativeTolerance: number }) {
    const places = this.#pools + this.#slots - this.#layers;
    const absolute = this.#packed(absoluteTolerance);
    const relative = absolute.map(() => relativeTolerance);
    for (let place = 0; place < places; place++) {
      const layers = place < this.#pools ? this.#first[place + 1] - this.#first[place] : 1;
      const weight = Math.sqrt(this.#slots / (places * layers));
      absolute[place] *= weight;
      relative[place] *= weight;
    }
    return { absoluteTolerance: absolute, relativeTolerance: relative };
  }

  /** One number for each pool, then all after the layers. */
  #pack(whole: ArrayLike<number>, into: number[]): number[] {
    const first = this.#first;
    const pools = this.#pools;
    for (let pool = 0; pool < pools; pool++) into[pool] = whole[first[pool]];
    const left = this.#layers - pools;
    for (let slot = this.#layers; slot < this.#slots; slot++) into[slot - left] = whole[slot];
    return into;
  }

  #packed(whole: ArrayLike<number>): number[] {
    return this.#pack(whole, []);
  }

  /** The same array every time. */
  #unpack(packed: ArrayLike<number>): number[] {
    const whole = this.#whole;
    const first = this.#first;
    const pools = this.#pools;
    for (let pool = 0; pool < pools; pool++) {
      const shared = packed[pool];
      for (let layer = first[pool]; layer < first[pool + 1]; layer++) whole[layer] = shared;
    }
    const left = this.#layers - pools;
    for (let slot = this.#layers; slot < whole.length; slot++) whole[slot] = packed[slot - left];
    return whole;
  }
}
