import type { ClosureRecord, TermValues } from '../../shared/closureRecord.ts';
import type { DayMeasures } from '../../shared/day.ts';
import type { Measures, Quantity } from '../../shared/result.ts';

/** Parts of the installation whose numbers open a working, besides what is measured and sampled. */
export const partKeys = [
  'coil.overall',
  'coil.outside',
  'coil.buoyancy',
  'coil.inside',
  'coil.regime',
  'coil.wall',
  'coil.scale',
  'coil.share',
  'coil.friction',
  'pipe.friction',
  'pipe.loss',
  'stat.callsAt',
  'stat.follows',
  'stat.rests',
  'store.heatUp',
  'store.conduction',
  'store.mixing',
  'store.inlet',
  'store.inletOthers',
  'store.lossPerKelvin',
  'store.energyClass',
  'store.lossLimit',
  'store.lossGuide',
  'store.coolDown',
  'boiler.flowNeeded',
  'boiler.condensing',
  'boiler.bursts',
  'use.people',
  'use.baths',
  'use.showers',
  'use.others',
] as const;

/** What is told of a day besides its measures: warmth of the store, and what comes at the tap. */
export const hygieneKeys = [
  'hygiene.coldestTenth',
  'hygiene.top',
  'hygiene.neverHot',
  'hygiene.afterMinute',
] as const;

/** What the store gives in one draw and in an hour, by draws that are simulated. */
export const deliveryKeys = ['delivery.drawn', 'delivery.firstHour'] as const;

export type PartKey = (typeof partKeys)[number];
export type DeliveryKey = (typeof deliveryKeys)[number];

/** A number of a day of hot water in use. */
export type DayKey = `day.${keyof DayMeasures}` | (typeof hygieneKeys)[number];

/** A number that can open its working. */
export type WorkingKey =
  `measure.${keyof Measures}` | `moment.${Quantity}` | PartKey | DayKey | DeliveryKey;

/** Where an opened working stands on the page. */
export type Place = string;

/** A relation with today's numbers in it. */
export interface Step {
  readonly record: ClosureRecord;
  /** SI by term key, the result under `result`; a missing one keeps its symbol. */
  readonly values: TermValues;
}

/** How one number came about. */
export interface Working {
  /** A sentence without a full stop: `at 30 min the coil passes 10.6 kW`. */
  readonly title: string;
  readonly steps: readonly Step[];
  /** What the formula leaves open here, in one sentence; empty when nothing. */
  readonly note: string;
  /** Numbers in it that have workings of their own. */
  readonly further: readonly { readonly label: string; readonly key: WorkingKey }[];
}

/** A relation with these numbers, and the result that follows from them, where it is a number at all. */
export function worked(record: ClosureRecord, given: TermValues): Step {
  const isWhole = record.terms.every(({ key }) => Number.isFinite(given[key]));
  const known = Object.fromEntries(Object.entries(given).filter(([, v]) => Number.isFinite(v)));
  const result = isWhole ? record.compute(given) : Number.NaN;
  return { record, values: Number.isFinite(result) ? { ...known, result } : known };
}
