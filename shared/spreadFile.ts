import { cautionsOf } from './cautions.ts';
import { toFile } from './codec.ts';
import { notModelled } from './notModelled.ts';
import type { Result } from './result.ts';
import { plain } from './sentences.ts';
import { spreadFinding } from './sentences/spread.ts';
import type { Spread } from './spread.ts';

/** What stands under `format` in a saved spread. */
export const spreadFormat = 'reheat-bench spread';

/** What the unknowns leave open, for other programs: units in the keys. @param result  as it is set */
export function spreadFile(spread: Spread, result: Result): Record<string, unknown> {
  const { heading, summary } = spreadFinding(spread, result.measures.recovery);
  return {
    format: spreadFormat,
    version: 1,
    variant: toFile(spread.variant),
    finding: [heading, ...summary].map(plain),
    lowSeconds: spread.low,
    medianSeconds: spread.median,
    highSeconds: spread.high,
    asSetSeconds: result.measures.recovery,
    runs: spread.runs,
    reached: spread.reached,
    firstOrder: Object.fromEntries(spread.firstOrder.map(({ key, share }) => [key, share])),
    recoveriesSeconds: [...spread.recoveries],
    cautions: cautionsOf(result.variant, result),
    notModelled,
    readings: {
      timeSeconds: [...spread.time],
      lowCelsius: [...spread.lowReading],
      medianCelsius: [...spread.medianReading],
      highCelsius: [...spread.highReading],
    },
  };
}
