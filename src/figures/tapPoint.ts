import type { Attachment } from 'svelte/attachments';

/** Calls back with the place of a tap or click, pixels from the left and top edge of the element. */
export function tapPoint(at: (x: number, y: number) => void): Attachment<Element> {
  return (element) => {
    const click = (event: Event) => {
      const { clientX, clientY } = event as MouseEvent;
      const { left, top } = element.getBoundingClientRect();
      at(clientX - left, clientY - top);
    };
    element.addEventListener('click', click);
    return () => element.removeEventListener('click', click);
  };
}
