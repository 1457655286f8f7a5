import type { CatalogueEntry } from '../../shared/catalogue.ts';
import { startingCatalogue } from '../../shared/catalogueStart.ts';
import { catalogueToCsv, mostEntries, wordsProblem } from '../../shared/codec/catalogue.ts';
import { catalogueFromText } from './catalogueText.ts';
import { browserKeep, type Keep } from './keep.ts';

/** One thing that was done: what it was called, and the entries before it. */
interface Step {
  readonly label: string;
  readonly entries: readonly CatalogueEntry[];
}

/** The user's own boilers, coils and cylinders, kept in the browser as the text a file has. A name stands once. */
export class Catalogue {
  entries = $state.raw<readonly CatalogueEntry[]>([]);
  /** What was kept and cannot be read any more, or null; it stays in its place until something is done here. */
  unreadable = $state.raw<string | null>(null);
  /** Whether the last change will be there at the next visit. */
  isKept = $state(true);

  readonly #keep: Keep;
  /** The text that was last read or written. */
  #text: string | null = null;
  #past = $state.raw<readonly Step[]>([]);

  constructor(keep: Keep) {
    this.#keep = keep;
    this.entries = startingCatalogue();
    this.refresh();
  }

  /** What was done last and can be taken back, e.g. `removal of Long coil`; null for nothing. */
  readonly undoes: string | null = $derived(this.#past.at(-1)?.label ?? null);

  /** Takes up what another page of the same browser has kept meanwhile. */
  refresh(): void {
    const text = this.#keep.read(KEY);
    if (text === null || text === this.#text) return;
    this.#text = text;
    const read = text === EMPTY ? { entries: [] } : catalogueFromText(text);
    this.unreadable = 'entries' in read ? null : text;
    if ('entries' in read) this.entries = read.entries;
  }

  /** The entry of a name, if there is one. */
  named(name: string): CatalogueEntry | undefined {
    return this.entries.find((entry) => entry.name === name);
  }

  /** Keeps an entry, in place of one of the same name. Says what is wrong with it, or null. */
  put(entry: CatalogueEntry): string | null {
    this.refresh();
    const problem = wordsProblem(entry.name, entry.source);
    if (problem !== null) return `To be kept, ${problem}`;
    // what could not be read again would take all the others with it
    const again = catalogueFromText(catalogueToCsv([entry]));
    if ('problems' in again) return again.problems[0].message;
    if (this.named(entry.name) === undefined && this.entries.length >= mostEntries) {
      return `A catalogue holds at most ${mostEntries} entries.`;
    }
    this.#step(`keeping of ${entry.name}`, replaced(this.entries, [entry]));
    return null;
  }

  /** Puts in what a file holds: new names at the end, known names in their places. Says what is wrong, or null. */
  take(entries: readonly CatalogueEntry[], label: string): string | null {
    this.refresh();
    const all = replaced(this.entries, entries);
    if (all.length > mostEntries) {
      return `With these there would be ${all.length} entries; a catalogue holds at most ${mostEntries}.`;
    }
    this.#step(label, all);
    return null;
  }

  remove(name: string): void {
    this.refresh();
    this.#step(
      `removal of ${name}`,
      this.entries.filter((entry) => entry.name !== name),
    );
  }

  /** Takes back what was done last. */
  undo(): void {
    const last = this.#past.at(-1);
    if (!last) return;
    this.#past = this.#past.slice(0, -1);
    this.#write(last.entries);
  }

  #step(label: string, entries: readonly CatalogueEntry[]): void {
    this.#past = [...this.#past, { label, entries: this.entries }];
    this.#write(entries);
  }

  #write(entries: readonly CatalogueEntry[]): void {
    this.entries = entries;
    this.unreadable = null;
    this.#text = entries.length === 0 ? EMPTY : catalogueToCsv(entries);
    this.isKept = this.#keep.write(KEY, this.#text);
  }
}

/** The catalogue of this browser: one for all that show it. */
export function ownCatalogue(): Catalogue {
  own ??= new Catalogue(browserKeep());
  return own;
}

let own: Catalogue | undefined;

/** Entries with others put in: those of a known name take its place, the rest follow. */
function replaced(
  entries: readonly CatalogueEntry[],
  others: readonly CatalogueEntry[],
): readonly CatalogueEntry[] {
  const coming = new Map(others.map((entry) => [entry.name, entry]));
  const known = new Set(entries.map(({ name }) => name));
  return [
    ...entries.map((entry) => coming.get(entry.name) ?? entry),
    ...others.filter(({ name }) => !known.has(name)),
  ];
}

const KEY = 'reheat-bench catalogue';
const EMPTY = 'name,source\n'; // all entries have been removed
