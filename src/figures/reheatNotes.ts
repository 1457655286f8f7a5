import { duration, figure } from '../../shared/format.ts';
import type { Result } from '../../shared/result.ts';
import { type Box, clearSpot, freeSpot } from '../charts/clearSpot.ts';
import type { EndLabel } from '../charts/EndLabels.svelte';
import { endPlaces, textWidth } from '../charts/endLabels.ts';
import type { Frame } from '../charts/frame.ts';
import { linePieces, type Point } from '../charts/linePath.ts';
import type { Labels } from './lineLabels.ts';
import type { FigureLine } from './reheatLines.ts';

/** A text placed in the frame, left end of its baseline, pixels. */
export interface Note {
  readonly key: string;
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly strong?: boolean;
}

/** A place a text is tied to, pixels. */
export interface Dot {
  readonly key: string;
  readonly x: number;
  readonly y: number;
}

const height = 15;

/**
 * The short texts inside the temperature frame, each where no line crosses it: the minutes of this
 * run and of the former one, where the stat turns off and on, and where a run ended early. A level
 * that finds no free place is named beside the frame.
 * @param others  results of other variants, whose reading is drawn too
 * @param lines   every other line drawn in the frame
 * @param labels  names at line ends, and the pixels that those inside the frame may take
 */
export function reheatNotes(
  result: Result,
  before: Result | null,
  others: readonly Result[],
  lines: readonly FigureLine[],
  frame: Frame,
  labels: Labels,
): { notes: Note[]; dots: Dot[]; beside: EndLabel[] } {
  const { setPoint, differential } = result.variant.stat;
  const drawn: (readonly Point[])[] = lines.flatMap((line) =>
    linePieces(result.trace.time, line.values, frame.x, frame.y),
  );
  for (const { trace } of before === null ? others : [before, ...others]) {
    drawn.push(...linePieces(trace.time, trace.of.sensor, frame.x, frame.y));
  }
  drawn.push(...betweenFlowAndReturn(result, frame));
  drawn.push(...leaders(labels.outside, setPoint, frame));
  const places = endPlaces(labels.inside, labels.insideBand);
  const taken: Box[] = labels.inside.map((label, index) => ({
    x: label.x,
    y: places[index] - height / 2,
    width: labels.insideLeft - label.x + textWidth(`${label.name} ${label.value}`),
    height,
  }));
  const notes: Note[] = [];
  const dots: Dot[] = [];
  const place = (key: string, text: string, places: readonly Box[], strong = false) => {
    const spot = clearSpot(places, drawn, taken);
    taken.push(spot);
    notes.push({ key, text, x: spot.x, y: spot.y + height - 4, strong });
  };
  const reached = (key: string, words: string, run: Result) => {
    if (run.measures.recovery === null) return;
    const dot = { key, x: frame.x(run.measures.recovery), y: frame.y(setPoint) };
    if (dot.x > frame.right) return;
    dots.push(dot);
    const text = `${words}${duration(run.measures.recovery, 1)}`;
    place(key, text, around(dot, textWidth(text), frame), key === 'now');
  };

  reached('now', '', result);
  if (before !== null) reached('before', 'before ', before);
  const { kind, at } = result.outcome;
  if (kind !== 'finished' && frame.x(at) <= frame.right) {
    const text = `ended at ${duration(at, 1)}`;
    place('ended', text, around({ x: frame.x(at), y: frame.top + 24 }, textWidth(text), frame));
  }

  const beside: EndLabel[] = [];
  const level = (key: string, temperature: number, side: -1 | 1) => {
    const y = frame.y(temperature);
    const text = `${key} at ${figure(temperature, 0)}`;
    const spot = freeSpot(along(y, textWidth(text), frame, side), drawn, taken);
    if (spot === null) {
      const value = figure(temperature, 0);
      beside.push({ key, name: `stat ${key}`, value, quiet: true, x: frame.right, y });
      return;
    }
    taken.push(spot);
    notes.push({ key, text, x: spot.x, y: spot.y + height - 4 });
  };
  level('off', setPoint, -1);
  // a narrow band has room for one name only
  if (frame.y(setPoint - differential) - frame.y(setPoint) > 6) {
    level('on', setPoint - differential, 1);
  }
  return { notes, dots, beside };
}

/** Lines through the comb between flow and return, so that no text stands on its teeth. */
function betweenFlowAndReturn({ trace }: Result, frame: Frame): Point[][] {
  const { coilInlet, coilOutlet } = trace.of;
  return [0.2, 0.4, 0.6, 0.8].flatMap((share) => {
    const between = coilInlet.map((flow, index) => flow + share * (coilOutlet[index] - flow));
    return linePieces(trace.time, between, frame.x, frame.y);
  });
}

/**
 * The lines from where a line ends in the frame to its name beside it; also where they would be with one name more beside the
 * frame, of a level that finds no place in it.
 */
function leaders(outside: readonly EndLabel[], level: number, frame: Frame): Point[][] {
  return [outside, [...outside, { y: frame.y(level) }]].flatMap((names) => {
    const places = endPlaces(names, frame);
    return outside.flatMap(({ x, y }, index): Point[][] =>
      x < frame.right - 2
        ? [
            [
              [x, y],
              [frame.right + 9, places[index]],
            ],
          ]
        : [],
    );
  });
}

/** Places along a level, just above it (-1) or below it (1), from the left; then on its other side. */
function along(level: number, width: number, frame: Frame, side: -1 | 1): Box[] {
  const [above, below] = [level - height - 2, level + 2];
  const steps = 12;
  const room = frame.right - frame.left - width - 6;
  const lefts = Array.from(
    { length: steps + 1 },
    (_, step) => frame.left + 4 + (room * step) / steps,
  );
  const levels = side < 0 ? [above, below] : [below, above];
  return levels.flatMap((y) => lefts.map((x) => ({ x, y, width, height })));
}

/** Places around a dot: above, then below, each before, over and after it; then further off. */
function around({ x, y }: { x: number; y: number }, width: number, frame: Frame): Box[] {
  const levels = [y - 21, y + 6, y - 36, y + 21, y - 51, y + 36];
  const lefts = [x - width - 6, x - width / 2, x + 6];
  return levels
    .flatMap((top) => lefts.map((left) => ({ x: left, y: top, width, height })))
    .filter((box) => box.x >= frame.left && box.x + width <= frame.right + 2)
    .filter((box) => box.y >= frame.top - 8 && box.y + height <= frame.bottom);
}
