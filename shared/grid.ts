import type { Asked } from './asked.ts';
import { fieldAt } from './fields.ts';
import type { NumberField } from './fields/row.ts';
import { toSI } from './units.ts';
import { type FieldPath, type Variant, withSetting } from './variant.ts';

/** A study over settings: one variant, settings that take several values each, and what is asked of every point. */
export interface Grid {
  readonly base: Variant;
  /** The last one changes from point to point, the first one least often. */
  readonly axes: readonly Axis[];
  readonly measures: readonly Asked[];
}

/** A setting and the values it takes. */
export interface Axis {
  readonly path: FieldPath;
  /** SI, or values of a choice. */
  readonly values: readonly (number | string)[];
}

/** One setting of a point, in SI or a choice. */
export type Override = readonly [FieldPath, number | string];

/** How many points there are. */
export function pointCount({ axes }: Pick<Grid, 'axes'>): number {
  return axes.reduce((count, { values }) => count * values.length, 1);
}

/** The settings of one point. @param index  from 0 */
export function overridesAt({ axes }: Pick<Grid, 'axes'>, index: number): Override[] {
  const found: Override[] = [];
  let left = index;
  for (let axis = axes.length - 1; axis >= 0; axis--) {
    const { path, values } = axes[axis];
    found[axis] = [path, values[left % values.length]];
    left = Math.floor(left / values.length);
  }
  return found;
}

/** The variant of one point. @param index  from 0 */
export function variantAt(grid: Grid, index: number): Variant {
  return withOverrides(grid.base, overridesAt(grid, index));
}

/** A variant with some settings put to other values. */
export function withOverrides(variant: Variant, overrides: readonly Override[]): Variant {
  return overrides.reduce((changed, [path, value]) => withSetting(changed, path, value), variant);
}

/** An axis of a number at equal steps. @param from  and `to`: in the unit that is shown @param count  2 or more */
export function evenAxis(path: FieldPath, from: number, to: number, count: number): Axis {
  const field = fieldAt(path);
  if (field.kind !== 'number') throw new Error(`${path} is a choice; expected a number`);
  return { path, values: evenly(from, to, count).map((shown) => inside(field, shown)) };
}

/** Every choice of a setting. */
export function choiceAxis(path: FieldPath): Axis {
  const field = fieldAt(path);
  if (field.kind !== 'choice') throw new Error(`${path} is a number; expected a choice`);
  return { path, values: field.choices.map(({ value }) => value) };
}

/**
 * Numbers at equal steps, both ends among them; rounded to twelve figures, so that each is the number that a person would type.
 * @param count  1 gives the first alone
 */
export function evenly(from: number, to: number, count: number): number[] {
  return Array.from({ length: count }, (_, index) =>
    count === 1 ? from : Number((from + ((to - from) * index) / (count - 1)).toPrecision(12)),
  );
}

/** A shown number in SI; what is counted becomes the nearest whole one. */
function inside(field: NumberField, shown: number): number {
  return toSI(field.isWhole ? Math.round(shown) : shown, field.unit);
}
