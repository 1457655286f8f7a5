import type { Asked } from './asked.ts';
import { type Field, fieldAt, fieldsOf, groupLabels, type NumberField } from './fields.ts';
import { choiceAxis, type Override, withOverrides } from './grid.ts';
import { filePathOf } from './fileKeys.ts';
import { limitsOf } from './problems/ranges.ts';
import { fromSI } from './units.ts';
import { type FieldPath, type Group, groups, settingOf, type Variant } from './variant.ts';

/** The settings of one group that a map may take. */
export interface MapGroup {
  readonly label: string;
  readonly fields: readonly Field[];
}

/** The numbers that have a say in a variant, or would once another setting lets them, in their groups. */
export function mapNumbers(variant: Variant): readonly MapGroup[] {
  return groupsWith((field) => field.kind === 'number' && hasSay(field, variant));
}

/** The choices that have a say: a line of their own each, the sharing of the boiler first. */
export function mapChoices(variant: Variant): readonly MapGroup[] {
  return groupsWith((field) => field.kind === 'choice' && hasSay(field, variant));
}

function groupsWith(fits: (field: Field) => boolean): MapGroup[] {
  return groups
    .filter((group) => !withoutSay.has(group))
    .map((group) => ({ label: groupLabels[group], fields: fieldsOf(group).filter(fits) }))
    .filter(({ fields }) => fields.length > 0);
}

function hasSay(field: Field, variant: Variant): boolean {
  return field.matters?.(withOverrides(variant, impliedBy(field.path))) ?? true;
}

/** What else a variant must say for a setting to have a say: a coil whose area is mapped is known by its area. */
export function impliedBy(path: FieldPath): readonly Override[] {
  return implied[path] ?? [];
}

/** That a setting has no say in a variant, and what would give it one; null where it has. */
export function withoutSayWords(variant: Variant, path: FieldPath): string | null {
  const field = fieldAt(path);
  if (field.matters?.(variant) ?? true) return null;
  const needs = impliedBy(path).map(([other, value]) => `${filePathOf(fieldAt(other))} ${value}`);
  const cure = hasSay(field, variant) ? `; it would have with ${needs.join(' and ')}` : '';
  return `${filePathOf(field)} has no say here${cure}.`;
}

/**
 * Where a variant stands on an axis, SI or a choice. A coil that is known by its tube has the area of that tube; null
 * where the variant does not say.
 */
export function standsAt(variant: Variant, path: FieldPath): number | string | null {
  const isSaid = impliedBy(path).every(([other, value]) => settingOf(variant, other) === value);
  if (isSaid) return settingOf(variant, path);
  const { given, tubeOutside, length } = variant.coil;
  return path === 'coil.area' && given === 'geometry' ? Math.PI * tubeOutside * length : null;
}

/** From where to where a setting is mapped unless told otherwise, in its shown unit, at steps of its field. */
export function usualRange(variant: Variant, path: FieldPath): { from: number; to: number } {
  const field = fieldAt(path) as NumberField;
  const { least, most } = limitsOf(field, variant);
  const stands = standsAt(variant, path);
  const now = typeof stands === 'number' ? fromSI(stands, field.unit) : field.default;
  const isTemperature = field.unit === 'celsius';
  const step = (value: number) =>
    Number((Math.round(value / field.step) * field.step).toPrecision(12));
  // engineering guess, no source: half to twice, or 15 K both ways, is what is weighed up on a job
  const from = Math.max(least, step(isTemperature ? now - 15 : now / 2));
  const to = Math.min(most, step(isTemperature ? now + 15 : now * 2));
  return to > from ? { from, to } : { from: least, to: Math.min(most, least + 10 * field.step) };
}

/** The ways of sharing the boiler that a map sets side by side. */
export const sharingAxis = {
  ...choiceAxis('heating.arrangement'),
  values: ['priority', 'simultaneous', 'heatingFirst'],
};

/** Measures of a day, of which each point takes some hundred times a reheat. */
export const slowMeasures: ReadonlySet<Asked> = new Set(['callsPerDay', 'fuelPerDay']);

/** What no measure of a map depends on. */
const withoutSay: ReadonlySet<Group> = new Set(['unknowns', 'prices']);

const implied: Readonly<Partial<Record<FieldPath, readonly Override[]>>> = {
  'coil.area': [['coil.given', 'area']],
  'coil.length': [['coil.given', 'geometry']],
  'coil.conductance': [['coil.given', 'conductance']],
  'primary.flow': [['primary.flowFrom', 'given']],
};

/** Of points along an axis. */
export const MAP_LEAST = 2;
export const MAP_MOST = 32;
