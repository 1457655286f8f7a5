import type { BenchSet } from '../../shared/codec/bench.ts';
import { fieldAt } from '../../shared/fields.ts';
import { letters, mostVariants } from '../../shared/letters.ts';
import {
  type FieldPath,
  type OwnDraw,
  settingOf,
  type Variant,
  withSetting,
} from '../../shared/variant.ts';
import { copyName } from './copyName.ts';

/** A variant and its number, which stays with it wherever it stands and whatever is set. */
export interface Placed {
  readonly id: number;
  readonly variant: Variant;
}

/** Everything that Undo brings back. */
interface Stand {
  readonly placed: readonly Placed[];
  readonly inHand: number;
}

/** One thing that was done: what it was called, and the bench as it stood before. */
interface Step extends Stand {
  readonly label: string;
}

/** Up to four variants, the one in hand, and everything that was done to them. A variant's letter is its place. */
export class Bench {
  /** 1 to 4, in the order of their letters. */
  placed = $state.raw<readonly Placed[]>([]);
  /** Place of the variant that settings go to, from 0. */
  inHand = $state(0);
  /** A handle is being dragged: the present value counts only once it is let go. */
  isMoving = $state(false);

  #past = $state.raw<readonly Step[]>([]);
  #future = $state.raw<readonly Step[]>([]);
  #held: Variant | null = null;
  #count = 0;

