import { fieldsOf, groupOf, keyOf } from './fields.ts';
import type { DrawColumn } from './fields/ownDraw.ts';
import type { Field } from './fields/row.ts';
import { units } from './units.ts';
import type { Group } from './variant.ts';

/** The key of a setting in a file, with its unit: `outputKilowatts`; a choice has none: `given`. */
export function fileKeyOf(field: Field): string {
  return keyOf(field) + (field.kind === 'number' ? units[field.unit].suffix : '');
}

/** Where a setting stands in a file: `boiler.outputKilowatts`. */
export function filePathOf(field: Field): string {
  return `${groupOf(field)}.${fileKeyOf(field)}`;
}

/** The row of a setting by its key in a file, if there is one. */
export function fieldInFile(group: Group, key: string): Field | undefined {
  return fieldsOf(group).find((field) => fileKeyOf(field) === key);
}

/** The key of a column of the own draws in a file, with its unit: `volumeLitres`. */
export function drawKeyOf(column: DrawColumn): string {
  return column.key + (column.kind === 'number' ? units[column.unit].suffix : '');
}

/** Where a cell of the own draws stands in a file: `ownDraws[2].volumeLitres`. @param row  from 0 */
export function drawPathOf(row: number, column: DrawColumn): string {
  return `ownDraws[${row}].${drawKeyOf(column)}`;
}
