import type { Celsius, Kelvins } from '../../shared/units.ts';

/** What a controller shows of a reading, °C: no further than its scale goes. */
export function shownReading(reading: Celsius): Celsius {
  return Math.min(Math.max(reading, LOWEST), HIGHEST);
}

/** How far a reading lies off the scale, K: above zero it is taken for a fault. Never infinite. */
export function offScale(reading: Celsius): Kelvins {
  return Math.min(Math.max(reading - HIGHEST, LOWEST - reading), FAR_OFF);
}

// common practice, no source: a reading off this scale is taken for a fault
const LOWEST = -50; // °C
const HIGHEST = 200; // °C
const FAR_OFF = 1000; // K; a number where the ohms make none
