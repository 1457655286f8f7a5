import { test } from 'vitest';

/**
 * One claim of the prose and what shows it in the model. The quote is the sentence as a person reads it, `…` for what is
 * computed, or a part of it; `tests/claims/everySentence.test.ts` finds it in the source and wants every directional word of
 * a sentence inside a quote.
 */
export function claim(quote: string, holds: () => void): void {
  test(quote, holds, 60_000); // some run the model several times, on a machine that may be busy
}
