import { type DrawColumn, drawColumns } from '../fields/ownDraw.ts';
import { drawKeyOf } from '../fileKeys.ts';
import {
  checkedDraw,
  type DrawRead,
  drawLabel,
  drawProblemAt,
  readDraw,
  tooManyDraws,
} from '../problems/ownDraws.ts';
import type { Problem } from '../problems/problem.ts';
import { wholeMilliseconds } from '../problems/timeOfDay.ts';
import { fromSI, toSI } from '../units.ts';
import type { OwnDraw } from '../variant.ts';
import { inFile, isObject, kindOf } from './inFile.ts';
import { unknownInDraw } from './unknown.ts';

/** The own draws in their file form: a list of rows, the unit in every key. */
export function drawsInFile(draws: readonly OwnDraw[]): Record<string, number | string>[] {
  return draws.map((draw) =>
    Object.fromEntries(drawColumns.map((column) => [drawKeyOf(column), fileValue(draw, column)])),
  );
}

function fileValue(draw: OwnDraw, column: DrawColumn): number | string {
  if (column.kind === 'text') return draw[column.key];
  const value = draw[column.key];
  return fromSI(column.key === 'at' ? wholeMilliseconds(value) : value, column.unit);
}

/** Reads the own draws from their file form: the rows, or everything that has to be put right first. */
export function drawsFromFile(
  given: unknown,
): { readonly draws: readonly OwnDraw[] } | { readonly problems: readonly Problem[] } {
  if (!Array.isArray(given)) {
    const message = `ownDraws must hold a list of draws in brackets; it holds ${kindOf(given)}.`;
    return { problems: [inFile('ownDraws', 'notAList', message)] };
  }
  const tooMany = tooManyDraws(given.length);
  if (tooMany) return { problems: [tooMany] };
  const problems: Problem[] = [];
  const draws = given.map((entry, row) => drawFromFile(entry, row, problems));
  return problems.length > 0 ? { problems } : { draws };
}

/** One row; what is wrong with it is added to `problems`, and then the row is not whole. */
function drawFromFile(entry: unknown, row: number, problems: Problem[]): OwnDraw {
  const place = `ownDraws[${row}]`;
  const read = new Map<keyof OwnDraw, number | string>([['name', '']]);
  if (!isObject(entry)) {
    const message = `${place} must hold a draw in braces; it holds ${kindOf(entry)}.`;
    problems.push(inFile(place, 'notAnObject', message));
    return wholeRow(read);
  }
  const found = new Set<string | undefined>();
  for (const [key, given] of Object.entries(entry)) {
    const column = drawColumns.find((known) => drawKeyOf(known) === key);
    if (!column) {
      const { problem, meant } = unknownInDraw(place, key);
      problems.push(problem);
      found.add(meant);
      continue;
    }
    found.add(key);
    const cell = readGiven(given, row, column);
    if ('problem' in cell) problems.push(cell.problem);
    else read.set(column.key, cell.value);
  }
  for (const column of drawColumns) {
    if (column.kind === 'text' || found.has(drawKeyOf(column))) continue;
    const message = `${drawLabel(row, column)} is missing: give ${drawKeyOf(column)}.`;
    problems.push(drawProblemAt(row, column, 'missing', message));
  }
  return wholeRow(read);
}

function wholeRow(read: ReadonlyMap<keyof OwnDraw, number | string>): OwnDraw {
  return Object.fromEntries(
    drawColumns.map(({ key }) => [key, read.get(key)]),
  ) as unknown as OwnDraw;
}

function readGiven(given: unknown, row: number, column: DrawColumn): DrawRead {
  if (typeof given === 'string') return readDraw(given, row, column, true);
  if (typeof given === 'number' && column.kind === 'number') {
    const value = toSI(given, column.unit);
    return checkedDraw(column.key === 'at' ? wholeMilliseconds(value) : value, row, column);
  }
  const needed =
    column.kind === 'text'
      ? 'must be text in quotes'
      : `needs a ${column.key === 'at' ? 'time of day' : 'number'}`;
  const message = `${drawLabel(row, column)} ${needed}; it holds ${kindOf(given)}.`;
  return { problem: drawProblemAt(row, column, column.kind, message) };
}
