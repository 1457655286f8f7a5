/** What a drag along a ruler tells. Steps are counted from where the drag began. */
export interface RulerHand {
  readonly start: () => void;
  readonly move: (steps: number) => void;
  readonly commit: (steps: number) => void;
  readonly cancel: () => void;
}

/** Follows a pointer that drags sideways; a tap that does not move tells nothing. Escape takes the drag back. */
export function rulerDrag(hand: RulerHand): (node: HTMLElement) => () => void {
  return (node) => {
    let from: number | null = null;
    let steps = 0;
    let hasMoved = false;

    function down(event: PointerEvent) {
      if (event.button !== 0) return;
      from = event.clientX;
      steps = 0;
      hasMoved = false;
      node.setPointerCapture(event.pointerId);
      node.focus({ preventScroll: true });
    }

    function move(event: PointerEvent) {
      if (from === null) return;
      const now = Math.round((event.clientX - from) / PIXELS_PER_STEP);
      if (now === steps) return;
      if (!hasMoved) hand.start();
      hasMoved = true;
      steps = now;
      hand.move(steps);
    }

    function up() {
      if (from !== null && hasMoved) hand.commit(steps);
      from = null;
    }

    function stop() {
      if (from !== null && hasMoved) hand.cancel();
      from = null;
    }

    function pressed(event: KeyboardEvent) {
      if (event.key !== 'Escape' || from === null || !hasMoved) return;
      event.stopPropagation();
      stop();
    }

    node.addEventListener('pointerdown', down);
    node.addEventListener('pointermove', move);
    node.addEventListener('pointerup', up);
    node.addEventListener('pointercancel', stop);
    window.addEventListener('keydown', pressed, true);
    return () => {
      stop();
      node.removeEventListener('pointerdown', down);
      node.removeEventListener('pointermove', move);
      node.removeEventListener('pointerup', up);
      node.removeEventListener('pointercancel', stop);
      window.removeEventListener('keydown', pressed, true);
    };
  };
}

/** How far the finger goes for one step of a setting, px. */
const PIXELS_PER_STEP = 6;
