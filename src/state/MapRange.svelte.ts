import { fieldAt } from '../../shared/fields.ts';
import type { NumberField } from '../../shared/fields/row.ts';
import { type Axis, evenAxis } from '../../shared/grid.ts';
import { usualRange } from '../../shared/mapSettings.ts';
import { type RangePart, rangeField, rangeProblemsOf } from '../../shared/problems/mapRange.ts';
import { parseNumber } from '../../shared/problems.ts';
import { fromSI, toSI } from '../../shared/units.ts';
import type { FieldPath, Variant } from '../../shared/variant.ts';

/** One axis of a map as it is entered: a setting, from where to where, at how many points. */
export class MapRange {
  path = $state() as FieldPath;
  /** SI */
  from = $state(0);
  to = $state(0);
  count = $state(15);
  /** What was typed and could not be taken. */
  typed = $state.raw<Readonly<Partial<Record<RangePart, string>>>>({});
  #said = $state.raw<Readonly<Partial<Record<RangePart, string>>>>({});
  #variant: () => Variant;

  /** @param variant  narrows the limits to the cylinder in hand */
  constructor(path: FieldPath, variant: () => Variant) {
    this.#variant = variant;
    this.pick(path);
  }

  /** What is wrong, for each part. */
  readonly problems: Readonly<Partial<Record<RangePart, string>>> = $derived.by(() => {
    const { from, to, count } = this;
    return { ...rangeProblemsOf(this.path, { from, to, count }, this.#variant()), ...this.#said };
  });

  /** The axis; null while it has a problem. */
  readonly axis: Axis | null = $derived.by(() => {
    if (Object.keys(this.problems).length > 0) return null;
    const { unit } = fieldAt(this.path) as NumberField;
    return evenAxis(this.path, fromSI(this.from, unit), fromSI(this.to, unit), this.count);
  });

  /** Another setting, over its usual range. */
  pick(path: FieldPath): void {
    const { unit } = fieldAt(path) as NumberField;
    const { from, to } = usualRange(this.#variant(), path);
    this.path = path;
    this.from = toSI(from, unit);
    this.to = toSI(to, unit);
    this.#forget('from');
    this.#forget('to');
  }

  /** @param value  SI */
  set(part: RangePart, value: number): void {
    this.#forget(part);
    this[part] = value;
  }

  /** Reads what was typed; what cannot be taken stays as it is, with what is wrong. */
  enter(part: RangePart, text: string): void {
    const parsed = parseNumber(text, rangeField(this.path, part), this.#variant());
    if ('value' in parsed) {
      this.set(part, parsed.value);
      return;
    }
    this.typed = { ...this.typed, [part]: text };
    this.#said = { ...this.#said, [part]: parsed.problem.message };
  }

  /** The text is being changed: what was wrong with it is no longer said. */
  retype(part: RangePart, text: string): void {
    if (this.typed[part] === undefined) return;
    if ('value' in parseNumber(text, rangeField(this.path, part), this.#variant())) {
      this.enter(part, text);
    }
  }

  #forget(part: RangePart): void {
    const { [part]: _typed, ...typed } = this.typed;
    const { [part]: _said, ...said } = this.#said;
    this.typed = typed;
    this.#said = said;
  }
}
