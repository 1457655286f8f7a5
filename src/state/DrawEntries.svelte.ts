import { type DrawColumn, mostDraws } from '../../shared/fields/ownDraw.ts';
import { drawPathOf } from '../../shared/fileKeys.ts';
import { newDraw } from '../../shared/ownDraws.ts';
import { readDraw } from '../../shared/problems/ownDraws.ts';
import type { Problem } from '../../shared/problems.ts';
import type { OwnDraw } from '../../shared/variant.ts';
import type { Bench } from './Bench.svelte.ts';

/** Text that was typed into a cell and could not be taken. Rows from 0. */
interface Refused {
  readonly row: number;
  readonly column: DrawColumn;
  readonly text: string;
}

/** What is done to the own draws, and what has been typed into them and cannot be taken as it stands. */
export class DrawEntries {
  #bench: Bench;
  #problems: () => readonly Problem[];
  /** By the number of the variant. */
  #refusedIn = $state.raw<Readonly<Record<number, readonly Refused[]>>>({});

  /** @param problems  everything to put right on the bench, these refusals among it */
  constructor(bench: Bench, problems: () => readonly Problem[]) {
    this.#bench = bench;
    this.#problems = problems;
  }

  get #refused(): readonly Refused[] {
    return this.#refusedIn[this.#bench.id] ?? [];
  }

  set #refused(refused: readonly Refused[]) {
    this.#refusedIn = { ...this.#refusedIn, [this.#bench.id]: refused };
  }

  /** Why each text that was refused cannot be taken. */
  readonly refusals: readonly Problem[] = $derived(
    this.#refused.flatMap(({ row, column, text }) => {
      const read = readDraw(text, row, column);
      return 'problem' in read ? [read.problem] : [];
    }),
  );

  /** Whether a text was refused at a place such as `ownDraws[2].volumeLitres`. */
  isRefused(place: string): boolean {
    return this.refusals.some(({ field }) => field === place);
  }

  /** The text to keep in a cell, where it could not be taken. */
  typed(row: number, column: DrawColumn): string | null {
    return this.#refused.find((each) => each.row === row && each.column === column)?.text ?? null;
  }

  /** What to say beside a cell. */
  problem(row: number, column: DrawColumn): string | null {
    const place = drawPathOf(row, column);
    return this.#problems().find(({ field }) => field === place)?.message ?? null;
  }

  /** Takes what was typed into a cell, or keeps it with its problem. */
  enter(row: number, column: DrawColumn, text: string): void {
    this.restore(row, column);
    const read = readDraw(text, row, column);
    if ('problem' in read) {
      this.#refused = [...this.#refused, { row, column, text }];
      return;
    }
    const { ownDraws } = this.#bench.variant;
    if (ownDraws[row][column.key] === read.value) return;
    const changed = { ...ownDraws[row], [column.key]: read.value };
    this.#bench.setOwnDraws(`draw ${row + 1}: ${column.words}`, ownDraws.with(row, changed));
  }

  /** Forgets a refused text as soon as what is typed over it is good; until then says nothing new. */
  retype(row: number, column: DrawColumn, text: string): void {
    if ('value' in readDraw(text, row, column)) this.restore(row, column);
  }

  /** Forgets what was refused in one cell. */
  restore(row: number, column: DrawColumn): void {
    if (this.typed(row, column) === null) return;
    this.#refused = this.#refused.filter((each) => each.row !== row || each.column !== column);
  }

  /** Puts a row as new rows are under the last. */
  add(): void {
    this.#insert(this.#bench.variant.ownDraws.length, newDraw, 'a draw added');
  }

  /** Puts the same row once more right below. */
  copy(row: number): void {
    const draw = this.#bench.variant.ownDraws[row];
    this.#insert(row + 1, draw, `${nameOf(draw, row)} copied`);
  }

  /** Takes a row out, and what was refused in it. */
  remove(row: number): void {
    const { ownDraws } = this.#bench.variant;
    this.#refused = this.#refused
      .filter((each) => each.row !== row)
      .map((each) => (each.row > row ? { ...each, row: each.row - 1 } : each));
    const label = `${nameOf(ownDraws[row], row)} removed`;
    this.#bench.setOwnDraws(label, ownDraws.toSpliced(row, 1));
  }

  /** Forgets everything that was refused. */
  forget(): void {
    this.#refused = [];
  }

  #insert(row: number, draw: OwnDraw, label: string): void {
    const { ownDraws } = this.#bench.variant;
    if (ownDraws.length >= mostDraws) return;
    this.#refused = this.#refused.map((each) =>
      each.row >= row ? { ...each, row: each.row + 1 } : each,
    );
    this.#bench.setOwnDraws(label, ownDraws.toSpliced(row, 0, draw));
  }
}

/** A row as it reads in the middle of a sentence: its name with a small first letter, or its number. */
function nameOf({ name }: OwnDraw, row: number): string {
  const tidy = name.trim();
  return tidy === '' ? `draw ${row + 1}` : tidy[0].toLowerCase() + tidy.slice(1);
}
