import type { Seconds } from '../../shared/units.ts';
import { firstCrossing } from './crossing.ts';
import { Interpolant } from './interpolant.ts';
import { invertedBorders } from './pools.ts';
import { switchSlot } from './switchSlot.ts';
import type { Switch, System } from './system.ts';

/** A switch and the time at which it is thrown. */
export interface Thrown {
  readonly what: Switch;
  readonly at: Seconds;
}

/** Looks at each step the solver takes and finds the first switch in it. */
export class Watch {
  /** The state inside the step last looked at. */
  readonly inside: Interpolant;

  readonly #system: System;
  readonly #ends: Float64Array;

  constructor(system: System) {
    this.#system = system;
    this.#ends = new Float64Array(system.switches.length);
    this.inside = new Interpolant(system.slots.count, (y) => system.derivative.at(y));
  }

  /** Where a row of steps begins, after every event. */
  begin(from: Seconds, y: readonly number[]): void {
    this.inside.begin(from, y);
  }

  /** Takes up the next step and finds the first switch in it, or null. @param now  state at `to`, [slot] */
  firstSwitch(from: Seconds, to: Seconds, now: readonly number[]): Thrown | null {
    const ends = this.#ends;
    const { inside } = this;
    const system = this.#system;
    const { switches } = system;
    inside.advance(from, to, now);
    const atEnd = (slot: number) => now[slot];
    const evaluated = () => now; // as it was taken up
    for (let which = 0; which < switches.length; which++) {
      ends[which] = system.crossing(switches[which], atEnd, evaluated);
    }
    let first: Thrown | null = null;
    for (let which = 0; which < switches.length; which++) {
      const what = switches[which];
      const past = ends[which] > 0 ? to : this.#turn(what);
      if (past === null) continue;
      const g = this.#along(what, now);
      // A switch found before may come earlier: is this one thrown by then?
      const last: Seconds = Math.min(first?.at ?? to, past);
      const atLast: number = last === to ? ends[which] : g(last);
      if (atLast > 0) first = { what, at: firstCrossing(g, from, last, g(from), atLast) };
    }
    return first;
  }

  /** Its crossing function at a time inside the step. @param now  state at the end of the step, [slot] */
  #along(what: Switch, now: readonly number[]): (time: Seconds) => number {
    const { inside } = this;
    const system = this.#system;
    const borders = what === 'merge' ? invertedBorders(system.control.pools, now) : undefined;
    return (time) =>
      system.crossing(
        what,
        (slot) => inside.value(slot, time),
        () => {
          const state = inside.stateAt(time);
          system.derivative.at(state);
          return state;
        },
        borders,
      );
  }

  /** Where what a switch looks at turns back inside the step, and may have passed its threshold meanwhile; else null. */
  #turn(what: Switch): Seconds | null {
    const slot = switchSlot(what, this.#system.slots, this.#system.plant);
    return slot === null ? null : this.inside.turningTime(slot);
  }
}
