import type { Asked, AskedRow } from './asked.ts';
import { duration } from './format.ts';
import type { Outcome } from './result.ts';

/** One point of a study over settings: a value for each measure asked, or why there is none. */
export interface Point {
  /** SI, in the order in which they were asked; null where there is none. */
  readonly values: readonly (number | null)[];
  /** In the same order; null where there is a value. */
  readonly gaps: readonly (Gap | null)[];
}

/** Why a point has no value. */
export interface Gap {
  /** The run, or the day, did not get there; it ended before its time; or the settings cannot be run. */
  readonly kind: 'notReached' | 'endedEarly' | 'notPossible';
  /** How the run ended, where it ended early. */
  readonly outcome: Outcome['kind'] | null;
  /** One for each thing to be said: what is to be put right, where it is not possible. */
  readonly sentences: readonly string[];
}

/** A measure of a run, a day or a draw: its value, SI, or why there is none. */
export interface Entry {
  readonly value: number | null;
  readonly gap: Gap | null;
}

/** What there is to say of a measure. @param value  as far as it was run, SI; null where it was not reached */
export function entryOf(row: AskedRow, outcome: Outcome, value: number | null): Entry {
  // a reheat that was over before the run ended early is whole; what is counted over the run is not
  const isWhole = outcome.kind === 'finished' || row.key === 'recovery';
  if (isWhole && value !== null && Number.isFinite(value)) return { value, gap: null };
  if (outcome.kind === 'finished') {
    return { value: null, gap: { kind: 'notReached', outcome: null, sentences: [row.without] } };
  }
  return { value: null, gap: early(outcome) };
}

function early({ kind, at }: Outcome): Gap {
  const why =
    kind === 'outOfRange' ? 'the water left the range of its tables' : 'it needed too many steps';
  const sentence = `The run ended early, after ${duration(at)}: ${why}.`;
  return { kind: 'endedEarly', outcome: kind, sentences: [sentence] };
}

/** The value of one measure of a point, SI; null where there is none or it was not asked. */
export function valueAsked(point: Point, asked: readonly Asked[], key: Asked): number | null {
  const at = asked.indexOf(key);
  return at < 0 ? null : point.values[at];
}

/** Everything there is to say about values that are missing, each sentence once. */
export function gapSentences({ gaps }: Point): string[] {
  return [...new Set(gaps.flatMap((gap) => gap?.sentences ?? []))];
}
