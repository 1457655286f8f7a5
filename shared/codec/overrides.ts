import type { Field } from '../fields/row.ts';
import type { Override } from '../grid.ts';
import type { Problem } from '../problems/problem.ts';
import { clipped, inFile } from './inFile.ts';
import { settingFromText, settingNamed } from './settingInFile.ts';

// A table of settings, a row for each point: names with units in the header, an empty cell for a setting left as it is.

/**
 * The settings of a header, or everything that has to be put right in it first.
 * @param from  number of the first of the cells in its table
 */
export function readHeader(
  cells: readonly string[],
  from = 1,
): { readonly fields: readonly Field[] } | { readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const fields = cells.flatMap((cell, column) => {
    const name = cell.trim();
    const place = `column ${column + from}`;
    if (name === '') {
      problems.push(inFile(place, 'unknown', 'it has no name in the header.'));
      return [];
    }
    const named = settingNamed(name, place);
    if ('field' in named) return [named.field];
    problems.push(named.problem);
    return [];
  });
  const twice = fields.find((field, index) => fields.indexOf(field) !== index);
  if (twice) {
    problems.push(
      inFile('', 'twice', `The header has ${twice.label} twice; leave out one column.`),
    );
  }
  return problems.length > 0 ? { problems } : { fields };
}

/**
 * The settings of one row, or the first thing that has to be put right in it.
 * @param row   from 1
 * @param from  place of the first setting among the cells
 */
export function readOverrides(
  cells: readonly string[],
  fields: readonly Field[],
  row: number,
  from = 0,
): { readonly overrides: readonly Override[] } | { readonly problem: Problem } {
  const no = (code: string, message: string) => ({
    problem: inFile(`row ${row}`, code, message),
  });
  const wanted = from + fields.length;
  if (cells.length !== wanted) {
    return no('cells', `it has ${cells.length} cells where the header has ${wanted}.`);
  }
  const overrides: Override[] = [];
  for (const [column, field] of fields.entries()) {
    const cell = cells[from + column].trim();
    if (cell === '') continue;
    const read = settingFromText(cell, field);
    if ('value' in read) {
      overrides.push([field.path, read.value]);
      continue;
    }
    if (isFormula(cell)) {
      return no(
        'formula',
        `${field.label} holds “${clipped(cell)}”, which looks like a formula; formulas are not worked out: write the value.`,
      );
    }
    return no('value', read.message);
  }
  return { overrides };
}

/** What a spreadsheet would work out. */
export function isFormula(cell: string): boolean {
  return /^[=@+\-|]/.test(cell);
}
