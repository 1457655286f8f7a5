import { type Constraint, type Gaining, gaining, type Pace } from '../../shared/pace.ts';
import { paceStretches } from '../measure/pace.ts';
import { PaceMeter } from '../solve/pace.ts';
import type { System } from '../solve/system.ts';

/** Writes down what sets the pace, sample by sample. */
export class PaceLog {
  #meter: PaceMeter;
  readonly #sole: (Constraint | null)[] = [];
  readonly #gain = Object.fromEntries(gaining.map((key) => [key, [] as number[]])) as Record<
    Gaining,
    number[]
  >;

  constructor(system: System) {
    this.#meter = new PaceMeter(system);
  }

  /** The run goes on with another system of the same slots. */
  follow(system: System): void {
    this.#meter = new PaceMeter(system);
  }

  /** @param y  a state at which the derivative has just been evaluated */
  sample(y: ArrayLike<number>): void {
    const { sole, gain } = this.#meter.at(y);
    this.#sole.push(sole);
    for (const key of gaining) this.#gain[key].push(gain[key]);
  }

  /** @param time  of the samples, s */
  pace(time: readonly number[]): Pace {
    return {
      stretches: paceStretches({ time, sole: this.#sole, gain: this.#gain }),
      gain: Object.fromEntries(
        gaining.map((key) => [key, new Float64Array(this.#gain[key])]),
      ) as Record<Gaining, Float64Array>,
    };
  }
}
