/** What a chart asks of the shared moment: where it is, and to put it elsewhere. */
export interface Moment {
  /** From the start of the run, s. */
  readonly seconds: number;
  set(seconds: number): void;
}

/**
 * The moment a scrub lands on: whole minutes, tenths of one on an axis shorter than 15 minutes.
 * @param seconds  s
 * @param end      end of the time axis, s
 */
export function settledMoment(seconds: number, end: number): number {
  const step = end < 900 ? 6 : 60;
  return Math.min(end, Math.max(0, Math.round(seconds / step) * step));
}

/**
 * The next whole minute in a direction, so that arrow keys leave a broken minute behind.
 * @param seconds  s
 * @param minutes  how many, backwards when negative
 * @param end      end of the time axis, s
 */
export function steppedMoment(seconds: number, minutes: number, end: number): number {
  const from = minutes > 0 ? Math.floor(seconds / 60 + 1e-9) : Math.ceil(seconds / 60 - 1e-9);
  return Math.min(end, Math.max(0, (from + minutes) * 60));
}
