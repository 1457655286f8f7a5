import type { Celsius, Seconds } from '../../shared/units.ts';

/**
 * How fast the reading follows the water, K/s: a first-order lag.
 * @param water        at the sensor, °C
 * @param waterRate    how fast that water warms, K/s; a sensor without lag follows it exactly
 * @param reading      °C
 * @param lag          s
 */
export function sensorRate(
  water: Celsius,
  waterRate: number,
  reading: Celsius,
  lag: Seconds,
): number {
  return hasLag(lag) ? (water - reading) / lag : waterRate;
}

/** Whether a lag is long enough to matter: a shorter one changes nothing that is printed. */
export function hasLag(lag: Seconds): boolean {
  return lag >= SHORTEST;
}

const SHORTEST = 1; // s
