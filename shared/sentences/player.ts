import type { ArrangementThrow } from '../arrangementThrow.ts';
import { type Arrangement, arrangementOf } from '../arrangements.ts';
import { celsius, duration, kilowatts } from '../format.ts';
import type { Result } from '../result.ts';
import { valueAt } from '../sampleAt.ts';
import type { Seconds } from '../units.ts';
import { type FigureWords, say } from './sentence.ts';

/**
 * What is known of a run at a moment in it, before the rest is decided.
 * @param now  the arrangement at the moment
 */
export function playerFinding(result: Result, at: Seconds, now: Arrangement): FigureWords {
  const { time, of } = result.trace;
  const here = (column: Float64Array) => valueAt(time, column, at);
  const sensor = celsius(here(of.bead));
  const rooms = arrangementOf(now).heated ? `, the rooms at ${celsius(here(of.air))}` : '';
  const heading =
    at === 0
      ? say`At the start the cylinder is at ${sensor} at the sensor${rooms}.`
      : say`After ${duration(at, at % 60 === 0 ? 0 : 1)} the cylinder is at ${sensor} at the sensor${rooms}.`;
  const summary = [
    say`The boiler gives ${kilowatts(here(of.boilerHeat))} and the coil ${kilowatts(here(of.coilHeat))}; what comes next is not decided yet.`,
  ];
  return { heading, summary };
}

/** What is said when the switch is thrown. */
export function thrownWords({ at, arrangement }: ArrangementThrow): string {
  return `At ${duration(at, at % 60 === 0 ? 0 : 1)} the switch is thrown to ${arrangementOf(arrangement).label}.`;
}
