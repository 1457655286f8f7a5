import { fieldAt } from '../fields.ts';
import type { NumberField } from '../fields/row.ts';
import { settingText } from '../format.ts';
import { MAP_LEAST, MAP_MOST } from '../mapSettings.ts';
import { fromSI } from '../units.ts';
import type { FieldPath, Variant } from '../variant.ts';
import { settingProblem } from './ranges.ts';

/** What is asked of an axis of a map. */
export type RangePart = 'from' | 'to' | 'count';

/** An axis of a map; `from` and `to` in SI. */
export interface MapRangeValues {
  readonly from: number;
  readonly to: number;
  readonly count: number;
}

/** A part of an axis as a field of its own. */
export function rangeField(path: FieldPath, part: RangePart): NumberField {
  const field = fieldAt(path) as NumberField;
  if (part === 'count') {
    return {
      kind: 'number',
      path,
      label: `Points along ${field.label.toLowerCase()}`,
      help: 'More points show finer bends and take longer, each a run of its own.',
      unit: 'number',
      least: MAP_LEAST,
      most: MAP_MOST,
      step: 1,
      default: 15,
      isWhole: true,
      source: 'engineering guess, no source',
    };
  }
  return {
    ...field,
    label: `${field.label} ${part === 'from' ? 'from' : 'to'}`,
    help: part === 'from' ? 'Where the map begins.' : 'Where the map ends.',
    source: 'engineering guess, no source',
  };
}

/** What is wrong with an axis, for each part of it; nothing where it can be mapped. */
export function rangeProblemsOf(
  path: FieldPath,
  { from, to, count }: MapRangeValues,
  variant: Variant,
): Partial<Record<RangePart, string>> {
  const found: Partial<Record<RangePart, string>> = {};
  const alone = (part: RangePart, value: number) => {
    const problem = settingProblem(rangeField(path, part), value, variant);
    if (problem) found[part] = problem.message;
  };
  alone('from', from);
  alone('to', to);
  alone('count', count);
  if (found.from === undefined && found.to === undefined) {
    const field = fieldAt(path) as NumberField;
    if (!(to > from)) {
      found.to = `${rangeField(path, 'to').label} must be above ${settingText(path, from)}, where the map begins; it is ${settingText(path, to)}.`;
    } else if (field.isWhole && found.count === undefined) {
      const most = Math.round(fromSI(to - from, field.unit)) + 1;
      if (count > most) {
        found.count = `${rangeField(path, 'count').label} must be ${most} or fewer, as only whole numbers count; it is ${count}.`;
      }
    }
  }
  return found;
}
