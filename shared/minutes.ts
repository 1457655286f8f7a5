import type { Seconds } from './units.ts';

/** What can keep a cylinder waiting, besides how much the boiler gives. */
export type DelayKey =
  | 'sensor'
  | 'times'
  | 'heating'
  | 'boiler'
  | 'flowLimit'
  | 'primaryFlow'
  | 'pipes'
  | 'coil'
  | 'scale';

/** The whole time from the start of a run, shared out over what causes it. */
export interface MinutesByCause {
  /** Until the stat is satisfied; null where it is not within the horizon. */
  readonly whole: Seconds | null;
  /**
   * With every cause removed: the same at full boiler output all the way. Null where that does not get there either, or
   * where the boiler has no part in it.
   */
  readonly ideal: Seconds | null;
  /**
   * The causes present, in the order of `delays`; their shares add up to `whole - ideal`. Below zero where a cause lets
   * the stat be satisfied sooner. None where there is no whole or no ideal.
   */
  readonly shares: readonly { readonly key: DelayKey; readonly time: Seconds }[];
  /** Those that this installation has not. */
  readonly absent: readonly DelayKey[];
  /** All nine would be there: scale and coil are removed together. */
  readonly scaleWithCoil: boolean;
  /** Where it never gets there: the smallest sets of causes without which it does. */
  readonly wouldHelp: readonly (readonly DelayKey[])[];
  /** How long was waited for the stat. */
  readonly horizon: Seconds;
  /** Longer runs without some of the causes counted as this long; null when none did. */
  readonly counted: Seconds | null;
  /** Runs made, and to be made; the shares are an estimate until all have been. None where the boiler has no part in it. */
  readonly runs: number;
  readonly of: number;
}
