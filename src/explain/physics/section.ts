import type { DayRun } from '../../../shared/day.ts';
import type { Result } from '../../../shared/result.ts';
import type { Seconds } from '../../../shared/units.ts';
import type { Reading } from '../reading.ts';
import type { Step, Working, WorkingKey } from '../working.ts';

/** The installation as it is told of: its run, the moment in hand, and a day in use where one has been run. */
export interface Here {
  readonly result: Result;
  readonly at: Seconds;
  readonly reading: Reading;
  /** Whether water runs through the coil at the moment. */
  readonly coilRuns: boolean;
  readonly day: DayRun | null;
}

/** A number in a sentence, and the working it opens. */
export interface Live {
  readonly text: string;
  readonly of: WorkingKey;
}

/** A paragraph: words and live numbers. */
export type Told = readonly (string | Live)[];

/** One idea of the explanation. */
export interface Section {
  /** For links: `outside`. */
  readonly id: string;
  readonly title: string;
  /** Two to five sentences in one paragraph or two, true of the installation at the moment. */
  readonly said: (here: Here) => readonly Told[];
  /** One relation or two, with the numbers of the working they stand in. */
  readonly formulas: (here: Here) => readonly Step[];
  /** Workings that go on from here. */
  readonly further: Working['further'];
  /** Cautions of the table that belong here, where they apply. */
  readonly cautions?: readonly string[];
}
