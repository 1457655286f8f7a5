import type { Attachment } from 'svelte/attachments';

/**
 * Tells the width an element has and every other it comes to have, in whole pixels. A new width is
 * told in the next frame, so that a drawing that grows with it does not disturb the one being painted.
 */
export function measured(tell: (width: number) => void): Attachment<Element> {
  return (element) => {
    let width = element.clientWidth;
    let frame = 0;
    tell(width);
    const observer = new ResizeObserver(() => {
      if (element.clientWidth === width) return;
      width = element.clientWidth;
      cancelAnimationFrame(frame);
      frame = requestAnimationFrame(() => tell(width));
    });
    observer.observe(element);
    return () => {
      observer.disconnect();
      cancelAnimationFrame(frame);
    };
  };
}
