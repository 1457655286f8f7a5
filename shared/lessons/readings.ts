import { duration, figure } from '../format.ts';
import type { Mark, Quantity, Result } from '../result.ts';
import { layerAt, profileAt, valueAt } from '../sampleAt.ts';
import type { Celsius, Metres, Seconds } from '../units.ts';

// What lessons read off a run besides its measures.

/** A quantity at a moment, SI. */
export function readAt(result: Result, quantity: Quantity, at: Seconds): number {
  return valueAt(result.trace.time, result.trace.of[quantity], at);
}

/** A quantity at the end of the run, SI. */
export function readLast({ trace }: Result, quantity: Quantity): number {
  return trace.of[quantity][trace.samples - 1];
}

/** The water at a height at a moment. */
export function heightAt({ trace, variant }: Result, height: Metres, at: Seconds): Celsius {
  return layerAt(profileAt(trace, at), height / variant.cylinder.height);
}

/** The mean of all layers at a moment. */
export function meanAt({ trace }: Result, at: Seconds): Celsius {
  const layers = profileAt(trace, at);
  return layers.reduce((sum, T) => sum + T, 0) / layers.length;
}

/** Height between 20 and 50 °C, where the store is layered: from the highest water at 20 °C to the lowest at 50 °C. */
export function boundaryAt({ trace, variant }: Result, at: Seconds): Metres {
  const layers = profileAt(trace, at);
  const up = (level: Celsius): number => {
    const above = layers.findIndex((T) => T > level);
    if (above < 0) return layers.length;
    if (above === 0) return 0;
    const [low, high] = [layers[above - 1], layers[above]];
    return above + (level - high) / (high - low);
  };
  return ((up(UPPER) - up(LOWER)) / layers.length) * variant.cylinder.height;
}

/** When a mark first comes, or null. @param from  not before this */
export function firstAt({ marks }: Result, kind: Mark['kind'], from: Seconds = 0): Seconds | null {
  return marks.find((mark) => mark.kind === kind && mark.at >= from)?.at ?? null;
}

/** When a mark comes for the last time, or null. */
export function lastAt({ marks }: Result, kind: Mark['kind']): Seconds | null {
  return marks.findLast((mark) => mark.kind === kind)?.at ?? null;
}

/**
 * What came of two times: `7.5 min sooner`, `18.7 min later`, `at the same time`; words where one was not reached.
 * The difference is of the minutes as they are printed, so that it can be checked by eye.
 */
export function soonerOrLater(before: Seconds | null, after: Seconds | null): string {
  if (before === null && after === null) return 'not within the run, before or after';
  if (after === null) return 'no longer within the run';
  if (before === null) return 'now within the run, as it was not before';
  const later = printed(after) - printed(before);
  if (Math.abs(later) < TOLD / 2) return 'at the same time';
  return `${duration(Math.abs(later))} ${later > 0 ? 'later' : 'sooner'}`;
}

/** `never`, `once`, `twice`, or a number of times. */
export const times = (count: number): string =>
  ['never', 'once', 'twice'][count] ?? `${figure(count, 0)} times`;

/** A time as it is printed under two hours: to 0.1 min. */
const printed = (seconds: Seconds): Seconds => Number((seconds / 60).toFixed(1)) * 60;

/** Two times closer than this read alike, s: minutes are printed to 0.1. */
export const TOLD = 6;

const LOWER: Celsius = 20;
const UPPER: Celsius = 50;
