import { fieldAt } from '../fields.ts';
import { settingText } from '../format.ts';
import type { DelayKey } from '../minutes.ts';
import type { Result } from '../result.ts';
import { fromSI, toSI } from '../units.ts';
import { type FieldPath, settingOf, type Variant, withSetting } from '../variant.ts';

/** A practical change that might save time. Of several with one key the best is kept. */
export interface Proposal {
  /** Its name in tests and lists. */
  readonly key: string;
  readonly cause: DelayKey | 'output';
  /** What to do: `Raise the flow limit for hot water to 75 °C`. */
  readonly text: string;
  readonly variant: Variant;
  /** Warns that lime settles faster on a hotter coil. */
  readonly isHotter?: true;
}

/** What could be changed. @param result  of the variant as it is */
export type Propose = (variant: Variant, result: Result) => readonly (Proposal | null)[];

/** A variant with a number moved to what can be set: a whole step, within its limits. */
export function withStep(variant: Variant, path: FieldPath, value: number): Variant {
  const field = fieldAt(path);
  if (field.kind !== 'number') throw new Error(`${path} is a choice; expected a number`);
  const { least, most, step, unit } = field;
  const steps = Math.round((fromSI(value, unit) - least) / step);
  const shown = Math.min(most, Math.max(least, Number((least + steps * step).toPrecision(12))));
  return withSetting(variant, path, toSI(shown, unit));
}

/** A setting of a variant as it is typed, with its unit. */
export function told(variant: Variant, path: FieldPath): string {
  return settingText(path, settingOf(variant, path));
}
