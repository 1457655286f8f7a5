import { defaultVariant } from './fields.ts';
import { coil } from './lessons/coil.ts';
import { differential } from './lessons/differential.ts';
import { layers } from './lessons/layers.ts';
import type { Lesson, Move } from './lessons/lesson.ts';
import { sensor } from './lessons/sensor.ts';
import { standingLoss } from './lessons/standingLoss.ts';
import { whoFirst } from './lessons/whoFirst.ts';
import { withSettings } from './presets.ts';
import type { Variant } from './variant.ts';

/** The lessons, in the order in which they build on each other. */
export const lessons: readonly Lesson[] = [
  layers,
  coil,
  sensor,
  differential,
  whoFirst,
  standingLoss,
];

/** The lesson of a name, if there is one. */
export function lessonNamed(key: string): Lesson | undefined {
  return lessons.find((lesson) => lesson.key === key);
}

/** What a lesson starts from. */
export function lessonVariant({ title, setUp }: Lesson): Variant {
  return withSettings(defaultVariant(title), setUp);
}

/** What stands on the bench before and after a move; a move starts from the set-up, whatever it has been adjusted to. */
export function moveVariants(
  lesson: Lesson,
  move: Move,
): { readonly before: Variant; readonly after: Variant } {
  const before = withSettings(lessonVariant(lesson), move.from ?? []);
  return { before, after: withSettings(before, move.sets) };
}
