import { figure } from '../../shared/format.ts';
import type { Study, StudyPoint } from '../../shared/study.ts';
import type { TableOf } from '../charts/table.ts';

export type PlacementStudy = Extract<Study, { readonly kind: 'placement' }>;
export type DifferentialStudy = Extract<Study, { readonly kind: 'differential' }>;

/** A study as rows of text, one for each of its points; the highest sensor first. */
export function studyTable(study: PlacementStudy | DifferentialStudy): TableOf {
  const isPlacement = study.kind === 'placement';
  const first = isPlacement ? 'sensor height, m' : 'differential, K';
  const points = isPlacement ? [...study.points].reverse() : study.points;
  const missing = (value: number | null) => value === null;
  const cell = (value: number | null, factor: number, digits: number) =>
    missing(value) ? 'not reached' : figure((value ?? 0) * factor, digits);
  return {
    columns: [
      first,
      'recovery, min',
      'usable when satisfied, l',
      'usable at the call, l',
      'reheat from the call, min',
      ...(isPlacement ? [] : ['calls a day']),
    ],
    rows: points.map((point) => [
      figure(point.value, isPlacement ? 2 : 1),
      cell(point.recovery, 1 / 60, 1),
      cell(point.usableAtSatisfied, 1000, 0),
      cell(point.usableAtCall, 1000, 0),
      cell(point.reheatAfterCall, 1 / 60, 1),
      ...(isPlacement ? [] : [cell(point.callsPerDay, 1, 0)]),
    ]),
  };
}

/** The point of a study nearest to a value of its setting; null of an empty study. */
export function nearestPoint(points: readonly StudyPoint[], value: number): StudyPoint | null {
  return points.reduce<StudyPoint | null>(
    (best, point) =>
      best === null || Math.abs(point.value - value) < Math.abs(best.value - value) ? point : best,
    null,
  );
}

/**
 * A measure of a study at a value of its setting, straight between its points; NaN beyond them and
 * beside one that was not reached.
 */
export function studyValueAt(
  points: readonly StudyPoint[],
  measure: (point: StudyPoint) => number | null,
  value: number,
): number {
  const above = points.findIndex((point) => point.value >= value);
  if (above < 0) return Number.NaN;
  const high = measure(points[above]);
  if (points[above].value === value) return high ?? Number.NaN;
  if (above === 0) return Number.NaN;
  const low = measure(points[above - 1]);
  if (low === null || high === null) return Number.NaN;
  const share = (value - points[above - 1].value) / (points[above].value - points[above - 1].value);
  return low + share * (high - low);
}

/** The most of a measure over a study, at least `least`. */
export function studyMost(
  points: readonly StudyPoint[],
  measure: (point: StudyPoint) => number | null,
  least: number,
): number {
  return points.reduce((most, point) => Math.max(most, measure(point) ?? 0), least);
}

/** Runs of neighbouring points at which a measure was not reached, from the lowest value to the highest. */
export function missedStretches(
  points: readonly StudyPoint[],
  measure: (point: StudyPoint) => number | null,
): { from: number; to: number }[] {
  const stretches: { from: number; to: number }[] = [];
  points.forEach((point, index) => {
    if (measure(point) !== null) return;
    const last = stretches.at(-1);
    const before = index > 0 && measure(points[index - 1]) === null;
    if (before && last !== undefined) last.to = point.value;
    else stretches.push({ from: point.value, to: point.value });
  });
  return stretches;
}
