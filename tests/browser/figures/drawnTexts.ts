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

/** Texts that a line from a name to its curve strikes through, apart from that name. */
export function struckThrough(): string[] {
  return [...document.querySelectorAll<SVGPathElement>('.drawn path.leader')].flatMap((leader) => {
    const matrix = leader.getScreenCTM();
    if (matrix === null) return [];
    const length = leader.getTotalLength();
    const points = Array.from({ length: 65 }, (_, step) =>
      leader.getPointAtLength((length * step) / 64).matrixTransform(matrix),
    );
    const texts = [...(leader.closest('svg')?.querySelectorAll('text') ?? [])];
    return texts
      .filter((text) => text !== leader.nextElementSibling)
      .filter((text) => {
        const { left, right, top, bottom } = text.getBoundingClientRect();
        // a line of text is 3 px taller than its letters, above and below
        return points.some(({ x, y }) => x > left && x < right && y > top + 3 && y < bottom - 3);
      })
      .map((text) => `a line strikes through ${text.textContent}`);
  });
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
