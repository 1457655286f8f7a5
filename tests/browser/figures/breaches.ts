import axe from 'axe-core';
import { clashes, drawnTexts, struckThrough } from './drawnTexts.ts';

/** Where the one figure on the page breaks a rule of access, leaves it or overlaps, in words. */
export async function breaches(container: Element, width: number): Promise<string[]> {
  const { violations } = await axe.run(container);
  const outside = [...container.querySelectorAll('svg text')].filter((text) => {
    const { left, right } = text.getBoundingClientRect();
    return left < 0 || right > width;
  });
  return [
    ...violations.map(({ id, nodes }) => `${id}: ${nodes[0].html}`),
    ...outside.map((text) => `"${text.textContent}" leaves the page`),
    ...struckThrough(),
    ...clashes(drawnTexts()).map((pair) => `${pair} overlap`),
  ];
}
