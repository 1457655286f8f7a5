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
  return lag >= SHORTEST ? (water - reading) / lag : waterRate;
}

const SHORTEST = 1; // s; a shorter lag changes nothing that is printed
