import type { Seconds } from '../../shared/units.ts';

/**
 * The first time at which a function that is not above zero at `from` is above zero, by the Illinois method between two
 * times that enclose it. Always returns a time at which it is above zero (or so close to that time that it makes no
 * difference), so that what it guards has really happened.
 * @param g    crossing function
 * @param atFrom  its value at `from`, not above zero
 * @param atTo    its value at `to`, above zero
 */
export function firstCrossing(
  g: (time: Seconds) => number,
  from: Seconds,
  to: Seconds,
  atFrom: number,
  atTo: number,
): Seconds {
  if (atFrom > 0) return from;
  let low = from;
  let high = to;
  let gLow = atFrom;
  let gHigh = atTo;
  let kept: 'low' | 'high' | null = null;
  for (let round = 0; round < ROUNDS && high - low > CLOSE; round++) {
    // A straight line between the ends, but never too near either of them
    const width = high - low;
    const line = Number.isFinite(gLow) ? low + (width * -gLow) / (gHigh - gLow) : low + width / 2;
    const time = Math.min(Math.max(line, low + NEAR * CLOSE), high - NEAR * CLOSE);
    const value = g(time);
    // An end that stays twice running counts for half
    if (value > 0) {
      high = time;
      gHigh = value;
      if (kept === 'low') gLow /= 2;
      kept = 'low';
    } else {
      low = time;
      gLow = value;
      if (kept === 'high') gHigh /= 2;
      kept = 'high';
    }
  }
  return high;
}

const CLOSE = 1e-4; // s; a thousandth of the 0.1 s that events are promised to
const NEAR = 0.4;
const ROUNDS = 60;
