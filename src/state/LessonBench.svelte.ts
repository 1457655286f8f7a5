import { broughtUp, type Caution, cautionsOf } from '../../shared/cautions.ts';
import { lessonVariant, moveVariants } from '../../shared/lessons.ts';
import type { Answer, Lesson, Move } from '../../shared/lessons/lesson.ts';
import { type Problem, problemsOf } from '../../shared/problems.ts';
import type { Result } from '../../shared/result.ts';
import { type FieldPath, settingOf, type Variant, withSetting } from '../../shared/variant.ts';
import type { Run } from './Run.svelte.ts';

/** A move that has been seen. */
export interface Seen {
  /** Key of the option that was predicted. */
  readonly predicted: string;
  readonly before: Result;
  readonly after: Result;
  readonly answer: Answer;
  /** Cautions that the move brought up. */
  readonly cautions: readonly Caution[];
}

/** The bench of one lesson: its own variant and runs, apart from the bench of the user. */
export class LessonBench {
  readonly lesson: Lesson;
  variant = $state.raw() as Variant;
  /** By the key of the move. */
  seen = $state.raw<Readonly<Record<string, Seen>>>({});
  /** The move that is being computed. */
  asking = $state.raw<string | null>(null);
  /** The move whose second run is on the bench; null for the set-up, or what it has been adjusted to. */
  shown = $state.raw<string | null>(null);

  readonly #run: Run;
  #held: Variant | null = null;

  constructor(lesson: Lesson, run: Run) {
    this.lesson = lesson;
    this.#run = run;
    this.variant = lessonVariant(lesson);
  }

  /** What keeps the present settings from being run. */
  readonly problems: readonly Problem[] = $derived(problemsOf(this.variant));

  /** The run drawn thin beside the present one: before the drag, or before the move. */
  get former(): Result | null {
    return this.#run.before ?? (this.shown === null ? null : this.seen[this.shown].before);
  }

  /** Whether anything differs from the set-up. */
  readonly isChanged = $derived(this.#differs());

  /** Puts the set-up on the bench. */
  setUp(): Promise<unknown> {
    this.shown = null;
    return this.#put(lessonVariant(this.lesson));
  }

  /** Puts a setting to a value, SI: while it is dragged, when it is let go, or back as it was before the drag. */
  adjust(path: FieldPath, value: number, phase: 'move' | 'commit' | 'cancel'): void {
    if (phase === 'move' && this.#held === null) {
      this.#held = this.variant;
      this.#run.hold();
    }
    const held = this.#held;
    if (phase !== 'move') {
      this.#held = null;
      this.#run.release();
    }
    if (phase === 'cancel') {
      if (held !== null) void this.#put(held);
      return;
    }
    if (settingOf(this.variant, path) === value && phase === 'move') return;
    this.shown = null;
    void this.#put(withSetting(this.variant, path, value));
  }

  /** Runs a move and finds its answer; nothing when something newer was asked for meanwhile. */
  async see(move: Move, predicted: string): Promise<Seen | null> {
    this.asking = move.key;
    const variants = moveVariants(this.lesson, move);
    try {
      const before = await this.#put(variants.before);
      const after = before && (await this.#put(variants.after));
      if (!before || !after) return null;
      const seen: Seen = {
        predicted,
        before,
        after,
        answer: move.answer(before, after),
        cautions: broughtUp(cautionsOf(variants.before, before), cautionsOf(variants.after, after)),
      };
      this.seen = { ...this.seen, [move.key]: seen };
      this.shown = move.key;
      return seen;
    } finally {
      if (this.asking === move.key) this.asking = null;
    }
  }

  /** Puts the second run of a move that has been seen on the bench again. */
  async show(move: Move): Promise<void> {
    if (await this.#put(moveVariants(this.lesson, move).after)) this.shown = move.key;
  }

  /** Forgets a move, so that it can be predicted again; what it starts from is on the bench. */
  forget(move: Move): void {
    const { [move.key]: _forgotten, ...others } = this.seen;
    if (this.shown === move.key) this.shown = null;
    this.seen = others;
    void this.#put(moveVariants(this.lesson, move).before);
  }

  /** Runs a variant; the result, or null when it cannot be run or is no longer wanted. */
  async #put(variant: Variant): Promise<Result | null> {
    this.variant = variant;
    if (problemsOf(variant).length > 0) return null;
    const ending = await this.#run.request(variant, false);
    return ending === 'finished' ? this.#run.result : null;
  }

  #differs(): boolean {
    return JSON.stringify(this.variant) !== JSON.stringify(lessonVariant(this.lesson));
  }
}
