import type { Attachment } from 'svelte/attachments';

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