  /** @param variants  one, or 1 to 4 of them */
  constructor(variants: Variant | readonly Variant[], inHand = 0) {
    const all = Array.isArray(variants) ? (variants as readonly Variant[]) : [variants as Variant];
    this.placed = all.map(this.#place);
    this.inHand = inHand;
  }

  /** The variant in hand. */
  readonly variant: Variant = $derived(this.placed[this.inHand].variant);
  /** Number of the variant in hand. */
  readonly id: number = $derived(this.placed[this.inHand].id);
  /** All variants without their numbers, as they are kept and saved. */
  readonly all: BenchSet = $derived({
    variants: this.placed.map(({ variant }) => variant),
    inHand: this.inHand,
  });
  /** What Undo would take back, e.g. `sensor height`; null when there is nothing. */
  readonly undoes: string | null = $derived(this.#past.at(-1)?.label ?? null);
  /** What Redo would do again. */
  readonly redoes: string | null = $derived(this.#future.at(-1)?.label ?? null);
  /** The letter the next variant would have; null where there is no room for one. */
  readonly nextLetter: string | null = $derived(letters[this.placed.length] ?? null);

  /** Puts one setting to a value, SI or a choice, in one step. */
  set(path: FieldPath, value: number | string): void {
    this.cancel();
    if (settingOf(this.variant, path) === value) return;
    this.#change(nameOf(path), withSetting(this.variant, path, value));
  }

  /** Puts one setting to a value while its handle is dragged; no step yet. */
  move(path: FieldPath, value: number): void {
    this.#held ??= this.variant;
    this.isMoving = true;
    if (settingOf(this.variant, path) === value) return;
    this.#put(withSetting(this.variant, path, value));
  }

  /** The handle is let go at a value: the whole drag is one step. */
  drop(path: FieldPath, value: number): void {
    this.cancel();
    this.set(path, value);
  }

  /** Puts back what stood before the drag. */
  cancel(): void {
    if (this.#held) this.#put(this.#held);
    this.#held = null;
    this.isMoving = false;
  }

  /** Replaces every setting of the variant in hand, in one step. @param label  what Undo calls it */
  replace(label: string, variant: Variant): void {
    this.cancel();
    this.#change(label, variant);
  }

  /** Puts other rows in place of the own draws, in one step. @param label  what Undo calls it */
  setOwnDraws(label: string, ownDraws: readonly OwnDraw[]): void {
    this.cancel();
    this.#change(label, { ...this.variant, ownDraws });
  }

  /** Takes another variant in hand. Nothing is changed, so there is nothing to undo. */
  take(place: number): void {
    if (place === this.inHand || !this.placed[place]) return;
    this.cancel();
    this.inHand = place;
  }

  /** Puts one more variant at the end, where there is room. @param isTaken  it is in hand from then on */
  add(label: string, variant: Variant, isTaken: boolean): void {
    this.cancel();
    if (this.placed.length >= mostVariants) return;
    const placed = [...this.placed, this.#place(variant)];
    this.#step(label, { placed, inHand: isTaken ? placed.length - 1 : this.inHand });
  }

  /** The variant at a place once more, at the end and in hand. */
  copy(place: number): void {
    const { variant } = this.placed[place];
    const name = copyName(
      variant.name,
      this.placed.map((each) => each.variant.name),
    );
    this.add(`copy of ${letters[place]}`, { ...variant, name }, true);
  }

  /** Takes a variant away; the last one stays. */
  remove(place: number): void {
    if (this.placed.length === 1) return;
    this.cancel();
    const inHand = this.inHand > place ? this.inHand - 1 : this.inHand;
    const placed = this.placed.toSpliced(place, 1);
    this.#step(`removal of ${letters[place]}`, {
      placed,
      inHand: Math.min(inHand, placed.length - 1),
    });
  }

  /** Gives a variant another name. */
  rename(place: number, name: string): void {
    this.cancel();
    const { id, variant } = this.placed[place];
    if (variant.name === name) return;
    const placed = this.placed.with(place, { id, variant: { ...variant, name } });
    this.#step(`name of ${letters[place]}`, { placed, inHand: this.inHand });
  }

  /** Lets two neighbours change places; each in hand stays in hand. @param place  of the left one */
  swap(place: number): void {
    const [left, right] = [this.placed[place], this.placed[place + 1]];
    if (!left || !right) return;
    this.cancel();
    const { id } = this;
    const placed = this.placed.with(place, right).with(place + 1, left);
    this.#step(`order of ${letters[place]} and ${letters[place + 1]}`, {
      placed,
      inHand: placed.findIndex((each) => each.id === id),
    });
  }

  /** Puts another variant at a place, in one step. @param label  what Undo calls it */
  putAt(place: number, label: string, variant: Variant): void {
    this.cancel();
    const placed = this.placed.with(place, { id: this.placed[place].id, variant });
    this.#step(label, { placed, inHand: this.inHand });
  }

  /** Puts other variants in place of all, in one step. */
  replaceAll(label: string, variants: readonly Variant[], inHand: number): void {
    this.cancel();
    this.#step(label, { placed: variants.map(this.#place), inHand });
  }

  undo(): void {
    this.cancel();
    const step = this.#past.at(-1);
    if (!step) return;
    this.#past = this.#past.slice(0, -1);
    this.#future = [...this.#future, { label: step.label, ...this.#stand() }];
    this.#stay(step);
  }

  redo(): void {
    this.cancel();
    const step = this.#future.at(-1);
    if (!step) return;
    this.#future = this.#future.slice(0, -1);
    this.#past = [...this.#past, { label: step.label, ...this.#stand() }];
    this.#stay(step);
  }

  #change(label: string, variant: Variant): void {
    this.putAt(this.inHand, label, variant);
  }

  #step(label: string, next: Stand): void {
    this.#past = [...this.#past, { label, ...this.#stand() }].slice(-DEPTH);
    this.#future = [];
    this.#stay(next);
  }

  #put(variant: Variant): void {
    this.placed = this.placed.with(this.inHand, { id: this.id, variant });
  }

  #stand(): Stand {
    return { placed: this.placed, inHand: this.inHand };
  }

  #stay({ placed, inHand }: Stand): void {
    // the one in hand must be there at every moment between the two
    if (inHand < this.placed.length) {
      this.inHand = inHand;
      this.placed = placed;
    } else {
      this.placed = placed;
      this.inHand = inHand;
    }
  }

  #place = (variant: Variant): Placed => {
    this.#count += 1;
    return { id: this.#count, variant };
  };
}

/** The label of a field as it reads in the middle of a sentence. */
function nameOf(path: FieldPath): string {
  const { label } = fieldAt(path);
  return label[0].toLowerCase() + label.slice(1);
}

/** Steps that can be taken back. */
const DEPTH = 500;
