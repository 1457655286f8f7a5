import { celsius, duration, figure } from '../../shared/format.ts';
import type { Seconds } from '../../shared/units.ts';
import { valueAt } from '../../shared/sampleAt.ts';
import type { TableOf } from '../charts/table.ts';
import type { OtherRun } from './otherRun.ts';
import { temperatureTop, timeEnd } from './reheatFrames.ts';

/** Places of the readings of all variants and their ribbons, pixels of the drawing. */
export interface OverlayFrames {
  readonly left: number;
  readonly right: number;
  readonly temperature: { readonly top: number; readonly bottom: number };
  /** One for each variant, in their order. */
  readonly strips: readonly { readonly top: number; readonly bottom: number }[];
  readonly height: number;
}

/** @param width  of the drawing, pixels @param count  of variants @param isLow  on a phone */
export function overlayFrames(width: number, count: number, isLow: boolean): OverlayFrames {
  const [left, right] = [34, Math.max(120, width - 64)];
  const temperature = { top: 24, bottom: isLow ? 210 : 300 };
  const strips = Array.from({ length: count }, (_, place) => {
    const top = temperature.bottom + 54 + place * 34;
    return { top, bottom: top + 11 };
  });
  return { left, right, temperature, strips, height: (strips.at(-1)?.bottom ?? 0) + 6 };
}

/** End of the time axis, s: of the run that takes longest among those that recover; of all where none does. */
export function overlayEnd(runs: readonly OtherRun[]): Seconds {
  const results = runs.map(({ result }) => result);
  const recovered = results.filter(({ measures }) => measures.recovery !== null);
  return Math.max(60, ...(recovered.length > 0 ? recovered : results).map((each) => timeEnd(each)));
}

/** Top of the temperature axis, °C: above every set-point and everything that is read. */
export function overlayTop(runs: readonly OtherRun[]): number {
  return Math.max(
    20,
    ...runs.map(({ result }) => Math.min(temperatureTop(result), readMost(result) + 10)),
  );
}

function readMost({ trace, variant }: OtherRun['result']): number {
  const read = trace.of.sensor.reduce((most, value) => Math.max(most, value), 0);
  return Math.ceil(Math.max(read, variant.stat.setPoint) / 10) * 10;
}

/** The readings of all variants as rows of text, at even minutes. */
export function overlayTable(runs: readonly OtherRun[], end: Seconds): TableOf {
  const step = [1, 2, 5, 10, 15, 20, 30, 60, 120].find((each) => end / each / 60 <= 24) ?? 240;
  const rows = Array.from({ length: Math.floor(end / step / 60) + 1 }, (_, row) => row * step * 60);
  return {
    columns: ['min', ...runs.map(({ letter }) => `${letter} sensor reads, °C`)],
    rows: rows.map((at) => [figure(at / 60, 0), ...runs.map((run) => readingText(run, at))]),
  };
}

/** What the sensor of a variant reads at a moment: 51.7; a dash after the end of its run. */
export function readingText({ result }: OtherRun, at: Seconds): string {
  const { time, of } = result.trace;
  return figure(at > result.outcome.at ? null : valueAt(time, of.sensor, at), 1);
}

/** What is read at a moment, from the coolest to the hottest of those that still run. */
export function overlayHeading(runs: readonly OtherRun[], at: Seconds): string {
  const read = runs
    .filter(({ result }) => at <= result.outcome.at)
    .map(({ result: { trace } }) => valueAt(trace.time, trace.of.sensor, at));
  const when = `After ${duration(at, at % 60 === 0 ? 0 : 1)}`;
  if (read.length === 0) return `${when} 0 variants still run`;
  const [least, most] = [Math.min(...read), Math.max(...read)];
  if (read.length === 1) return `${when} the sensor reads ${celsius(most)}`;
  return figure(least, 1) === figure(most, 1)
    ? `${when} the sensors read ${celsius(most)} in ${read.length === 2 ? 'both' : `all ${read.length}`} variants`
    : `${when} the sensors read ${figure(least, 1)} to ${celsius(most)}`;
}
