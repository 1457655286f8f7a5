import type { Seconds } from '../../shared/units.ts';
import { firstCrossing } from './crossing.ts';
import type { Dense } from './integrate.ts';
import { invertedBorders } from './pools.ts';
import { type Switch, switches, type System } from './system.ts';

/** A switch and the time at which it is thrown. */
export interface Thrown {
  readonly what: Switch;
  readonly at: Seconds;
}

/** Looks at each step the solver takes and finds the first switch in it, on the solver's own interpolant. */
export class Watch {
  readonly #system: System;
  readonly #between: number[];
  readonly #ends = new Float64Array(switches.length);

  constructor(system: System) {
    this.#system = system;
    this.#between = new Array<number>(system.slots.count).fill(0);
  }

  /**
   * State inside the step just taken, [slot]; the same array every time. The layers of a pool are equal, so each pool is
   * asked for once: the solver's interpolant searches for every component it is asked for.
   */
  stateAt(at: Dense, time: Seconds): readonly number[] {
    const between = this.#between;
    const { first, count } = this.#system.control.pools;
    for (let pool = 0; pool < count; pool++) {
      const shared = at(first[pool], time);
      for (let layer = first[pool]; layer < first[pool + 1]; layer++) between[layer] = shared;
    }
    for (let slot = this.#system.slots.layers; slot < between.length; slot++) {
      between[slot] = at(slot, time);
    }
    return between;
  }

  /**
   * The first switch in a step, or null.
   * @param now  state at `to`, [slot]
   * @param at   state in between
   */
  firstSwitch(from: Seconds, to: Seconds, now: readonly number[], at: Dense): Thrown | null {
    const ends = this.#ends;
    const system = this.#system;
    system.derivative.at(now);
    for (let which = 0; which < switches.length; which++) {
      ends[which] = system.crossing(switches[which], (slot) => now[slot], alreadyEvaluated);
    }
    let first: Thrown | null = null;
    for (let which = 0; which < switches.length; which++) {
      if (!(ends[which] > 0)) continue;
      const what = switches[which];
      const borders = what === 'merge' ? invertedBorders(system.control.pools, now) : undefined;
      const g = (time: Seconds) =>
        system.crossing(
          what,
          (slot) => at(slot, time),
          () => system.derivative.at(this.stateAt(at, time)),
          borders,
        );
      // A switch found before may come earlier: is this one thrown by then?
      const last: Seconds = first?.at ?? to;
      const atLast: number = first === null ? ends[which] : g(last);
      if (atLast > 0) first = { what, at: firstCrossing(g, from, last, g(from), atLast) };
    }
    return first;
  }
}

const alreadyEvaluated = () => {};
