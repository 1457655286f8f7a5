import type { Attachment } from 'svelte/attachments';

/** Where a drawing stands in the element that is measured against, and how wide it is, pixels. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** The places of two drawings. */
export interface Places {
  readonly from: Place;
  readonly to: Place;
}

/**
 * Tells where two drawings stand in the element it is attached to: at once, and again whenever one of
 * them, its figure or anything above it in its figure comes to have another size.
 * @param from  the drawing inside one figure
 * @param to    the drawing inside another
 */
export function places(
  from: HTMLElement,
  to: HTMLElement,
  tell: (places: Places) => void,
): Attachment<Element> {
  return (element) => {
    let frame = 0;
    let last = '';
    const measure = () => {
      const origin = element.getBoundingClientRect();
      const placeOf = (drawing: HTMLElement): Place => {
        const box = drawing.getBoundingClientRect();
        return { x: box.x - origin.x, y: box.y - origin.y, width: drawing.clientWidth };
      };
      const found = { from: placeOf(from), to: placeOf(to) };
      const text = JSON.stringify(found);
      if (text === last) return;
      last = text;
      tell(found);
    };
    // in the next frame, as the drawings themselves do
    const observer = new ResizeObserver(() => {
      cancelAnimationFrame(frame);
      frame = requestAnimationFrame(measure);
    });
    for (const each of [element, ...observed(from), ...observed(to)]) observer.observe(each);
    return () => {
      observer.disconnect();
      cancelAnimationFrame(frame);
    };
  };
}

/** A drawing, its figure and what stands above it in the figure. */
function observed(drawing: HTMLElement): Element[] {
  const found: Element[] = [drawing];
  const figure = drawing.closest('figure');
  if (figure) found.push(figure);
  for (let above = drawing.parentElement?.previousElementSibling; above;) {
    found.push(above);
    above = above.previousElementSibling;
  }
  return found;
}
