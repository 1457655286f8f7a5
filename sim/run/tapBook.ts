import type { DrawReport } from '../../shared/day.ts';
import type { PatternDraw } from '../../shared/drawPattern.ts';
import type { Seconds } from '../../shared/units.ts';
import type { System } from '../solve/system.ts';
import { wantedAt } from '../solve/tap.ts';

interface Open {
  readonly draw: PatternDraw;
  readonly from: Seconds;
  /** Of the sums, as the tap was opened. */
  readonly before: Sums;
  isWarm: boolean;
  hasPeaked: boolean;
  waitTime: Seconds | null;
  coldTime: Seconds;
}

interface Sums {
  readonly drawn: number;
  readonly useful: number;
  readonly fromStore: number;
}

/** Writes down what every draw of a run got, but for what is read off its samples (`atTheTap`). Looks whenever something may have changed; in between nothing does. */
export class TapBook {
  readonly reports: DrawReport[] = [];

  readonly #system: System;
  #open: Open | null = null;
  #seen: Seconds = 0;

  constructor(system: System) {
    this.#system = system;
  }

  /** @param time  of the run, s @param y  the state there */
  look(time: Seconds, y: ArrayLike<number>): void {
    const { tap } = this.#system.control;
    if (this.#open !== null) {
      pass(this.#open, time - this.#seen);
      if (tap.draw === null) this.#shut(time, y, false);
      else this.#follow(this.#open);
    }
    if (this.#open === null && tap.draw !== null) {
      this.#open = {
        draw: tap.draw,
        from: time,
        before: this.#sums(y),
        isWarm: tap.isWarm,
        hasPeaked: tap.hasPeaked,
        waitTime: tap.isWarm ? 0 : null,
        coldTime: 0,
      };
    }
    this.#seen = time;
  }

  /** The run has ended; a draw that is still open is cut. */
  close(time: Seconds, y: ArrayLike<number>): void {
    this.look(time, y);
    if (this.#open !== null) this.#shut(time, y, true);
  }

  #follow(open: Open): void {
    const { tap } = this.#system.control;
    // cold until now was waiting for it
    if (tap.isWarm && open.waitTime === null) {
      open.waitTime = open.coldTime;
      open.coldTime = 0;
    }
    open.isWarm = tap.isWarm;
    open.hasPeaked = tap.hasPeaked;
  }

  #shut(time: Seconds, y: ArrayLike<number>, isCut: boolean): void {
    if (this.#open === null) return;
    const { draw, from, before, hasPeaked, waitTime, coldTime } = this.#open;
    const { plant } = this.#system;
    const now = this.#sums(y);
    const volume = draw.flow * (time - from);
    const heat = now.drawn - before.drawn;
    this.reports.push({
      name: draw.name,
      from,
      to: time,
      asked: draw.volume,
      volume,
      fromStore: now.fromStore - before.fromStore,
      heat,
      useful: now.useful - before.useful,
      usefulAsked: draw.useful?.energy ?? null,
      wanted: wantedAt(draw, plant.inlet.cold),
      peak: draw.useful?.peakTemperature ?? null,
      hasPeaked,
      mean: plant.inlet.cold + (volume > 0 ? heat / (volume * plant.cylinder.waterHeat) : 0),
      hottest: null,
      afterMinute: null,
      waitTime,
      coldTime,
      coldVolume: draw.flow * coldTime,
      isCut,
    });
    this.#open = null;
  }

  #sums(y: ArrayLike<number>): Sums {
    const { slots } = this.#system;
    return { drawn: y[slots.drawn], useful: y[slots.useful], fromStore: y[slots.fromStore] };
  }
}

function pass(open: Open, span: Seconds): void {
  if (!open.isWarm) open.coldTime += span;
}
