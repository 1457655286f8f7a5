import type { SourceKey } from './sources.ts';

/**
 * One quantity in a formula. Values are SI (temperatures in °C); `factor` turns SI into the shown
 * unit.
 */
export interface Term {
  readonly key: string;
  /** MathML fragment, e.g. `<msub><mi>T</mi><mi>f</mi></msub>`. */
  readonly symbol: string;
  /** Plain words. */
  readonly name: string;
  /** The unit shown, e.g. `W/K`; empty for a pure number. */
  readonly unit: string;
  /** Shown value = SI value × factor; 1 when left out. */
  readonly factor?: number;
  /** Significant figures shown; 3 when left out. */
  readonly digits?: number;
}

/** SI values by term key. */
export type TermValues = Readonly<Record<string, number>>;

/**
 * What a relation says about itself: the screen, the handout and the command line print from it,
 * and a test runs its example through `compute`, so the printed formula cannot drift from the code.
 */
export interface ClosureRecord {
  readonly key: string;
  readonly title: string;
  readonly result: Term;
  readonly terms: readonly Term[];
  /** MathML presentation markup of the whole equation, `{key}` for each term and `{result}`. */
  readonly formula: string;
  /** The same in plain words, one sentence. */
  readonly sentence: string;
  readonly source: SourceKey;
  /** Clause, table, page or equation. */
  readonly where: string;
  readonly range: string;
  /** What happens outside the range: extended, clamped or refused. */
  readonly outside: string;
  /** What would change the result, one sentence for an engineer. */
  readonly changes: string;
  readonly example: {
    readonly given: TermValues;
    /** The result in SI. */
    readonly gives: number;
    /** `compute` must agree to this many decimal places of the SI value. */
    readonly digits: number;
    /** Where the number comes from. */
    readonly note: string;
  };
  /** Calls the function the model calls. SI in, SI out. */
  readonly compute: (given: TermValues) => number;
}
