import { defaultVariant } from '../../shared/fields.ts';
import type { Spread } from '../../shared/spread.ts';

/** An invented spread, for words and drawings only: 20 runs evenly from 36 to 55 min, the coil first. No physics. */
export function inventedSpread(wish: Partial<Spread> = {}): Spread {
  const time = Float64Array.from({ length: 61 }, (_, sample) => 60 * sample);
  const reading = (minutes: number) => time.map((at) => 10 + 50 * Math.min(1, at / 60 / minutes));
  return {
    variant: defaultVariant('invented'),
    low: 2220,
    median: 2730,
    high: 3240,
    recoveries: Float64Array.from({ length: 20 }, (_, run) => 60 * (36 + run)),
    firstOrder: [
      { key: 'coil', share: 0.6 },
      { key: 'primaryFlow', share: 0.2 },
      { key: 'cold', share: 0.1 },
      { key: 'scale', share: 0.02 },
      { key: 'lag', share: 0 },
    ],
    time,
    lowReading: reading(54),
    medianReading: reading(45.5),
    highReading: reading(37),
    runs: 20,
    reached: 20,
    of: 20,
    ...wish,
  };
}
