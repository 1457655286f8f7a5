import { csvParseRows } from 'd3';
import type { CatalogueEntry } from '../../shared/catalogue.ts';
import { catalogueFromCells, mostEntries } from '../../shared/codec/catalogue.ts';
import type { Problem } from '../../shared/problems.ts';

/** What reading a catalogue gives: its entries, or everything that has to be put right first. */
export type CatalogueRead =
  { readonly entries: readonly CatalogueEntry[] } | { readonly problems: readonly Problem[] };

/** Reads a catalogue from comma-separated text; every cell is taken as text and nothing in it is worked out. */
export function catalogueFromText(text: string): CatalogueRead {
  if ((text.match(/"/g)?.length ?? 0) % 2 === 1) {
    return no('quotes', 'A quotation mark is missing: there is an odd number of them.');
  }
  const rows = csvParseRows(text.replace(/^\ufeff/, ''));
  return catalogueFromCells(rows.filter((cells) => cells.length > 1 || cells[0]?.trim() !== ''));
}

/** Reads a catalogue from a file the user chose. */
export async function catalogueFromFile(file: File): Promise<CatalogueRead> {
  if (file.size > LARGEST) {
    const size = `${Math.round(file.size / 1e6)}\u00a0MB`;
    return no(
      'tooLarge',
      `The file holds ${size}; a catalogue has at most ${mostEntries} rows, which take less than 1\u00a0MB.`,
    );
  }
  return catalogueFromText(await file.text());
}

function no(code: string, message: string): CatalogueRead {
  return { problems: [{ field: '', path: null, code, message }] };
}

const LARGEST = 1e6; // bytes; an entry takes about 200
