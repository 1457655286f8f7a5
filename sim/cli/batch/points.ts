import { createHash } from 'node:crypto';
import { MOST_ROWS, tooManyRows } from '../../../shared/codec/batchStudy.ts';
import { readHeader, readOverrides } from '../../../shared/codec/overrides.ts';
import type { Field } from '../../../shared/fields/row.ts';
import { type Axis, type Override, overridesAt, pointCount } from '../../../shared/grid.ts';
import type { FieldPath } from '../../../shared/variant.ts';
import { whyNotRead } from '../read.ts';
import { csvRecords, UnreadableTable } from './csvRecords.ts';

/** The points of a study, in order, without holding them all. */
export interface Points {
  readonly paths: readonly FieldPath[];
  readonly count: number;
  /** What tells these points from others. */
  readonly content: unknown;
  /** The settings of the points from one to another, some at a time. @param from  from 0 @param to  the one after the last */
  readonly between: (from: number, to: number) => AsyncIterable<readonly (readonly Override[])[]>;
}

/** The points of a grid. */
export function gridPoints(axes: readonly Axis[]): Points {
  return {
    paths: axes.map(({ path }) => path),
    count: pointCount({ axes }),
    content: axes,
    async *between(from, to) {
      for (let start = from; start < to; start += SOME) {
        const length = Math.min(SOME, to - start);
        yield Array.from({ length }, (_, index) => overridesAt({ axes }, start + index));
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
  let fields: readonly Field[] | null = null;
  let count = 0;
  let wrong = 0;
  try {
    for await (const records of csvRecords(file, (piece) => hash.update(piece))) {
      for (const cells of records) {
        if (fields === null) {
          const head = readHeader(cells);
          if ('problems' in head) return { problems: head.problems.map(saidOf(file)) };
          fields = head.fields;
          continue;
        }
        count++;
        if (count > most) return { problems: [tooManyRows(file, null, most)] };
        const read = readOverrides(cells, fields, count);
        if ('overrides' in read) continue;
        wrong++;
        if (wrong <= MOST_SAID) problems.push(saidOf(file)(read.problem));
      }
    }
  } catch (fault) {
    return { problems: [`${file}: ${whyNot(fault)}`] };
  }
  if (fields === null)
    return { problems: [`${file}: the file is empty; it needs a header and rows.`] };
  if (count === 0) return { problems: [`${file}: there is a header and no row after it.`] };
  if (wrong > MOST_SAID) problems.push(`${file}: ${wrong - MOST_SAID} rows more cannot be read.`);
  if (problems.length > 0) return { problems };
  const known = fields;
  return {
    paths: known.map(({ path }) => path),
    count,
    content: hash.digest('hex'),
    between: (from, to) => tableRows(file, known, from, to),
  };
}

async function* tableRows(
  file: string,
  fields: readonly Field[],
  from: number,
  to: number,
): AsyncGenerator<(readonly Override[])[]> {
  let row = -1; // the header
  for await (const records of csvRecords(file)) {
    const some: (readonly Override[])[] = [];
    for (const cells of records) {
      const at = row++;
      if (at < from || at >= to) continue;
      const read = readOverrides(cells, fields, at + 1);
      if ('problem' in read) throw new Error(`${file} was changed while it was read`);
      some.push(read.overrides);
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
