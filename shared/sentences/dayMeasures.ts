import { citation } from '../citation.ts';
import { type DayMeasures, type DayRun, dayMeasureRows } from '../day.ts';
import { clock, figure, percent, shown } from '../format.ts';

/** A few measures of a day under one name. */
export interface MeasureGroup {
  readonly title: string;
  readonly rows: readonly {
    readonly key: keyof DayMeasures;
    readonly label: string;
    readonly text: string;
  }[];
}

const groups: readonly (readonly [title: string, keys: readonly (keyof DayMeasures)[]])[] = [
  [
    'At the tap',
    [
      'drawn',
      'useful',
      'usefulAsked',
      'shortfall',
      'failedDraws',
      'coldTime',
      'coldVolume',
      'waitVolume',
      'hottestAtTap',
    ],
  ],
  [
    'The store',
    [
      'fromStore',
      'heatDrawn',
      'leastUsable',
      'leastUsableAt',
      'standingLoss',
      'standingLossCost',
      'hotWaterCalls',
    ],
  ],
  [
    'Boiler, heater and rooms',
    ['burnerStarts', 'fuelForHotWater', 'electricity', 'efficiency', 'cost', 'lowestRoom'],
  ],
];

/** The measures of a day in the order they are read, those left out that it has not. */
export function dayMeasureGroups({ measures, shownDays }: DayRun): MeasureGroup[] {
  return groups.map(([title, keys]) => ({
    title,
    rows: keys
      .filter((key) => measures[key] !== null)
      .map((key) => ({
        key,
        label: dayMeasureRows[key].label,
        text: dayMeasureText(key, measures[key], shownDays),
      })),
  }));
}

/** A measure as it is read out; a dash where there is none. @param value  SI */
export function dayMeasureText(key: keyof DayMeasures, value: number | null, days: number): string {
  const { unit, digits } = dayMeasureRows[key];
  return key === 'leastUsableAt' && value !== null
    ? clock(value, days)
    : shown(value, unit, digits);
}

/** What the loss of the cylinder costs and by which prices. */
export function lossWords({ measures, shownDays }: DayRun): string {
  const { standingLoss, standingLossCost } = measures;
  const when = shownDays === 1 ? 'the day' : `${figure(shownDays, 0)} days`;
  const heat = shown(Math.abs(standingLoss), 'kilowattHour', 2);
  if (standingLoss < 0) {
    return `In ${when} the cylinder takes in ${heat} from around it: it is mostly colder than the air.`;
  }
  const cost =
    standingLossCost === null
      ? 'no fuel is counted with this boiler, so it has no cost'
      : `at what heat costs here that is ${figure(standingLossCost, 2)} of your currency, by the prices you set`;
  return `In ${when} the cylinder loses ${heat} to its surroundings: ${cost}.`;
}

/** What the efficiency of the day is made of, and what it is not. */
export function efficiencyWords({ measures, variant }: DayRun): string[] {
  const isProfile = variant.day.pattern !== 'household' && variant.day.pattern !== 'own';
  const rule = isProfile
    ? `By the regulation heat is useful while the water at the tap is at or above Tm, and a draw with a Tp has to reach it.`
    : 'Heat is useful here while the water at the tap is as warm as it is wanted.';
  const { efficiency, fuelForHotWater, electricity, useful } = measures;
  if (efficiency === null) {
    return [
      rule,
      'No fuel is counted with an ideal boiler, so the day has no efficiency: choose the boiler as built.',
    ];
  }
  const kilowattHours = (joules: number | null) => shown(joules, 'kilowattHour', 2);
  const fuel = `${kilowattHours(fuelForHotWater ?? 0)} of fuel for hot water, gross`;
  const spent = electricity > 0 ? `${fuel}, and 2.5 times ${kilowattHours(electricity)}` : fuel;
  return [
    rule,
    `Useful heat is ${percent(efficiency)} of what was spent on it: ${kilowattHours(useful)} out of ${spent}${electricity > 0 ? ' of electricity' : ''}. A unit of electricity counts 2.5 times (EU 814/2013, Article 2(18)).`,
    'It is not the declared efficiency of a label: no correction term, and the boiler and store of this bench in place of a test.',
  ];
}

/** Where the draws of a day come from, with its source. */
export function patternWords({ variant }: DayRun): string {
  const { pattern } = variant.day;
  if (pattern === 'own') return 'Draws: your own table.';
  return pattern === 'household'
    ? `Draws: a household, its use by ${citation('sap')}, Appendix J, second-hand and from memory; the times of day are invented.`
    : `Draws: load profile ${pattern} of ${citation('ecodesignTanks')}, Annex III, Table 1.`;
}
