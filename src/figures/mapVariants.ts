import type { Axis, Override } from '../../shared/grid.ts';
import { impliedBy, standsAt } from '../../shared/mapSettings.ts';
import type { FieldPath, Variant } from '../../shared/variant.ts';
import type { FoundMap } from '../state/mapUnderWay.ts';
import { numbersOf, positionOf } from './mapPlace.ts';

/** A variant of the bench with its letter. */
export interface LetteredVariant {
  readonly letter: string;
  readonly name: string;
  readonly variant: Variant;
}

/** The axes of a map: across, and upward where there is one. */
export function axesOf({ grid }: Pick<FoundMap, 'grid'>): { across: Axis; upward: Axis | null } {
  const { axes } = grid;
  return axes.length > 1 ? { across: axes[1], upward: axes[0] } : { across: axes[0], upward: null };
}

/** The setting a variant is moved to along both axes of a map; SI. */
export interface Stand {
  readonly across: number;
  /** null where the upward axis is one of words, or there is none */
  readonly upward: number | null;
}

/** Where a variant stands on a map; null where it does not say a setting that is mapped. */
export function standOf(variant: Variant, map: FoundMap): Stand | null {
  const { across, upward } = axesOf(map);
  const x = standsAt(variant, across.path);
  if (typeof x !== 'number') return null;
  if (upward === null || map.rowsAreWords) return { across: x, upward: null };
  const y = standsAt(variant, upward.path);
  return typeof y === 'number' ? { across: x, upward: y } : null;
}

/** The row of a variant where the upward axis is one of words; 0 where there is none, null where it has another word. */
export function rowOf(variant: Variant, map: FoundMap): number | null {
  const { upward } = axesOf(map);
  if (upward === null) return 0;
  const row = upward.values.indexOf(standsAt(variant, upward.path) ?? '');
  return row < 0 ? null : row;
}

/** Positions of a stand on the grid, and whether they lie inside it. */
export function placeOf(
  stand: Stand,
  map: FoundMap,
): { column: number; row: number; isInside: boolean } {
  const { across, upward } = axesOf(map);
  const column = positionOf(numbersOf(across.values), stand.across);
  const row =
    upward === null || stand.upward === null
      ? 0
      : positionOf(numbersOf(upward.values), stand.upward);
  const within = (position: number, count: number) => position > -0.001 && position < count - 0.999;
  const isInside =
    within(column, map.values.columns) && (stand.upward === null || within(row, map.values.rows));
  return { column, row, isInside };
}

/** The settings that put a variant to a stand, with what they imply. */
export function settingsOf(stand: Stand, map: FoundMap): Override[] {
  const { across, upward } = axesOf(map);
  const settings: [FieldPath, number][] = [[across.path, stand.across]];
  if (upward !== null && stand.upward !== null) settings.push([upward.path, stand.upward]);
  return [...settings.flatMap(([path]) => impliedBy(path)), ...settings];
}
