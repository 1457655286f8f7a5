import type { Attachment } from 'svelte/attachments';

/** Tells what is done to the sensor; `height` in pixels from the top of the drawing. */
export interface SensorMoves {
  readonly start: () => void;
  readonly move: (y: number) => void;
  readonly commit: (y: number) => void;
  readonly cancel: () => void;
}

/**
 * Drags a handle: moves while it is held, one commit when it is let go, cancel on Escape or when
 * the pointer is taken away. The handle keeps the distance at which it was gripped.
 * @param drawing   element whose top edge heights are measured from
 * @param handleAt  where the handle stands when it is gripped, pixels from that edge
 */
export function sensorDrag(
  drawing: () => HTMLElement | undefined,
  handleAt: () => number,
  moves: SensorMoves,
): Attachment<HTMLElement> {
  return (handle) => {
    let pointer: number | null = null;
    let grip = 0;
    let last: number | null = null;

    const end = () => {
      pointer = null;
      window.removeEventListener('keydown', pressed, true);
    };
    const pressed = (event: KeyboardEvent) => {
      if (event.key !== 'Escape') return;
      event.preventDefault();
      event.stopPropagation();
      end();
      moves.cancel();
    };
    const down = (event: PointerEvent) => {
      if (event.button !== 0 || pointer !== null) return;
      event.preventDefault();
      pointer = event.pointerId;
      handle.setPointerCapture(pointer);
      const edge = drawing()?.getBoundingClientRect().top ?? 0;
      grip = edge + (event.clientY - edge - handleAt());
      last = null;
      window.addEventListener('keydown', pressed, true);
      moves.start();
    };
    const move = (event: PointerEvent) => {
      if (event.pointerId !== pointer) return;
      last = event.clientY - grip;
      moves.move(last);
    };
    const up = (event: PointerEvent) => {
      if (event.pointerId !== pointer) return;
      end();
      if (last !== null) moves.commit(last);
    };
    const lost = (event: PointerEvent) => {
      if (event.pointerId !== pointer) return;
      end();
      moves.cancel();
    };

    handle.addEventListener('pointerdown', down);
    handle.addEventListener('pointermove', move);
    handle.addEventListener('pointerup', up);
    handle.addEventListener('pointercancel', lost);
    return () => {
      end();
      handle.removeEventListener('pointerdown', down);
      handle.removeEventListener('pointermove', move);
      handle.removeEventListener('pointerup', up);
      handle.removeEventListener('pointercancel', lost);
    };
  };
}

/** Calls back with the height of a tap or click, pixels from the top of the element. */
export function tapped(at: (y: number) => void): Attachment<Element> {
  return (element) => {
    const click = (event: Event) => {
      at((event as MouseEvent).clientY - element.getBoundingClientRect().top);
    };
    element.addEventListener('click', click);
    return () => element.removeEventListener('click', click);
  };
}
