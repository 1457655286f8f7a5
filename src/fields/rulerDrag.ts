import type { Attachment } from 'svelte/attachments';
import { held } from './held.ts';

/** What a drag along a ruler tells. Steps are counted from where the drag began. */
export interface RulerHand {
  readonly start: () => void;
  readonly move: (steps: number) => void;
  readonly commit: (steps: number) => void;
  readonly cancel: () => void;
}

/** Follows a pointer that drags sideways; less than a step tells nothing. Escape takes the drag back. */
export function rulerDrag(hand: RulerHand): Attachment<HTMLElement> {
  let steps = 0;
  let hasStepped = false;
  return held({
    start: (node) => {
      node.focus({ preventScroll: true });
      steps = 0;
      hasStepped = false;
    },
    move: (across) => {
      const now = Math.round(across / PIXELS_PER_STEP);
      if (now === steps) return;
      if (!hasStepped) hand.start();
      hasStepped = true;
      steps = now;
      hand.move(steps);
    },
    commit: () => hasStepped && hand.commit(steps),
    cancel: () => hasStepped && hand.cancel(),
  });
}

/** How far the finger goes for one step of a setting, px. */
const PIXELS_PER_STEP = 6;
