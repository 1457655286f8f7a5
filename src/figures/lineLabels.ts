import type { Trace } from '../../shared/result.ts';
import type { Seconds } from '../../shared/units.ts';
import type { EndLabel } from '../charts/EndLabels.svelte';
import { textWidth } from '../charts/endLabels.ts';
import type { Frame } from '../charts/frame.ts';
import { type FigureLine, lineEnd } from './reheatLines.ts';

/** Names at the ends of the lines of a frame. */
export interface Labels {
  /** Names beside the right edge of the frame. */
  readonly outside: readonly EndLabel[];
  /** Names of lines that end inside the frame, and where they start, pixels. */
  readonly inside: readonly EndLabel[];
  readonly insideLeft: number;
  /** First and last pixel that these may take. */
  readonly insideBand: Span;
}

interface Span {
  readonly top: number;
  readonly bottom: number;
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
  const { inside, outside } = sorted(labels, frame.right - 2);
  return {
    inside,
    outside,
    insideLeft: Math.max(0, ...inside.map(insideLeft)),
    insideBand: bandAbove(outside, inside, frame),
  };
}

/** Names with room beside the ends of their lines, and the others; all of them outside where a line to one would cross another. */
function sorted(labels: readonly EndLabel[], right: number) {
  const end = (label: EndLabel) => insideLeft(label) + textWidth(`${label.name} ${label.value}`);
  const inside = labels.filter((label) => end(label) < right);
  const outside = labels.filter((label) => end(label) >= right);
  const mayCross = inside.some((name) => outside.some(({ x }) => x < end(name)));
  return mayCross ? { inside: [], outside: labels } : { inside, outside };
}

/** Where the name of a line that ends inside the frame starts, pixels. */
function insideLeft({ x }: EndLabel): number {
  return x + 12;
}

/**
 * Where names inside the frame may stand: above the lines that run on beneath them, if theirs end
 * above those and there is room, a row of it over the frame; else anywhere in the frame.
 */
function bandAbove(
  running: readonly { readonly y: number }[],
  ended: readonly { readonly y: number }[],
  { top, bottom }: Span,
): Span {
  const highest = Math.min(bottom, ...running.map(({ y }) => y));
  const areAbove = ended.every(({ y }) => y < highest);
  const room = highest - top + overFrame;
  return areAbove && room > ended.length * rowHeight
    ? { top: top - overFrame, bottom: highest - halfText }
    : { top, bottom };
}

const rowHeight = 15;
/** Pixels that names may rise over the frame, clear of its title on the left. */
const overFrame = 12;
/** From the middle of a name to the line it has to clear, pixels. */
const halfText = 7.5;
