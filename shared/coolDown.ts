import type { Celsius, Joules, JoulesPerKelvin, Seconds, WattsPerKelvin } from './units.ts';

/** A store left alone, all of it at the set-point: nothing heated, nothing drawn. */
export interface CoolDown {
  /** Of the water and the wall. */
  readonly capacity: JoulesPerKelvin;
  readonly surroundings: Celsius;
  /** [sample], s, never falling, from 0. */
  readonly time: Float64Array;
  /** [sample], °C: highest layer, mean of the store, lowest layer. */
  readonly top: Float64Array;
  readonly mean: Float64Array;
  readonly bottom: Float64Array;
  /** [sample], W */
  readonly loss: Float64Array;
  /** In the first 24 h; below 0 in a store colder than its surroundings. */
  readonly lostInDay: Joules;
  /** The second reading for `conductance`: the end, or earlier where little difference is left. */
  readonly readAt: Seconds;
  /** By the log ratio of the mean at the start and at `readAt`; null in a store as warm as the air. */
  readonly conductance: WattsPerKelvin | null;
  /** When the top has fallen below 40 °C; null when it has not. */
  readonly coolAfter: Seconds | null;
}
