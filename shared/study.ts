import type { Change } from './changes.ts';
import type { CoolDown } from './coolDown.ts';
import type { DayRun } from './day.ts';
import type { Delivered } from './delivery.ts';
import type { MinutesByCause } from './minutes.ts';
import type { Result } from './result.ts';
import type { Spread } from './spread.ts';
import type { CubicMetres, Kelvins, Metres, Seconds } from './units.ts';

/** One point of a study: the variant with one setting changed. */
export interface StudyPoint {
  readonly value: Metres | Kelvins;
  /** Whether the stat calls as the run starts; one that sits in hot water does not, and then nothing is reheated. */
  readonly callsAtStart: boolean;
  readonly recovery: Seconds | null;
  readonly usableAtSatisfied: CubicMetres | null;
  /** Drawn at 10 l/min from the moment the stat is satisfied until it calls. */
  readonly usableAtCall: CubicMetres | null;
  /** From that call until the stat is satisfied again, with nothing drawn. */
  readonly reheatAfterCall: Seconds | null;
  /** Calls on the second of two equal days under the stated draw pattern; differential study only. */
  readonly callsPerDay: number | null;
}

/** What the figures beside the bench are drawn from, and what says why it takes so long. */
export type Study =
  | { readonly kind: 'placement'; readonly points: readonly StudyPoint[] }
  | { readonly kind: 'differential'; readonly points: readonly StudyPoint[] }
  | { readonly kind: 'arrangement'; readonly priority: Result; readonly simultaneous: Result }
  | { readonly kind: 'delivery'; readonly delivered: Delivered }
  | { readonly kind: 'day'; readonly day: DayRun }
  | ({ readonly kind: 'coolDown' } & CoolDown)
  | ({ readonly kind: 'minutes' } & MinutesByCause)
  | { readonly kind: 'changes'; readonly changes: readonly Change[] }
  | ({ readonly kind: 'spread' } & Spread);

/** A study that is drawn before it is finished: what is known so far, and the share done. */
export interface SoFar {
  readonly done: number;
  readonly study: Study;
}
