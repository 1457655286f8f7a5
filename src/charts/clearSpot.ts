import type { Point } from './linePath.ts';

/** A rectangle a text takes up, pixels. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * The first of some places for a text that no line crosses, or the one with the fewest crossings.
 * @param places  in order of preference
 * @param lines   drawn points of each line, pixels
 * @param taken   rectangles of texts that are already placed
 */
export function clearSpot(
  places: readonly Box[],
  lines: readonly (readonly Point[])[],
  taken: readonly Box[] = [],
): Box {
  let best = places[0];
  let fewest = Infinity;
  for (const place of places) {
    const hits = hitsOf(place, lines, taken);
    if (hits < fewest) {
      best = place;
      fewest = hits;
    }
    if (hits === 0) break;
  }
  return best;
}

/** The first of some places that no line crosses and no text takes, or null when there is none. */
export function freeSpot(
  places: readonly Box[],
  lines: readonly (readonly Point[])[],
  taken: readonly Box[] = [],
): Box | null {
  return places.find((place) => hitsOf(place, lines, taken) === 0) ?? null;
}

/** Lines and texts in a rectangle; a text counts for three lines. */
function hitsOf(place: Box, lines: readonly (readonly Point[])[], taken: readonly Box[]): number {
  return (
    lines.filter((line) => crosses(line, place)).length +
    taken.filter((box) => overlaps(box, place)).length * 3
  );
}

/** Whether two rectangles share a pixel. */
export function overlaps(one: Box, other: Box): boolean {
  return (
    one.x < other.x + other.width &&
    other.x < one.x + one.width &&
    one.y < other.y + other.height &&
    other.y < one.y + one.height
  );
}

/** Whether any stretch of a line enters a rectangle. */
function crosses(line: readonly Point[], box: Box): boolean {
  for (let index = 1; index < line.length; index += 1) {
    const isForward = line[index - 1][0] <= line[index][0];
    const [left, from] = line[isForward ? index - 1 : index];
    const [right, to] = line[isForward ? index : index - 1];
    if (right < box.x || left > box.x + box.width) continue;
    const at = (x: number) =>
      right > left ? from + ((to - from) * (x - left)) / (right - left) : to;
    const enters = at(Math.max(left, box.x));
    const leaves = at(Math.min(right, box.x + box.width));
    const low = right > left ? Math.min(enters, leaves) : Math.min(from, to);
    const high = right > left ? Math.max(enters, leaves) : Math.max(from, to);
    if (high > box.y && low < box.y + box.height) return true;
  }
  return false;
}
