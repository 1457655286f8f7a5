import type { DrawColumn } from '../../shared/fields/ownDraw.ts';
import { timeOfDay } from '../../shared/format.ts';
import type { Problem } from '../../shared/problems.ts';
import { fromSI } from '../../shared/units.ts';
import type { OwnDraw } from '../../shared/variant.ts';

/** Whoever keeps the own draws and remembers what was typed into them. Rows from 0. */
export interface DrawTable {
  /** Why each text that was refused cannot be taken. */
  readonly refusals: readonly Problem[];
  /** What was typed into a cell and could not be taken, if anything. */
  typed(row: number, column: DrawColumn): string | null;
  problem(row: number, column: DrawColumn): string | null;
  /** The text was left, or entered: to be read. */
  enter(row: number, column: DrawColumn, text: string): void;
  /** The text was changed while a problem stood beside it. */
  retype(row: number, column: DrawColumn, text: string): void;
  /** Puts back what stood in a cell before a text was refused. */
  restore(row: number, column: DrawColumn): void;
  add(): void;
  copy(row: number): void;
  remove(row: number): void;
}

/** A cell as it stands in its text field. */
export function cellText(draw: OwnDraw, column: DrawColumn): string {
  if (column.kind === 'text') return draw.name;
  const value = draw[column.key];
  return column.key === 'at' ? timeOfDay(value) : String(fromSI(value, column.unit));
}

/** The id of a cell, or of one of the buttons of its row. */
export const drawId = (row: number, part: DrawColumn['key'] | 'remove'): string =>
  `draw-${row}-${part}`;

/** Pressed, a button takes no focus from a box: what is said once a box is left would move the button from under the hand. */
export const keepStill = (event: MouseEvent): void => event.preventDefault();
