import type { ClosureRecord, TermValues } from '../../shared/closureRecord.ts';
import type { Measures, Quantity } from '../../shared/result.ts';

/** A number that can open its working. */
export type WorkingKey =
  | `measure.${keyof Measures}`
  | `moment.${Quantity}`
  | `coil.${'overall' | 'outside' | 'inside' | 'wall' | 'scale' | 'share'}`
  | `stat.${'callsAt' | 'follows'}`
  | `store.${'conduction' | 'lossPerKelvin' | 'energyClass' | 'lossLimit' | 'lossGuide'}`
  | 'boiler.flowNeeded';

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

/** A relation with these numbers, and the result that follows from them. */
export function worked(record: ClosureRecord, given: TermValues): Step {
  const isWhole = record.terms.every(({ key }) => Number.isFinite(given[key]));
  const known = Object.fromEntries(Object.entries(given).filter(([, v]) => Number.isFinite(v)));
  return { record, values: isWhole ? { ...known, result: record.compute(given) } : known };
}
