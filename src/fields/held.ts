import type { Attachment } from 'svelte/attachments';

/** What is told of a pointer that holds an element; where it is, in pixels from where it took hold. */
export interface Hold {
  readonly start: (node: HTMLElement) => void;
  /** Told once it has left the place where it took hold. */
  readonly move: (across: number, down: number) => void;
  /** It let go, and had moved. */
  readonly commit: (across: number, down: number) => void;
  /** It had moved, and what stood before is to be put back. */
  readonly cancel: () => void;
}

/**
 * Follows one pointer that holds an element, wherever it goes. A tap moves nothing; Escape, or a pointer that is taken away,
 * takes back what was moved.
 */
export function held(hold: Hold): Attachment<HTMLElement> {
  return (node) => {
    let from: PointerEvent | null = null;
    let hasMoved = false;

    const isIt = ({ pointerId }: PointerEvent) => pointerId === from?.pointerId;
    const away = (event: PointerEvent): [number, number] => [
      event.clientX - (from?.clientX ?? 0),
      event.clientY - (from?.clientY ?? 0),
    ];

    function down(event: PointerEvent) {
      if (event.button !== 0 || from !== null) return;
      event.preventDefault();
      from = event;
      hasMoved = false;
      node.setPointerCapture(event.pointerId);
      hold.start(node);
    }

    function move(event: PointerEvent) {
      if (!isIt(event)) return;
      const [across, down] = away(event);
      hasMoved ||= Math.abs(across) + Math.abs(down) >= SLACK;
      if (hasMoved) hold.move(across, down);
    }

    function up(event: PointerEvent) {
      if (!isIt(event)) return;
      const at = away(event);
      from = null;
      if (hasMoved) hold.commit(...at);
    }

    function stop() {
      const isOver = from === null || !hasMoved;
      from = null;
      if (!isOver) hold.cancel();
    }

    function lost(event: PointerEvent) {
      if (isIt(event)) stop();
    }

    function pressed(event: KeyboardEvent) {
      if (event.key !== 'Escape' || from === null) return;
      event.preventDefault();
      event.stopPropagation();
      stop();
    }

    const listening = new AbortController();
    const { signal } = listening;
    node.addEventListener('pointerdown', down, { signal });
    node.addEventListener('pointermove', move, { signal });
    node.addEventListener('pointerup', up, { signal });
    node.addEventListener('pointercancel', lost, { signal });
    window.addEventListener('keydown', pressed, { signal, capture: true });
    return () => {
      stop();
      listening.abort();
    };
  };
}

/** A hand that trembles has not moved, pixels. */
const SLACK = 3;
