import { citation } from '../citation.ts';
import { figure, litres, shown } from '../format.ts';
import type { LoadProfile } from '../loadProfiles.ts';
import type { CubicMetres, Joules } from '../units.ts';
import type { OwnDraw } from '../variant.ts';

/** What a household of this many takes in the mean by the published formulas. */
export interface UsualUse {
  readonly people: number;
  readonly baths: number;
  readonly showers: number;
  /** At sinks and basins, hot water at 52 °C. */
  readonly others: CubicMetres;
  /** People that are reckoned for the floor area of the house. */
  readonly reckoned: number;
}

/** What is usual, to set beside what was typed. */
export function usualUseWords({ people, baths, showers, others, reckoned }: UsualUse): string {
  return (
    `In the mean ${figure(people, people % 1 === 0 ? 0 : 1)} ${people === 1 ? 'person takes' : 'people take'} ` +
    `${figure(baths, 2)} baths and ${figure(showers, 2)} showers a day, and ${litres(others)} of hot water at sinks ` +
    `(${citation('sap')}, Appendix J, in part from memory). For this floor area ${figure(reckoned, 1)} people are reckoned.`
  );
}

/** What a load profile asks in a day. */
export function profileWords(name: string, { referenceEnergy, draws }: LoadProfile): string {
  const largest = draws.reduce((most, draw) => (draw.energy > most.energy ? draw : most));
  const heat = (joules: Joules) => shown(joules, 'kilowattHour', 3);
  return (
    `Profile ${name} asks ${heat(referenceEnergy)} in ${figure(draws.length, 0)} draws of water as the store gives it; ` +
    `the largest is ${heat(largest.energy)} at ${shown(largest.leastFlow, 'litrePerMinute', 0)} (${citation('ecodesignTanks')}, Annex III).`
  );
}

/** What an own table takes in a day. */
export function ownUseWords(rows: readonly OwnDraw[]): string {
  if (rows.length === 0) return 'The table is empty: nothing is drawn.';
  const volume = rows.reduce((sum, row) => sum + row.volume, 0);
  const count = `${figure(rows.length, 0)} ${rows.length === 1 ? 'draw' : 'draws'}`;
  return `The table takes ${litres(volume)} at the tap in ${count} a day.`;
}
