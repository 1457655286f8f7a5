import type { OwnDraw } from './variant.ts';

const litre = 1e-3;
const hour = 3600;

/** What an own table starts from. Invented. */
export const exampleDraws: readonly OwnDraw[] = [
  row('Shower', 7, 60, 9, 40),
  row('Washing up', 13, 12, 6, 45),
  row('Bath', 19, 110, 12, 41),
];

function row(
  name: string,
  atHour: number,
  litres: number,
  litresPerMinute: number,
  mixedTo: number,
): OwnDraw {
  return {
    name,
    at: atHour * hour,
    volume: litres * litre,
    flow: (litresPerMinute * litre) / 60,
    mixedTo,
  };
}
