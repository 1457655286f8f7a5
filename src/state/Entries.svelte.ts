import type { NumberField } from '../../shared/fields.ts';
import { type Problem, parseNumber, problemsOf } from '../../shared/problems.ts';
import { type FieldPath, settingOf } from '../../shared/variant.ts';
import type { Bench } from './Bench.svelte.ts';
import { DrawEntries } from './DrawEntries.svelte.ts';

/** Text that was typed and could not be taken, with why. */
interface Refused {
  readonly text: string;
  readonly problem: Problem;
  /** The setting as it stood: the text is of no account once that has become another. */
  readonly over: number | string;
}

type RefusedBy = { readonly [P in FieldPath]?: Refused };

/** What has been typed into the settings of each variant and cannot be taken as it stands. */
export class Entries {
  /** The same for the cells of the own draws. */
  readonly draws: DrawEntries;
  #bench: Bench;
  /** By the number of the variant. */
  #refusedIn = $state.raw<Readonly<Record<number, RefusedBy>>>({});

  constructor(bench: Bench) {
    this.#bench = bench;
    this.draws = new DrawEntries(bench, () => this.problems);
  }

  get #refused(): RefusedBy {
    const refused = Object.entries(this.#refusedIn[this.#bench.id] ?? {});
    return Object.fromEntries(
      refused.filter(
        ([path, { over }]) => settingOf(this.#bench.variant, path as FieldPath) === over,
      ),
    );
  }

  set #refused(refused: RefusedBy) {
    this.#refusedIn = { ...this.#refusedIn, [this.#bench.id]: refused };
  }

  /** Everything to put right with the variant in hand: what was typed, and settings that do not go together. */
  readonly problems: readonly Problem[] = $derived.by(() => [
    ...Object.values(this.#refused).map(({ problem }) => problem),
    ...this.draws.refusals,
    ...problemsOf(this.#bench.variant).filter(({ path, field }) =>
      path ? !this.#refused[path] : !this.draws.isRefused(field),
    ),
  ]);

  /** The text to keep in a field, where it could not be taken. */
  typed(path: FieldPath): string | null {
    return this.#refused[path]?.text ?? null;
  }

  /** What to say beside a field. */
  problem(path: FieldPath): string | null {
    return this.problems.find((problem) => problem.path === path)?.message ?? null;
  }

  /** Takes what was typed into a field, or keeps it with its problem. */
  enter(field: NumberField, text: string): void {
    const parsed = parseNumber(text, field, this.#bench.variant);
    if ('problem' in parsed) {
      const over = settingOf(this.#bench.variant, field.path);
      this.#refused = { ...this.#refused, [field.path]: { text, problem: parsed.problem, over } };
    } else {
      this.set(field.path, parsed.value);
    }
  }

  /** Takes what is being typed over a refused text as soon as it is good; until then says nothing new. */
  retype(field: NumberField, text: string): void {
    if (this.#refused[field.path] && 'value' in parseNumber(text, field, this.#bench.variant)) {
      this.forget(field.path);
    }
  }

  /** Puts a setting to a value, in place of anything refused. */
  set(path: FieldPath, value: number | string): void {
    this.forget(path);
    this.#bench.set(path, value);
  }

  /** Forgets what was refused in one field, or in all. */
  forget(path?: FieldPath): void {
    if (!path) {
      this.#refused = {};
      this.draws.forget();
    } else if (this.#refused[path]) {
      const { [path]: _gone, ...left } = this.#refused;
      this.#refused = left;
    }
  }
}
