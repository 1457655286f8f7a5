import { type DayMeasures, dayMeasureRows } from './day.ts';
import { type Measures, measureRows } from './result.ts';
import { type UnitName, units } from './units.ts';

/** The key of a measure of the day beside those of the run: `dayDrawn`. */
type DayKey = `day${Capitalize<keyof DayMeasures>}`;

/** A measure that a study over settings may ask for. */
export type Asked = keyof Measures | DayKey | 'callsPerDay' | 'fuelPerDay' | 'usableWhenCalled';

/** What has to be run for a measure: the reheat, a day of hot water in use, or a reheat and one draw until the stat calls. */
export type AskedOf = 'run' | 'day' | 'draw';

/** A measure that may be asked for, and where it comes from. */
export interface AskedRow {
  readonly key: Asked;
  readonly label: string;
  readonly unit: UnitName;
  readonly digits: number;
  readonly of: AskedOf;
  /** Among the measures of the run, or of the day, the one it is or is made of; null of the draw. */
  readonly measure: keyof Measures | keyof DayMeasures | null;
  /** Of days that are several, the mean of one. */
  readonly perDay: boolean;
  /** Why a point of a run that finished may have no value, a sentence. */
  readonly without: string;
}

const notSatisfied = 'The stat was not satisfied within the run.';
const coilIdle = 'The coil did not run.';
const notHeated = 'No rooms are heated.';
const noFuel = 'No fuel is counted for an ideal boiler.';
const noBurner = 'No burner was lit, or the boiler is ideal.';

const withoutInRun: Readonly<Partial<Record<keyof Measures, string>>> = {
  recovery: notSatisfied,
  ruleTime: notSatisfied,
  meanCoilHeat: coilIdle,
  peakCoilHeat: coilIdle,
  meanReturn: coilIdle,
  leftInPrimary: 'The stat was not satisfied within the run, or the boiler is ideal.',
  radiatorFlow: notHeated,
  burnerStarts: noFuel,
  burnerTime: noFuel,
  fuel: noFuel,
  fuelForHeating: noFuel,
  efficiency: noBurner,
  condensingShare: noBurner,
  cost: noFuel,
  carbon: noFuel,
  coldRoomTime: notHeated,
  sufficientFlow: notHeated,
  usableAtSatisfied: notSatisfied,
  usableAtCall: 'The stat did not call again within the run.',
  coldAtSatisfied: notSatisfied,
  topAtSatisfied: notSatisfied,
  bottomAtSatisfied: notSatisfied,
  lowestRoom: notHeated,
  lowestRoomAt: notHeated,
};

const notByProfile = 'The draws of the day are by no load profile.';
const withoutInDay: Readonly<Partial<Record<keyof DayMeasures, string>>> = {
  usefulAsked: notByProfile,
  shortfall: notByProfile,
  hottestAtTap: 'Nothing was drawn on the day for long enough to be sampled.',
  burnerStarts: noFuel,
  fuelForHotWater: noFuel,
  efficiency: 'No fuel or electricity was counted for hot water.',
  standingLossCost: 'Nothing that is paid for heated the store.',
  cost: noFuel,
  lowestRoom: notHeated,
};

const noValue = 'There is no value.';

const ofRun = (Object.keys(measureRows) as (keyof Measures)[]).map((key): AskedRow => ({
  key,
  ...measureRows[key],
  of: 'run',
  measure: key,
  perDay: false,
  without: withoutInRun[key] ?? noValue,
}));

const ofDay = (Object.keys(dayMeasureRows) as (keyof DayMeasures)[]).map((key) =>
  dayRow(dayKey(key), `the day: ${dayMeasureRows[key].label}`, key, false),
);

/** Every measure that may be asked for: of the run, of the day, and of one draw. */
export const askedRows: readonly AskedRow[] = [
  ...ofRun,
  ...ofDay,
  dayRow('callsPerDay', 'calls for hot water per day', 'hotWaterCalls', true),
  dayRow('fuelPerDay', 'fuel for hot water per day', 'fuelForHotWater', true),
  {
    key: 'usableWhenCalled',
    label: 'usable at 40 °C when drawn until the stat calls',
    unit: 'litre',
    digits: 0,
    of: 'draw',
    measure: null,
    perDay: false,
    without: 'The stat was not satisfied within the run, or did not call when the store was drawn.',
  },
];

/** Those that are offered first, in this order. */
export const askedFirst: readonly Asked[] = [
  'recovery',
  'usableAtSatisfied',
  'usableWhenCalled',
  'callsPerDay',
  'meanReturn',
  'condensingShare',
  'lowestRoom',
  'fuelPerDay',
];

const byKey = new Map<string, AskedRow>(askedRows.map((row) => [row.key, row]));
const byFileKey = new Map(askedRows.map((row) => [askedFileKey(row.key), row]));

/** The row of a measure. */
export function askedRow(key: Asked): AskedRow {
  const row = byKey.get(key);
  if (!row) throw new Error(`no measure ${key}; expected one of ${[...byKey.keys()]}`);
  return row;
}

/** The key of a measure in files, with its unit: `recoveryMinutes`. */
export function askedFileKey(key: Asked): string {
  return key + units[askedRow(key).unit].suffix;
}

/** The measure of a key in a file, if there is one. */
export function askedInFile(key: string): Asked | undefined {
  return byFileKey.get(key)?.key;
}

/** A value as files carry it, in the unit of its key and with every digit. @param value  SI */
export function askedFileValue(key: Asked, value: number | null): number | null {
  return value === null ? null : value / units[askedRow(key).unit].factor;
}

function dayKey(key: keyof DayMeasures): DayKey {
  return `day${key[0].toUpperCase()}${key.slice(1)}` as DayKey;
}

function dayRow(key: Asked, label: string, measure: keyof DayMeasures, perDay: boolean): AskedRow {
  const { unit, digits } = dayMeasureRows[measure];
  return {
    key,
    label,
    unit,
    digits: perDay && unit === 'number' ? 1 : digits,
    of: 'day',
    measure,
    perDay,
    without: withoutInDay[measure] ?? noValue,
  };
}
