import type { DayRun, DrawReport } from '../../shared/day.ts';
import { fails } from '../../shared/drawFails.ts';
import { failureLabel, failureWord } from '../../shared/sentences/dayDraws.ts';
import { textWidth } from '../charts/endLabels.ts';

/** A text over a drawing: its left end, and what it points at, pixels. */
export interface PointedText {
  readonly text: string;
  readonly left: number;
  readonly at: readonly number[];
}

/**
 * What is written over the draws that failed: each by name and litres; where that has no room, one word each; and where
 * that has none, neighbours together with their number. No two overlap and none leaves the frame.
 * @param x  seconds to pixels
 */
export function failureTexts(
  { draws, variant }: DayRun,
  x: (seconds: number) => number,
  left: number,
  right: number,
): PointedText[] {
  let groups = draws.filter(fails).map((draw) => [draw]);
  for (;;) {
    for (const text of [
      (group: readonly DrawReport[]) => groupText(group, (draw) => failureLabel(draw, variant)),
      (group: readonly DrawReport[]) => groupText(group, (draw) => failureWord(draw) ?? ''),
    ]) {
      const texts = groups.map((group) => pointed(text(group), group, x, left, right));
      const fit = texts.every(({ text: said }) => textWidth(said) <= right - left);
      if (fit && texts.every((one, index) => index === 0 || clear(texts[index - 1], one))) {
        return texts;
      }
    }
    groups = withNearestJoined(groups);
  }
}

function groupText(group: readonly DrawReport[], single: (draw: DrawReport) => string): string {
  if (group.length === 1) return single(group[0]);
  const areCold = group.every((draw) => failureWord(draw) === 'cold');
  return `${group.length} ${areCold ? 'cold' : 'short'}`;
}

function pointed(
  text: string,
  group: readonly DrawReport[],
  x: (seconds: number) => number,
  left: number,
  right: number,
): PointedText {
  const at = group.map(({ from, to }) => x((from + to) / 2));
  const middle = (at[0] + at[at.length - 1]) / 2;
  const width = textWidth(text);
  return { text, left: Math.max(left, Math.min(right - width, middle - width / 2)), at };
}

function clear(one: PointedText, next: PointedText): boolean {
  return one.left + textWidth(one.text) + GAP <= next.left;
}

/** The two neighbours that stand nearest become one; of those about as near, the two with the fewest draws. */
function withNearestJoined(groups: readonly DrawReport[][]): DrawReport[][] {
  const pairs = groups.slice(1).map((group, index) => ({
    index,
    gap: Math.max(0, group[0].from - (groups[index].at(-1)?.to ?? 0)),
    size: group.length + groups[index].length,
  }));
  const near = 1.1 * Math.min(...pairs.map(({ gap }) => gap));
  const joined = pairs
    .filter(({ gap }) => gap <= near)
    .reduce((fewest, pair) => (pair.size < fewest.size ? pair : fewest)).index;
  return groups.flatMap((group, index) =>
    index === joined ? [[...group, ...groups[index + 1]]] : index === joined + 1 ? [] : [group],
  );
}

/** Between two texts, pixels. */
const GAP = 8;
