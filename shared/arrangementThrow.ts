import type { Arrangement } from './arrangements.ts';
import type { Seconds } from './units.ts';

/** The switch between arrangements, thrown while a run goes on: from this time of the run it is this one. */
export interface ArrangementThrow {
  readonly at: Seconds;
  readonly arrangement: Arrangement;
}
