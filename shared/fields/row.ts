import type { UnitName } from '../units.ts';
import type { FieldPath, Variant } from '../variant.ts';

interface Row {
  readonly path: FieldPath;
  readonly label: string;
  /** One sentence: what it is and how it matters. */
  readonly help: string;
  /** Where the default comes from. */
  readonly source: string;
  /** Whether it has a say in this variant; a field without one is hidden, not lost. */
  readonly matters?: (variant: Variant) => boolean;
}

/** A setting that is a number. Limits, step and default are in the shown unit. */
export interface NumberField extends Row {
  readonly kind: 'number';
  readonly unit: UnitName;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly default: number;
  /** Counted, not measured. */
  readonly isWhole?: true;
}

/** A setting that is one of a few words. */
export interface ChoiceField extends Row {
  readonly kind: 'choice';
  readonly choices: readonly { readonly value: string; readonly label: string }[];
  readonly default: string;
}

export type Field = NumberField | ChoiceField;
