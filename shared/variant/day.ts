import type { LoadProfileName } from '../loadProfileNames.ts';
import type { Celsius, CubicMetres, CubicMetresPerSecond, Seconds } from '../units.ts';

/** A day of hot water in use. Times of day in seconds after midnight. */
export interface Day {
  /** A household, the own draws of the variant, or a load profile of the European Union. */
  readonly pattern: 'household' | 'own' | LoadProfileName;
  readonly people: number;
  /** Taken in the day. */
  readonly baths: number;
  readonly showers: number;
  /** Mixed water. */
  readonly showerFlow: CubicMetresPerSecond;
  /** Until a day ends as it began, or as many days as are stated. */
  readonly repeat: 'untilSteady' | 'stated';
  readonly days: number;
  /** Raised set-point at a stated time of the first day that is shown. */
  readonly pasteurise: 'no' | 'once';
  readonly pasteuriseFrom: Seconds;
  readonly pasteuriseFor: Seconds;
  readonly pasteuriseTo: Celsius;
}

/** One row of the own draws. */
export interface OwnDraw {
  readonly name: string;
  /** Time of day. */
  readonly at: Seconds;
  /** Out of the tap, hot and cold together. */
  readonly volume: CubicMetres;
  readonly flow: CubicMetresPerSecond;
  /** Wanted at the tap. */
  readonly mixedTo: Celsius;
}
