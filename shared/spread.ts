import type { Seconds } from './units.ts';
import type { Variant } from './variant.ts';

/** What is not known for certain of an installation. */
export type UnknownKey = 'coil' | 'scale' | 'primaryFlow' | 'cold' | 'lag';

/** What the unknowns leave open. */
export interface Spread {
  /** What it is the spread of. */
  readonly variant: Variant;
  /** Of the recovery time: a tenth of the runs are shorter than `low`, a tenth longer than `high`; null where those do not get there. */
  readonly low: Seconds | null;
  readonly median: Seconds | null;
  readonly high: Seconds | null;
  /** Recovery times of the runs that got there, the shortest first, s. */
  readonly recoveries: Float64Array;
  /**
   * Part of the scatter of the recovery time that each unknown alone explains, the largest first; a run that does not get
   * there counts as long as it was followed. Empty where nothing scatters.
   */
  readonly firstOrder: readonly { readonly key: UnknownKey; readonly share: number }[];
  /** The same three of what the controller reads, [sample] s and °C; a run that got there stays at what it read then. */
  readonly time: Float64Array;
  readonly lowReading: Float64Array;
  readonly medianReading: Float64Array;
  readonly highReading: Float64Array;
  /** Runs that count, those of them that got there, and how many there will be. */
  readonly runs: number;
  readonly reached: number;
  readonly of: number;
}
