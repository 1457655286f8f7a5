import type { Trace } from '../../shared/result.ts';
import type { Seconds } from '../../shared/units.ts';
import type { EndLabel } from '../charts/EndLabels.svelte';
import { textWidth } from '../charts/endLabels.ts';
import type { Frame } from '../charts/frame.ts';
import { type FigureLine, lineEnd } from './reheatLines.ts';

interface Labels {
  /** Names beside the right edge of the frame. */
  readonly outside: readonly EndLabel[];
  /** Names of lines that end inside the frame, and where they start, pixels. */
  readonly inside: readonly EndLabel[];
  readonly insideLeft: number;
}

/**
 * Names at the ends of the lines of a frame. A line that stops before the axis does carries its name
 * where it stops, if there is room to its right.
 * @param end     end of the time axis, s
 * @param isHeat  whether the lines are heat flows, which are of no interest once they are nought
 * @param text    last value as text
 */
export function lineLabels(
  lines: readonly FigureLine[],
  trace: Trace,
  end: Seconds,
  frame: Frame,
  isHeat: boolean,
  text: (value: number) => string,
): Labels {
  const labels = lines.flatMap((line): EndLabel[] => {
    const last = lineEnd(trace, line.values, end, isHeat);
    if (last === null) return [];
    const { key, name, quiet = false } = line;
    return [
      { key, name, value: text(last.value), quiet, x: frame.x(last.at), y: frame.y(last.value) },
    ];
  });
  const insideLeft = (label: EndLabel) => label.x + 12;
  const fitsInside = (label: EndLabel) =>
    insideLeft(label) + textWidth(`${label.name} ${label.value}`) < frame.right - 2;
  const inside = labels.filter(fitsInside);
  return {
    inside,
    outside: labels.filter((label) => !fitsInside(label)),
    insideLeft: Math.max(0, ...inside.map(insideLeft)),
  };
}
