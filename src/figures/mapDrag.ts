import type { Attachment } from 'svelte/attachments';

/** What a drag across a drawing tells: pixels from the left and top edge of the drawing. */
export interface MapHand {
  readonly start: () => { x: number; y: number };
  readonly move: (x: number, y: number) => void;
  readonly commit: () => void;
  readonly cancel: () => void;
}

/**
 * Follows a pointer that drags a handle in both directions, from where it took hold of it. A tap moves nothing; Escape, or a
 * pointer that is taken away, puts back what stood before.
 */
export function mapDrag(hand: MapHand): Attachment<HTMLElement> {
  return (node) => {
    let from: { pointerX: number; pointerY: number; x: number; y: number } | null = null;
    let hasMoved = false;

    function down(event: PointerEvent) {
      if (event.button !== 0 || from !== null) return;
      from = { pointerX: event.clientX, pointerY: event.clientY, ...hand.start() };
      hasMoved = false;
      node.setPointerCapture(event.pointerId);
      event.preventDefault();
    }

    function move(event: PointerEvent) {
      if (from === null) return;
      const across = event.clientX - from.pointerX;
      const down = event.clientY - from.pointerY;
      if (!hasMoved && Math.abs(across) + Math.abs(down) < SLACK) return;
      hasMoved = true;
      hand.move(from.x + across, from.y + down);
    }

    function up() {
      if (from !== null && hasMoved) hand.commit();
      from = null;
    }

    function stop() {
      if (from !== null && hasMoved) hand.cancel();
      from = null;
    }

    function pressed(event: KeyboardEvent) {
      if (event.key !== 'Escape' || from === null) return;
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

/** A hand that trembles has not moved, pixels. */
const SLACK = 3;
