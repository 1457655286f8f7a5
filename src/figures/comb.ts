import type { Trace } from '../../shared/result.ts';
import { valueAt } from '../../shared/sampleAt.ts';
import type { Seconds } from '../../shared/units.ts';

/**
 * Teeth between flow and return at the coil, path data: one a minute, or a whole number of minutes
 * apart where they would stand closer than 4 pixels. At a steady flow a tooth is as long as the heat
 * is large.
 * @param end  end of the time axis, s
 * @param x    seconds to pixels
 * @param y    °C to pixels
 */
export function comb(
  trace: Trace,
  end: Seconds,
  x: (seconds: number) => number,
  y: (celsius: number) => number,
): string {
  const pixelsPerMinute = x(60) - x(0);
  const every = [1, 2, 5, 10, 20, 60].find((minutes) => minutes * pixelsPerMinute >= 4) ?? 60;
  const teeth: string[] = [];
  for (let at = every * 60; at < end; at += every * 60) {
    if (at > trace.time[trace.samples - 1]) break;
    const flow = valueAt(trace.time, trace.of.coilInlet, at);
    const back = valueAt(trace.time, trace.of.coilOutlet, at);
    if (Number.isNaN(flow) || Number.isNaN(back)) continue;
    teeth.push(`M${x(at).toFixed(1)} ${y(flow).toFixed(1)}V${y(back).toFixed(1)}`);
  }
  return teeth.join('');
}
