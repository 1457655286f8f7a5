import { fieldAt } from '../../shared/fields.ts';
import {
  type FieldPath,
  type OwnDraw,
  settingOf,
  type Variant,
  withSetting,
} from '../../shared/variant.ts';

/** One thing that was done: what it was called, and the variant as it stood before. */
interface Step {
  readonly label: string;
  readonly variant: Variant;
}

/** The variant in hand and everything that was done to it. */
export class Bench {
  variant = $state.raw() as Variant;
  /** A handle is being dragged: the present value counts only once it is let go. */
  isMoving = $state(false);

  #past = $state.raw<readonly Step[]>([]);
  #future = $state.raw<readonly Step[]>([]);
  #held: Variant | null = null;

  constructor(variant: Variant) {
    this.variant = variant;
  }

  /** What Undo would take back, e.g. `sensor height`; null when there is nothing. */
  readonly undoes: string | null = $derived(this.#past.at(-1)?.label ?? null);
  /** What Redo would do again. */
  readonly redoes: string | null = $derived(this.#future.at(-1)?.label ?? null);

  /** Puts one setting to a value, SI or a choice, in one step. */
  set(path: FieldPath, value: number | string): void {
    this.cancel();
    if (settingOf(this.variant, path) === value) return;
    this.#step(nameOf(path), withSetting(this.variant, path, value));
  }

  /** Puts one setting to a value while its handle is dragged; no step yet. */
  move(path: FieldPath, value: number): void {
    this.#held ??= this.variant;
    this.isMoving = true;
    if (settingOf(this.variant, path) === value) return;
    this.variant = withSetting(this.variant, path, value);
  }

  /** The handle is let go at a value: the whole drag is one step. */
  drop(path: FieldPath, value: number): void {
    this.cancel();
    this.set(path, value);
  }

  /** Puts back what stood before the drag. */
  cancel(): void {
    if (this.#held) this.variant = this.#held;
    this.#held = null;
    this.isMoving = false;
  }

  /** Replaces every setting, in one step. @param label  what Undo calls it */
  replace(label: string, variant: Variant): void {
    this.cancel();
    this.#step(label, variant);
  }

  /** Puts other rows in place of the own draws, in one step. @param label  what Undo calls it */
  setOwnDraws(label: string, ownDraws: readonly OwnDraw[]): void {
    this.cancel();
    this.#step(label, { ...this.variant, ownDraws });
  }

  undo(): void {
    this.cancel();
    const step = this.#past.at(-1);
    if (!step) return;
    this.#past = this.#past.slice(0, -1);
    this.#future = [...this.#future, { label: step.label, variant: this.variant }];
    this.variant = step.variant;
  }

  redo(): void {
    this.cancel();
    const step = this.#future.at(-1);
    if (!step) return;
    this.#future = this.#future.slice(0, -1);
    this.#past = [...this.#past, { label: step.label, variant: this.variant }];
    this.variant = step.variant;
  }

  #step(label: string, variant: Variant): void {
    this.#past = [...this.#past, { label, variant: this.variant }].slice(-DEPTH);
    this.#future = [];
    this.variant = variant;
  }
}

/** The label of a field as it reads in the middle of a sentence. */
function nameOf(path: FieldPath): string {
  const { label } = fieldAt(path);
  return label[0].toLowerCase() + label.slice(1);
}

/** Steps that can be taken back. */
const DEPTH = 500;
