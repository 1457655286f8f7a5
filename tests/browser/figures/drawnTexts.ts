/** A text of a drawing: its words, its rectangle in pixels of the page, and its size in pixels. */
export interface DrawnText {
  readonly text: string;
  readonly box: DOMRect;
  readonly size: number;
}

/** The texts of every drawing on the page. */
export function drawnTexts(): DrawnText[] {
  return [...document.querySelectorAll<SVGTextElement>('.drawn text')]
    .filter((node) => node.textContent?.trim() !== '')
    .map((node) => ({
      text: node.textContent ?? '',
      box: node.getBoundingClientRect(),
      size: Number.parseFloat(getComputedStyle(node).fontSize),
    }));
}

/** Pairs of texts that overlap. */
export function clashes(all: readonly DrawnText[]): string[] {
  return all.flatMap((one, index) =>
    all
      .slice(index + 1)
      .filter((other) => {
        const across =
          Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
        const down =
          Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
        // a line of text is 3 px taller than its letters, above and below
        return across > 0 && down > 3;
      })
      .map((other) => `${one.text} / ${other.text}`),
  );
}
