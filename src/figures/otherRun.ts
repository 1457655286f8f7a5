import type { Result } from '../../shared/result.ts';
import type { Seconds } from '../../shared/units.ts';
import type { EndLabel } from '../charts/EndLabels.svelte';
import type { Frame } from '../charts/frame.ts';
import { lineEnd, temperatureAtEnd } from './reheatLines.ts';

/** What another variant of the bench came to, drawn beside the one in hand. */
export interface OtherRun {
  readonly letter: string;
  readonly result: Result;
}

/** The letters at the ends of the readings of other variants. @param end  of the time axis, s */
export function otherEnds(others: readonly OtherRun[], end: Seconds, frame: Frame): EndLabel[] {
  return others.flatMap(({ letter, result: { trace } }) => {
    const last = lineEnd(trace, trace.of.sensor, end, false);
    if (last === null) return [];
    const [x, y] = [frame.x(last.at), frame.y(last.value)];
    return [{ key: letter, name: letter, value: temperatureAtEnd(last.value), x, y, letter }];
  });
}
