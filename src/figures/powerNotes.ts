import { type Box, clearSpot } from '../charts/clearSpot.ts';
import type { EndLabel } from '../charts/EndLabels.svelte';
import { textWidth } from '../charts/endLabels.ts';
import type { Frame } from '../charts/frame.ts';
import { linePieces } from '../charts/linePath.ts';
import type { FigureLine } from './reheatLines.ts';

/** A name of a heat flow placed in its frame, left end of the baseline, pixels. */
export interface PowerNote {
  readonly key: string;
  readonly name: string;
  readonly value: string;
  readonly x: number;
  readonly y: number;
}

const height = 14;

/**
 * Names of the heat flows that end inside their frame, where no line crosses them: after the end, or
 * under the line before it.
 * @param labels  names with the ends of their lines
 * @param time    [sample], s
 */
export function powerNotes(
  labels: readonly EndLabel[],
  lines: readonly FigureLine[],
  time: Float64Array,
  frame: Frame,
): PowerNote[] {
  const drawn = lines.flatMap((line) => linePieces(time, line.values, frame.x, frame.y));
  const taken: Box[] = [];
  return labels.map(({ key, name, value, x, y }) => {
    const width = textWidth(`${name} ${value}`);
    const levels = [y - height / 2, y + 4, frame.bottom - height - 2, frame.top - height];
    const lefts = [x + 8, x - width - 6, x - 1.5 * width - 6, frame.left + 6];
    const places = lefts.flatMap((left) =>
      levels.map((top) => ({ x: left, y: top, width, height })),
    );
    const inFrame = places.filter(
      (box) =>
        box.x > frame.left && box.x + width < frame.right && box.y + height <= frame.bottom - 1,
    );
    const spot = clearSpot(inFrame.length > 0 ? inFrame : places, drawn, taken);
    taken.push(spot);
    return { key, name, value, x: spot.x, y: spot.y + height - 3 };
  });
}
