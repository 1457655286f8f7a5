import { isAllowed, nextEdge } from '../../shared/programme.ts';
import type { Seconds } from '../../shared/units.ts';
import type { Programme } from '../../shared/variant.ts';
import { textWidth } from '../charts/endLabels.ts';

/** A time in which hot water is allowed, s after the first midnight. */
export interface Window {
  readonly from: Seconds;
  readonly to: Seconds;
}

/** The times in which a programme allows hot water, in order; none where it is always allowed. */
export function hotWaterWindows(programme: Programme, end: Seconds): Window[] {
  if (programme.hotWater === 'always') return [];
  const windows: { from: Seconds; to: Seconds }[] = [];
  for (let at = 0; at < end;) {
    const next = Math.min(end, nextEdge(programme, at));
    if (isAllowed(programme, 'hotWater', (at + next) / 2)) {
      const last = windows.at(-1);
      if (last?.to === at) last.to = next;
      else windows.push({ from: at, to: next });
    }
    at = next;
  }
  return windows;
}

/**
 * The word on each window, left end in pixels: in full, or short; where neither has room, on the first one only.
 * @param x  seconds to pixels
 */
export function windowTexts(
  windows: readonly Window[],
  x: (seconds: number) => number,
  left: number,
  right: number,
): { readonly text: string; readonly left: number }[] {
  const placed = (text: string) =>
    windows.map(({ from, to }) => {
      const width = textWidth(text);
      const middle = (x(from) + x(to)) / 2;
      return { text, left: Math.max(left + 2, Math.min(right - width, middle - width / 2)) };
    });
  for (const text of ['hot water allowed', 'allowed']) {
    const texts = placed(text);
    const width = textWidth(text) + 8;
    if (texts.every((one, index) => index === 0 || texts[index - 1].left + width <= one.left)) {
      return texts;
    }
  }
  return placed('allowed').slice(0, 1);
}
