import { createReadStream } from 'node:fs';

/** The rows of a file that are whole, and where the first that is not begins. */
export interface Finished {
  readonly rows: number;
  readonly bytes: number;
  /** Rows whose run ended early. */
  readonly early: number;
}

/** What the file should hold. */
interface Expected {
  /** The first line, with its end; empty when there is none. */
  readonly head: string;
  /** What the row of a place begins with. @param index  from 0, of the rows in this file */
  readonly startOf: (index: number) => string;
  /** Rows at most. */
  readonly most: number;
}

/** Reads a file of rows that may have been cut anywhere; null when it holds something else. @return a line number where it does */
export async function finishedRows(
  file: string,
  { head, startOf, most }: Expected,
): Promise<Finished | { readonly strangeLine: number }> {
  let held: Buffer = Buffer.alloc(0);
  let lines = 0;
  let bytes = 0;
  let early = 0;
  const heads = head === '' ? 0 : 1;
  for await (const piece of createReadStream(file)) {
    held = held.length === 0 ? piece : Buffer.concat([held, piece]);
    let from = 0;
    for (let end = held.indexOf(LINE_END); end >= 0; end = held.indexOf(LINE_END, from)) {
      const line = held.toString('utf8', from, end + 1);
      const isHead = lines < heads;
      const row = lines - heads;
      lines++;
      const fits = isHead ? line === head : row < most && line.startsWith(startOf(row));
      if (!fits) return { strangeLine: lines };
      if (line.includes(ENDED_EARLY)) early++;
      bytes += end + 1 - from;
      from = end + 1;
    }
    held = held.subarray(from);
    if (held.length > LONGEST) return { strangeLine: lines + 1 };
  }
  return { rows: Math.max(0, lines - heads), bytes, early };
}

const LINE_END = 10;
const ENDED_EARLY = 'The run ended early'; // the gap of such a point, sim/run/pointOf.ts
/** Bytes; no row comes near it. */
const LONGEST = 1e6;
