import { incomingCold } from '../coldWater.ts';
import { type DrawColumn, drawColumns, mostDraws } from '../fields/ownDraw.ts';
import { drawPathOf } from '../fileKeys.ts';
import { plainText, timeOfDay } from '../format.ts';
import { toSI, units } from '../units.ts';
import type { Variant } from '../variant.ts';
import { readNumberText } from './numberText.ts';
import type { Problem } from './problem.ts';
import { beyondLimits } from './readQuantity.ts';
import { readTimeOfDay } from './timeOfDay.ts';

/** What a column is called in a row: `Volume of draw 3`. @param row  from 0 */
export function drawLabel(row: number, { label }: DrawColumn): string {
  return `${label} of draw ${row + 1}`;
}

/** A problem with one cell of the own draws. */
export function drawProblemAt(
  row: number,
  column: DrawColumn,
  code: string,
  message: string,
): Problem {
  return { field: drawPathOf(row, column), path: null, code, message };
}

/** The problem of a table with too many rows, or null. */
export function tooManyDraws(count: number): Problem | null {
  if (count <= mostDraws) return null;
  const message = `There may be at most ${mostDraws} draws in an own table; there are ${count}.`;
  return { field: 'ownDraws', path: null, code: 'tooMany', message };
}

/** One cell as it was read, in SI, or what is wrong with it. */
export type DrawRead = { readonly value: number | string } | { readonly problem: Problem };

/**
 * Reads one cell as people type it. Checks the limits of its column too.
 * @param text        what was typed
 * @param row         from 0
 * @param unitIsSaid  where the text stands, as in a file, so that a time of 7.30 can only be hours
 */
export function readDraw(
  text: string,
  row: number,
  column: DrawColumn,
  unitIsSaid = false,
): DrawRead {
  if (column.kind === 'text') return checkedDraw(text, row, column);
  const asked = { ...column, label: drawLabel(row, column) };
  const read =
    column.key === 'at' ? readTimeOfDay(text, asked, unitIsSaid) : readNumberText(text, asked);
  if ('value' in read) return checkedDraw(read.value, row, column);
  return { problem: drawProblemAt(row, column, read.code, read.message) };
}

/** One cell if it is within its limits, or its problem. @param value  SI */
export function checkedDraw(value: number | string, row: number, column: DrawColumn): DrawRead {
  const problem = drawProblem(value, row, column);
  return problem ? { problem } : { value };
}

/** The problem of one cell on its own, or null. @param value  SI */
function drawProblem(value: unknown, row: number, column: DrawColumn): Problem | null {
  const label = drawLabel(row, column);
  const no = (code: string, words: string) => drawProblemAt(row, column, code, `${label} ${words}`);
  if (column.kind === 'text') {
    const { length } = String(value);
    if (length <= column.most) return null;
    return no('name', `must have at most ${column.most} characters; it has ${length}.`);
  }
  if (typeof value !== 'number' || Number.isNaN(value)) {
    return no('number', `needs a number in ${units[column.unit].words}.`);
  }
  const say = column.key === 'at' ? clock : undefined;
  const message = beyondLimits(value, { ...column, label }, say);
  return message === null ? null : drawProblemAt(row, column, 'range', message);
}

/** The problems of the own draws on their own: too many, or a cell beyond its limits. */
export function drawRangeProblems({ ownDraws }: Variant): Problem[] {
  const tooMany = tooManyDraws(ownDraws.length);
  if (tooMany) return [tooMany];
  return ownDraws.flatMap((own, row) =>
    drawColumns.flatMap((column) => drawProblem(own[column.key], row, column) ?? []),
  );
}

/** Draws that are wanted colder than the cold water is, where the day goes by the own table. */
export function colderDrawProblems({ ownDraws, day, draw }: Variant): Problem[] {
  const column = drawColumns.find(({ key }) => key === 'mixedTo');
  if (!column || day.pattern !== 'own') return [];
  const cold = incomingCold(draw);
  return ownDraws.slice(0, mostDraws).flatMap(({ mixedTo }, row) => {
    if (mixedTo >= cold || drawProblem(mixedTo, row, column)) return [];
    const [least, now] = [cold, mixedTo].map((T) => plainText(T, 'celsius'));
    return [
      drawProblemAt(
        row,
        column,
        'colderThanCold',
        `${drawLabel(row, column)} must be at least ${least}, the incoming cold; it is ${now}.`,
      ),
    ];
  });
}

/** A time as it reads in a sentence. @param hours  after midnight */
function clock(hours: number): string {
  const isTime = hours >= 0 && hours < 100;
  return isTime ? timeOfDay(toSI(hours, 'hour')) : plainText(hours, 'hour');
}
