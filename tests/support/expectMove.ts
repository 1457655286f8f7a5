import { expect } from 'vitest';
import { type Expected, numbersIn, played, wordsOf } from '../make/lessonMoves.ts';

/** A move of a lesson comes to an option, says these numbers in order, and points at a moment of its run. */
export function expectMove(...[lesson, move, option, numbers]: Expected): void {
  const { before, after, answer } = played(lesson, move);
  expect(answer.option).toBe(option);
  expect(numbersIn(wordsOf(answer, after))).toEqual(
    numbers(before, after).flatMap((text) => numbersIn(text)),
  );
  expect(answer.look.at).toBeGreaterThan(0);
  expect(answer.look.at).toBeLessThanOrEqual(after.outcome.at);
}
