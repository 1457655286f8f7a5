import type { Attachment } from 'svelte/attachments';

/**
 * Lets a chart be scrubbed sideways: a mouse at once, a finger when it moves sideways or taps, so
 * that a vertical swipe still scrolls the page (the element also needs `touch-action: pan-y`).
 * @param at  called with the pixels from the left edge of the element
 */
export function scrub(at: (x: number) => void): Attachment<Element> {
  return (node) => {
    const element = node as HTMLElement;
    let start: PointerEvent | null = null;
    let left = 0;
    let moved = false;

    const down = (event: PointerEvent) => {
      if (event.button !== 0 || start !== null) return;
      start = event;
      moved = event.pointerType === 'mouse';
      left = element.getBoundingClientRect().left;
      if (!moved) return;
      element.setPointerCapture(event.pointerId);
      at(event.clientX - left);
    };
    const move = (event: PointerEvent) => {
      if (start?.pointerId !== event.pointerId) return;
      const sideways = Math.abs(event.clientX - start.clientX);
      if (!moved && sideways > 6 && sideways > Math.abs(event.clientY - start.clientY)) {
        moved = true;
        element.setPointerCapture(event.pointerId);
      }
      if (moved) at(event.clientX - left);
    };
    const up = (event: PointerEvent) => {
      if (start?.pointerId !== event.pointerId) return;
      if (!moved) at(event.clientX - left);
      start = null;
    };
    const cancel = (event: PointerEvent) => {
      if (start?.pointerId === event.pointerId) start = null;
    };

    element.addEventListener('pointerdown', down);
    element.addEventListener('pointermove', move);
    element.addEventListener('pointerup', up);
    element.addEventListener('pointercancel', cancel);
    return () => {
      element.removeEventListener('pointerdown', down);
      element.removeEventListener('pointermove', move);
      element.removeEventListener('pointerup', up);
      element.removeEventListener('pointercancel', cancel);
    };
  };
}
