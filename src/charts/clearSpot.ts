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
  const boxRight = box.x + box.width;
  for (let index = 1; index < line.length; index += 1) {
    const one = line[index - 1];
    const other = line[index];
    // most stretches lie to one side: asked first, for this runs with every move of a handle
    if (one[0] < box.x && other[0] < box.x) continue;
    if (one[0] > boxRight && other[0] > boxRight) continue;
    if (enters(one[0] <= other[0] ? one : other, one[0] <= other[0] ? other : one, box))
      return true;
  }
  return false;
}

/** Whether the stretch between two points, the left one first, enters a rectangle that it passes above, below or through. */
function enters([left, from]: Point, [right, to]: Point, box: Box): boolean {
  const at = (x: number) =>
    right > left ? from + ((to - from) * (x - left)) / (right - left) : to;
  const first = right > left ? at(Math.max(left, box.x)) : from;
  const last = right > left ? at(Math.min(right, box.x + box.width)) : to;
  return Math.max(first, last) > box.y && Math.min(first, last) < box.y + box.height;
}
