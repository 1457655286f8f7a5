import { fields } from '../fields.ts';
import type { Field, NumberField } from '../fields/row.ts';
import { plainText } from '../format.ts';
import { fromSI, units } from '../units.ts';
import { type FieldPath, settingOf, type Variant } from '../variant.ts';
import { type Problem, problemAt } from './problem.ts';

/** What a setting may be, in its shown unit; `because` follows the upper limit in a sentence. */
export interface Limits {
  readonly least: number;
  readonly most: number;
  readonly because: string;
}

/** The limits of a setting, narrowed by the cylinder in hand when a variant is given. */
export function limitsOf(field: NumberField, variant?: Variant): Limits {
  const { least, most } = field;
  if (variant && withinCylinder.has(field.path) && (field.matters?.(variant) ?? true)) {
    const height = variant.cylinder.height;
    const shownHeight = fromSI(height, field.unit);
    if (Number.isFinite(height) && shownHeight < most && shownHeight >= least) {
      return { least, most: shownHeight, because: ', the height of this cylinder' };
    }
  }
  return { least, most, because: '' };
}

/** The limits as a hint: `0.02 to 1.32 m`. */
export function rangeText(field: NumberField, variant?: Variant): string {
  const { least, most } = limitsOf(field, variant);
  return `${plainText(least, 'number')} to ${plainText(most, field.unit)}`;
}

/** The problems of every setting on its own: finite, within its limits, one of its choices. */
export function rangeProblems(variant: Variant, narrowed = true): Problem[] {
  return fields.flatMap((field) => {
    const problem = settingProblem(
      field,
      settingOf(variant, field.path),
      narrowed ? variant : undefined,
    );
    return problem ? [problem] : [];
  });
}

/**
 * The problem of one setting on its own, or null.
 * @param value  SI, or the value of a choice
 */
export function settingProblem(field: Field, value: unknown, variant?: Variant): Problem | null {
  if (field.kind === 'choice') {
    if (field.choices.some((choice) => choice.value === value)) return null;
    const allowed = field.choices.map((choice) => choice.value).join(', ');
    return problemAt(
      field.path,
      'choice',
      `${field.label}: choose one of ${allowed}; ${quoted(value)} is not among them.`,
    );
  }
  if (typeof value !== 'number' || Number.isNaN(value)) {
    return problemAt(field.path, 'number', `${field.label} needs a number${inUnit(field)}.`);
  }
  const { least, most, because } = limitsOf(field, variant);
  const plain = value / units[field.unit].factor;
  // the limits have few figures, so that rounding takes nothing across them
  if (!field.isWhole && plain >= least && plain <= most) return null;
  const now = fromSI(value, field.unit); // rounded to twelve figures, so a value at its limit is within it
  if (now < least || now > most) {
    return problemAt(field.path, 'range', outOfRange(field, { least, most, because }, now));
  }
  if (field.isWhole && !Number.isInteger(now)) {
    return problemAt(
      field.path,
      'whole',
      `${field.label} must be a whole number; it is ${plainText(value, field.unit)}.`,
    );
  }
  return null;
}

function outOfRange(field: NumberField, limits: Limits, value: number): string {
  const from = plainText(limits.least, field.unit);
  const to = plainText(limits.most, field.unit);
  const now = Number.isFinite(value) ? plainText(value, field.unit) : 'beyond all measure';
  return `${field.label} must be between ${from} and ${to}${limits.because}; it is ${now}.`;
}

function inUnit(field: NumberField): string {
  const { words } = units[field.unit];
  return words === '' ? '' : ` in ${words}`;
}

function quoted(value: unknown): string {
  const text = JSON.stringify(value) ?? 'missing';
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}

/** Heights that cannot be above the top of the cylinder. */
const withinCylinder = new Set<FieldPath>([
  'stat.sensorHeight',
  'coil.bottom',
  'coil.top',
  'secondCoil.bottom',
  'secondCoil.top',
  'draw.inletMixing',
  'draw.inletHeight',
  'immersion.height',
  'start.boundary',
]);
