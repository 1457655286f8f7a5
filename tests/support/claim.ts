import { test } from 'vitest';

/**
 * One claim of the prose and what shows it in the model. The quote is the sentence as a person reads it, `…` for what is
 * computed, or a part of it of three words or more; several where the same is said in several places.
 * `tests/claims/everySentence.test.ts` finds the quotes in the source, and wants every directional word of every sentence
 * inside one.
 */
export function claim(quotes: string | readonly string[], holds: () => void): void {
  // a minute: some run the model several times, on a machine that may be busy
  test([quotes].flat().join(' | '), holds, 60_000);
}
