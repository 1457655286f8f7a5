import { createHash } from 'node:crypto';
import { MOST_ROWS, tooManyRows } from '../../../shared/codec/batchStudy.ts';
import { wordsProblem } from '../../../shared/codec/catalogue.ts';
import { inFile } from '../../../shared/codec/inFile.ts';
import { readHeader, readOverrides } from '../../../shared/codec/overrides.ts';
import type { Field } from '../../../shared/fields/row.ts';
import { type Axis, type Override, overridesAt, pointCount } from '../../../shared/grid.ts';
import type { Problem } from '../../../shared/problems.ts';
import type { FieldPath } from '../../../shared/variant.ts';
import { whyNotRead } from '../read.ts';
import { csvRecords, UnreadableTable } from './csvRecords.ts';

/** One point: its settings over the base, and the words that say what it is. */
export interface PointRow {
  readonly settings: readonly Override[];
  /** [word] */
  readonly words: readonly string[];
}

/** What words a table may begin with, as a catalogue does. */
const mayBegin = ['name', 'source'] as const;

export type Word = (typeof mayBegin)[number];

/** The points of a study, in order, without holding them all. */
export interface Points {
  readonly words: readonly Word[];
  readonly paths: readonly FieldPath[];
  readonly count: number;
  /** What tells these points from others. */
  readonly content: unknown;
  /** The settings of the points from one to another, some at a time. @param from  from 0 @param to  the one after the last */
  readonly between: (from: number, to: number) => AsyncIterable<readonly PointRow[]>;
}

/** The points of a grid. */
export function gridPoints(axes: readonly Axis[]): Points {
  return {
    words: [],
    paths: axes.map(({ path }) => path),
    count: pointCount({ axes }),
    content: axes,
    async *between(from, to) {
      for (let start = from; start < to; start += SOME) {
        const length = Math.min(SOME, to - start);
        yield Array.from({ length }, (_, index) => ({
          settings: overridesAt({ axes }, start + index),
          words: [],
        }));
      }
    },
  };
}

/** The points of a comma-separated file, all of which is read once to see that it can be. @param most  rows */
export async function tablePoints(
  file: string,
  most = MOST_ROWS,
): Promise<Points | { readonly problems: readonly string[] }> {
  const hash = createHash('sha256');
  const problems: string[] = [];
  let columns: Columns | null = null;
  let count = 0;
  let wrong = 0;
  try {
    for await (const records of csvRecords(file, (piece) => hash.update(piece))) {
      for (const cells of records) {
        if (columns === null) {
          const head = readColumns(cells);
          if ('problems' in head) return { problems: head.problems.map(saidOf(file)) };
          columns = head;
          continue;
        }
        count++;
        if (count > most) return { problems: [tooManyRows(file, null, most)] };
        const read = readRow(cells, columns, count);
        if ('row' in read) continue;
        wrong++;
        if (wrong <= MOST_SAID) problems.push(saidOf(file)(read.problem));
      }
    }
  } catch (fault) {
    return { problems: [`${file}: ${whyNot(fault)}`] };
  }
  if (columns === null)
    return { problems: [`${file}: the file is empty; it needs a header and rows.`] };
  if (count === 0) return { problems: [`${file}: there is a header and no row after it.`] };
  if (wrong > MOST_SAID) problems.push(`${file}: ${wrong - MOST_SAID} rows more cannot be read.`);
  if (problems.length > 0) return { problems };
  const known = columns;
  return {
    words: known.words,
    paths: known.fields.map(({ path }) => path),
    count,
    content: hash.digest('hex'),
    between: (from, to) => tableRows(file, known, from, to),
  };
}

/** What the columns of a table hold: words, then settings. */
interface Columns {
  readonly words: readonly Word[];
  readonly fields: readonly Field[];
}

function readColumns(
  cells: readonly string[],
): Columns | { readonly problems: readonly Problem[] } {
  const words: Word[] = [];
  for (const word of mayBegin) {
    if (cells[words.length]?.trim() !== word) break;
    words.push(word);
  }
  const head = readHeader(cells.slice(words.length), words.length + 1);
  if ('problems' in head) return head;
  if (head.fields.length > 0) return { words, fields: head.fields };
  return { problems: [inFile('', 'header', 'the header has no setting after its words.')] };
}

function readRow(
  cells: readonly string[],
  { words, fields }: Columns,
  number: number,
): { readonly row: PointRow } | { readonly problem: Problem } {
  const read = readOverrides(cells, fields, number, words.length);
  if ('problem' in read) return read;
  const said = cells.slice(0, words.length).map((cell) => cell.trim());
  const [name, source = ''] = said;
  const wrong = words.length === 0 ? null : wordsProblem(name, source);
  if (wrong !== null) return { problem: inFile(`row ${number}`, 'words', wrong) };
  return { row: { settings: read.overrides, words: said } };
}

async function* tableRows(
  file: string,
  columns: Columns,
  from: number,
  to: number,
): AsyncGenerator<PointRow[]> {
  let row = -1; // the header
  for await (const records of csvRecords(file)) {
    const some: PointRow[] = [];
    for (const cells of records) {
      const at = row++;
      if (at < from || at >= to) continue;
      const read = readRow(cells, columns, at + 1);
      if ('problem' in read) throw new Error(`${file} was changed while it was read`);
      some.push(read.row);
    }
    if (some.length > 0) yield some;
    if (row >= to) return;
  }
}

const saidOf =
  (file: string) =>
  ({ field, message }: { readonly field: string; readonly message: string }): string =>
    field === '' ? `${file}: ${message}` : `${file}, ${field}: ${message}`;

function whyNot(fault: unknown): string {
  return fault instanceof UnreadableTable ? fault.message : whyNotRead(fault);
}

const SOME = 64;
const MOST_SAID = 5;
