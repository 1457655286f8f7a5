import type { Result } from '../../shared/result.ts';
import type { Section } from '../../src/explain/physics/section.ts';
import { readingAt } from '../../src/explain/reading.ts';

/** What a section of the explanation says of a run at a moment, as one text. @param at  s */
export function toldOf({ said }: Section, result: Result, at: number): string {
  const reading = readingAt(result, at);
  const coilRuns = Number.isFinite(reading.conductance);
  return said({ result, at, reading, coilRuns, day: null })
    .map((paragraph) =>
      paragraph.map((part) => (typeof part === 'string' ? part : part.text)).join(''),
    )
    .join(' ');
}
