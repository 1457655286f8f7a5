import type { Celsius, Kelvins } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';

/** A switch with a differential: calls from `setPoint - differential` until `setPoint`. */
export interface Stat {
  readonly setPoint: Celsius;
  readonly differential: Kelvins;
}

/**
 * Above zero once the stat has to switch, K: crosses zero upwards at the switching point.
 * @param calls    whether it calls now
 * @param reading  °C
 */
export function statCrossing(stat: Stat, calls: boolean, reading: Celsius): Kelvins {
  return calls ? reading - stat.setPoint : stat.setPoint - stat.differential - reading;
}

/** Whether a stat calls that wakes up with this reading: as if it had last been satisfied. */
export function callsAtStart(stat: Stat, reading: Celsius): boolean {
  return reading < stat.setPoint - stat.differential;
}

/** The room stat. Under load compensation it only stops rooms too warm for the lowest flow; the flow does the rest. */
export function roomStat({
  control,
  roomSetPoint,
  roomDifferential,
  loadBand,
}: Variant['heating']): Stat {
  const above = control === 'loadCompensation' ? loadBand / 2 : 0;
  return { setPoint: roomSetPoint + above, differential: roomDifferential };
}
