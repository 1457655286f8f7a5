import type { Quantity, Trace } from '../../shared/result.ts';
import { sampleAt, valueAt } from '../../shared/sampleAt.ts';
import type { Seconds } from '../../shared/units.ts';

/** The one moment that every chart, the drawing and the read-out show. */
export class TimeCursor {
  /** From the start of the run, s. */
  seconds: Seconds = $state(0);

  constructor(seconds: Seconds = 0) {
    this.set(seconds);
  }

  /** Puts the moment; before the start counts as the start. */
  set(seconds: Seconds): void {
    if (Number.isNaN(seconds)) throw new Error('moment is not a number; expected seconds');
    this.seconds = Math.max(0, seconds);
  }

  /** Moves the moment forwards, or backwards by a negative step. */
  step(deltaSeconds: Seconds): void {
    this.set(this.seconds + deltaSeconds);
  }

  /** Index of the last sample at or before the moment. */
  sampleOf(trace: Trace): number {
    return sampleAt(trace.time, this.seconds);
  }

  /** A quantity of a run at the moment, straight between two samples, SI. */
  valueAt(column: Quantity | Float64Array, trace: Trace): number {
    const values = typeof column === 'string' ? trace.of[column] : column;
    return valueAt(trace.time, values, this.seconds);
  }
}
