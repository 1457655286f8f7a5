import { createReadStream } from 'node:fs';
import { csvParseRows } from 'd3';

/** What stands in the way of reading a table, one sentence. */
export class UnreadableTable extends Error {}

/**
 * The rows of a comma-separated file, some at a time, as text: nothing in them is worked out. Empty lines are no rows.
 * @param look  is shown every piece of the file as it is read
 */
export async function* csvRecords(
  file: string,
  look: (piece: string) => void = () => {},
): AsyncGenerator<string[][]> {
  const separator = new Separator();
  let isFirst = true;
  for await (const piece of createReadStream(file, 'utf8')) {
    const text = isFirst ? String(piece).replace(/^\ufeff/, '') : String(piece);
    isFirst = false;
    look(String(piece));
    const records = separator.take(text);
    if (records.length > 0) yield records;
  }
  const records = separator.rest();
  if (records.length > 0) yield records;
}

/** Cuts a text that comes in pieces after whole rows: a line may go on inside quotation marks. */
class Separator {
  #held = '';
  /** How far the held text has been looked at, and whether that place is inside quotation marks. */
  #seen = 0;
  #isQuoted = false;

  take(piece: string): string[][] {
    this.#held += piece;
    let cut = 0;
    for (; this.#seen < this.#held.length; this.#seen++) {
      const sign = this.#held.charCodeAt(this.#seen);
      if (sign === QUOTE) this.#isQuoted = !this.#isQuoted;
      else if (sign === LINE_END && !this.#isQuoted) cut = this.#seen + 1;
    }
    const whole = this.#held.slice(0, cut);
    this.#held = this.#held.slice(cut);
    this.#seen -= cut;
    if (this.#held.length > LONGEST) {
      throw new UnreadableTable(
        `a row is longer than ${LONGEST / 1e6} million characters; a quotation mark may be missing.`,
      );
    }
    return recordsIn(whole);
  }

  rest(): string[][] {
    if (this.#isQuoted) {
      throw new UnreadableTable('the last row ends inside quotation marks; one is missing.');
    }
    return recordsIn(this.#held);
  }
}

function recordsIn(text: string): string[][] {
  return csvParseRows(text).filter((cells) => cells.length > 1 || cells[0]?.trim() !== '');
}

const QUOTE = 34;
const LINE_END = 10;
/** Characters. Engineering guess, no source. */
const LONGEST = 1e6;
