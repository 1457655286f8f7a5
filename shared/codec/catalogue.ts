import { type CatalogueEntry, cataloguedFields } from '../catalogue.ts';
import { filePathOf } from '../fileKeys.ts';
import type { Field } from '../fields/row.ts';
import { spaced } from '../format.ts';
import type { Override } from '../grid.ts';
import type { Problem } from '../problems/problem.ts';
import { settingProblem } from '../problems/ranges.ts';
import { fromSI } from '../units.ts';
import { csvCell } from './csvCell.ts';
import { clipped, inFile } from './inFile.ts';
import { isFormula, readHeader, readOverrides } from './overrides.ts';

// A catalogue as comma-separated text: name, source, then settings with their units in the header, an empty cell for
// what an entry does not say.

/** The text of a catalogue; every number as it was typed. */
export function catalogueToCsv(entries: readonly CatalogueEntry[]): string {
  const used = new Set(entries.flatMap(({ settings }) => settings.map(([path]) => path)));
  const columns = cataloguedFields.filter(({ path }) => used.has(path));
  const lines = entries.map(({ name, source, settings }) => {
    const has = new Map(settings);
    return [name, source, ...columns.map((field) => cellOf(field, has))];
  });
  return [[...first, ...columns.map(filePathOf)], ...lines]
    .map((cells) => `${cells.map(csvCell).join(',')}\n`)
    .join('');
}

/** A catalogue, or what has to be put right in the table first. @param rows  cells as text, the header first */
export function catalogueFromCells(
  rows: readonly (readonly string[])[],
): { readonly entries: readonly CatalogueEntry[] } | { readonly problems: readonly Problem[] } {
  const [header = [], ...lines] = rows;
  if (lines.length > mostEntries) {
    return no(
      'tooMany',
      `The table has ${spaced(lines.length)} rows; a catalogue holds at most ${mostEntries}.`,
    );
  }
  const read = readColumns(header);
  if ('problems' in read) return read;
  const problems: Problem[] = [];
  const entries: CatalogueEntry[] = [];
  const names = new Set<string>();
  for (const [index, cells] of lines.entries()) {
    const row = index + 1;
    const found = readEntry(cells, read.fields, row);
    if ('problem' in found) problems.push(found.problem);
    else if (names.has(found.entry.name)) {
      problems.push(
        inFile(`row ${row}`, 'twice', `the name ${clipped(found.entry.name)} is there twice.`),
      );
    } else {
      names.add(found.entry.name);
      entries.push(found.entry);
    }
  }
  if (problems.length === 0 && entries.length === 0) {
    return no('empty', 'The table has a header and no rows; each row is an entry.');
  }
  return problems.length > 0 ? { problems: firstOf(problems) } : { entries };
}

/** What is wrong with the name or the source of an entry, or null. */
export function wordsProblem(name: string, source: string): string | null {
  if (name === '') return 'it needs a name.';
  for (const [what, text] of [
    ['name', name],
    ['source', source],
  ]) {
    if (text.length > LONGEST) {
      return `the ${what} has ${text.length} characters; at most ${LONGEST} are kept.`;
    }
    if (isFormula(text)) {
      return `the ${what} “${clipped(text)}” looks like a formula to a spreadsheet; begin it with a letter or a figure.`;
    }
  }
  return null;
}

function readColumns(
  header: readonly string[],
): { readonly fields: readonly Field[] } | { readonly problems: readonly Problem[] } {
  const names = header.map((cell) => cell.trim());
  if (names.length === 1 && /[;\t]/.test(names[0])) {
    return no(
      'separator',
      'The cells of the header are not separated by commas; save the table as comma-separated text.',
    );
  }
  if (names[0] !== first[0] || names[1] !== first[1]) {
    const found = names.slice(0, 2).map(clipped).join(', ');
    return no(
      'header',
      `The first two columns must be called name and source; the header begins with ${found || 'nothing'}.`,
    );
  }
  const read = readHeader(names.slice(2), 3);
  if ('problems' in read) return { problems: firstOf(read.problems) };
  const foreign = read.fields.filter((field) => !cataloguedFields.includes(field));
  if (foreign.length > 0) {
    return {
      problems: foreign.map((field) =>
        inFile(
          filePathOf(field),
          'ofTheHouse',
          `${field.label} belongs to the installation, not to what is bought; leave the column out.`,
        ),
      ),
    };
  }
  return read;
}

function readEntry(
  cells: readonly string[],
  fields: readonly Field[],
  row: number,
): { readonly entry: CatalogueEntry } | { readonly problem: Problem } {
  const wrong = (code: string, message: string) => ({
    problem: inFile(`row ${row}`, code, message),
  });
  const read = readOverrides(cells, fields, row, first.length);
  if ('problem' in read) return read;
  const [name, source] = cells.map((cell) => cell.trim());
  const problem = wordsProblem(name, source);
  if (problem !== null) return wrong('words', problem);
  if (read.overrides.length === 0) return wrong('empty', `${clipped(name)} has no settings.`);
  for (const [path, value] of read.overrides) {
    const field = fields.find((each) => each.path === path) as Field;
    const outside = settingProblem(field, value);
    if (outside) return wrong(outside.code, outside.message);
  }
  return { entry: { name, source, settings: inOrder(read.overrides) } };
}

/** In the order of the settings, whatever the order of the columns. */
function inOrder(settings: readonly Override[]): readonly Override[] {
  const has = new Map(settings);
  return cataloguedFields.flatMap(({ path }): Override[] => {
    const value = has.get(path);
    return value === undefined ? [] : [[path, value]];
  });
}

function cellOf(field: Field, has: ReadonlyMap<string, number | string>): string {
  const value = has.get(field.path);
  if (value === undefined) return '';
  return String(field.kind === 'number' ? fromSI(Number(value), field.unit) : value);
}

const first = ['name', 'source'];

function no(code: string, message: string) {
  return { problems: [inFile('', code, message)] };
}

/** The first problems, and how many more there are. */
function firstOf(problems: readonly Problem[]): readonly Problem[] {
  if (problems.length <= MOST_SAID) return problems;
  const more = problems.length - MOST_SAID;
  return [
    ...problems.slice(0, MOST_SAID),
    inFile('', 'more', `There ${more === 1 ? 'is one more' : `are ${more} more`} like these.`),
  ];
}

/** Entries of a catalogue. Engineering guess, no source. */
export const mostEntries = 500;
const LONGEST = 120; // characters of a name or a source
const MOST_SAID = 10;
