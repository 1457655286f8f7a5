import { dash } from '../format.ts';
import type { StudyPoint } from '../study.ts';

/** The points with the lowest and the highest setting. */
export function ends(points: readonly StudyPoint[]): [StudyPoint, StudyPoint] {
  const sorted = [...points].sort((a, b) => a.value - b.value);
  return [sorted[0], sorted[sorted.length - 1]];
}

/** The point whose setting is nearest to a value. */
export function nearestTo(points: readonly StudyPoint[], value: number): StudyPoint {
  return points.reduce((best, point) =>
    Math.abs(point.value - value) < Math.abs(best.value - value) ? point : best,
  );
}

/** First minus second, or null when one was not reached. */
export function difference(from: number | null, to: number | null): number | null {
  return from === null || to === null ? null : from - to;
}

/** How much one thing differs, in words: `saves 12.0 min`. @param value  first minus second, SI */
export function change(
  value: number | null,
  text: (value: number) => string,
  less: string,
  more: string,
): string {
  if (value === null) return `${less} ${dash}`;
  return `${value >= 0 ? less : more} ${text(Math.abs(value))}`.trim();
}
