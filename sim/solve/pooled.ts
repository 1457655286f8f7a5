import type { Seconds } from '../../shared/units.ts';
import { type IntegrateSettings, integrate, type Observe, type Piece } from './integrate.ts';
import type { Pools } from './pools.ts';

/**
 * Integrates what moves: one number for each pool in place of one for each layer, for the layers of a pool share temperature
 * and rate between two events, and none for what stands still until the next. What goes in and out is the whole state.
 */
export class Pooled {
  readonly #slots: number;
  readonly #afterLayers: readonly number[];
  /** [pool] its lowest layer, and at the end the number of layers. */
  #first = new Int32Array(0);
  #pools = 0;
  /** [place after the pools] the slot carried there. */
  #carried: readonly number[] = [];
  /** The last state asked for, [slot]. */
  readonly #whole: number[];

  /** @param slots  of the whole state, of which the layers are the first */
  constructor(layers: number, slots: number) {
    this.#slots = slots;
    this.#afterLayers = Array.from({ length: slots - layers }, (_, index) => layers + index);
    this.#whole = new Array<number>(slots).fill(0);
  }

  /**
   * `integrate`, with the same errors weighed as it weighs them in the whole state.
   * @param standing  slots whose rate is none all the while
   */
  integrate(
    pools: Pools,
    standing: readonly number[],
    derivative: (y: number[], time: Seconds) => ArrayLike<number>,
    from: Seconds,
    y: readonly number[],
    to: Seconds,
    settings: IntegrateSettings & { readonly relativeTolerance: number },
    observe: Observe,
  ): Piece {
    this.#first = pools.first.slice(0, pools.count + 1);
    this.#pools = pools.count;
    this.#carried = this.#afterLayers.filter((slot) => !standing.includes(slot));
    for (const slot of standing) this.#whole[slot] = y[slot];
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
    const absolute = this.#packed(absoluteTolerance);
    const places = absolute.length;
    const relative = absolute.map(() => relativeTolerance);
    for (let place = 0; place < places; place++) {
      const layers = place < this.#pools ? this.#first[place + 1] - this.#first[place] : 1;
      const weight = Math.sqrt(this.#slots / (places * layers));
      absolute[place] *= weight;
      relative[place] *= weight;
    }
    return { absoluteTolerance: absolute, relativeTolerance: relative };
  }

  /** One number for each pool, then all after the layers that move. */
  #pack(whole: ArrayLike<number>, into: number[]): number[] {
    const first = this.#first;
    const pools = this.#pools;
    for (let pool = 0; pool < pools; pool++) into[pool] = whole[first[pool]];
    const carried = this.#carried;
    for (let place = 0; place < carried.length; place++)
      into[pools + place] = whole[carried[place]];
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
    const carried = this.#carried;
    for (let place = 0; place < carried.length; place++)
      whole[carried[place]] = packed[pools + place];
    return whole;
  }
}
