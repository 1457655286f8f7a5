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

/** A number of the usual household, and which it is. */
export interface UsePart {
  readonly text: string;
  readonly of: 'baths' | 'showers' | 'others' | 'people';
}

/** What is usual, to set beside what was typed, with its numbers apart. */
export function usualUseParts(use: UsualUse): readonly (string | UsePart)[] {
  const { people, baths, showers, others, reckoned } = use;
  return [
    `In the mean ${figure(people, people % 1 === 0 ? 0 : 1)} ${people === 1 ? 'person takes' : 'people take'} `,
    { text: `${figure(baths, 2)} baths`, of: 'baths' },
    ' and ',
    { text: `${figure(showers, 2)} showers`, of: 'showers' },
    ' a day, and ',
    { text: litres(others), of: 'others' },
    ` of hot water at sinks (${citation('sap')}, Appendix J, in part from memory). For this floor area `,
    { text: `${figure(reckoned, 1)} people`, of: 'people' },
    ' are reckoned.',
  ];
}

/** The same as plain text. */
export function usualUseWords(use: UsualUse): string {
  return usualUseParts(use)
    .map((part) => (typeof part === 'string' ? part : part.text))
    .join('');
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
