import type { Mark, Phase } from '../../shared/result.ts';
import type { Seconds } from '../../shared/units.ts';
import type { Snapshot, System } from '../solve/system.ts';

/** A mark and the state there. */
export interface MarkedState {
  readonly mark: Mark;
  readonly snapshot: Snapshot;
}

/** Writes down what happened during a run, and who had the boiler meanwhile. */
export class Logbook {
  readonly marks: MarkedState[] = [];
  readonly phases: Phase[] = [];

  readonly #system: System;
  #open: Phase;

  /** @param at  time of the run at which it is opened, s */
  constructor(system: System, at: Seconds) {
    this.#system = system;
    this.#open = this.#phaseFrom(at);
  }

  mark(at: Seconds, kind: Mark['kind'], y: readonly number[]): Mark {
    const mark = { at, kind };
    this.marks.push({ mark, snapshot: { state: [...y], memory: this.#system.memory } });
    return mark;
  }

  /** Whether valves, boiler limit or draw are no longer as when the open phase began. */
  hasChanged(): boolean {
    return !isAlike(this.#phaseFrom(0), this.#open);
  }

  /** Ends the open phase and begins the next; a phase that took no time is left out. */
  turnPage(at: Seconds): void {
    if (at > this.#open.from) this.phases.push({ ...this.#open, to: at });
    this.#open = this.#phaseFrom(at);
  }

  #phaseFrom(at: Seconds): Phase {
    const { control } = this.#system;
    const { service } = control;
    return {
      from: at,
      to: at,
      coilRuns: service.coil !== null,
      radiatorsRun: service.radiatorRate > 0,
      draws: control.tap.draw !== null,
      immersionRuns: control.immersionIsOn,
      limit: control.limit,
    };
  }
}

/** Whether two phases differ in nothing but their time. */
export function isAlike(one: Phase, other: Phase): boolean {
  return (
    one.coilRuns === other.coilRuns &&
    one.radiatorsRun === other.radiatorsRun &&
    one.draws === other.draws &&
    one.immersionRuns === other.immersionRuns &&
    one.limit === other.limit
  );
}
