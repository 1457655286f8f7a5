import { drawColumns } from './fields/ownDraw.ts';
import { toSI } from './units.ts';
import type { OwnDraw } from './variant.ts';

/** What an own table starts from. Invented. */
export const exampleDraws: readonly OwnDraw[] = [
  row('Shower', 7, 60, 9, 40),
  row('Washing up', 13, 12, 6, 45),
  row('Bath', 19, 110, 12, 41),
];

/** A row as it is added: every column at its default. */
export const newDraw = Object.fromEntries(
  drawColumns.map((column) => [
    column.key,
    column.kind === 'number' ? toSI(column.default, column.unit) : column.default,
  ]),
) as unknown as OwnDraw;

function row(
  name: string,
  atHour: number,
  litres: number,
  litresPerMinute: number,
  mixedTo: number,
): OwnDraw {
  return {
    name,
    at: toSI(atHour, 'hour'),
    volume: toSI(litres, 'litre'),
    flow: toSI(litresPerMinute, 'litrePerMinute'),
    mixedTo,
  };
}
