import type { Result } from '../../shared/result.ts';
import { sampleAt, valueAt } from '../../shared/sampleAt.ts';
import type { Seconds } from '../../shared/units.ts';

/** A run up to a moment, as if the rest were not known. */
export interface SoFar {
  readonly result: Result;
  readonly at: Seconds;
  /** [sample], s, the last at the moment. */
  readonly time: Float64Array;
  /** A quantity at these times. */
  readonly of: (column: Float64Array) => Float64Array;
}

/** Cuts a run at a moment: its samples, its phases and what set the pace. */
export function soFar(whole: Result, moment: Seconds): SoFar {
  const { time } = whole.trace;
  const at = Math.min(moment, whole.outcome.at);
  const count = sampleAt(time, at) + 1;
  const with1 = (values: Float64Array, last: number) => {
    const cut = new Float64Array(count + 1);
    cut.set(values.subarray(0, count));
    cut[count] = last;
    return cut;
  };
  const upToNow = <S extends { readonly from: Seconds; readonly to: Seconds }>(all: readonly S[]) =>
    all.filter(({ from }) => from < at).map((one) => ({ ...one, to: Math.min(one.to, at) }));
  const pace = { ...whole.pace, stretches: upToNow(whole.pace.stretches) };
  return {
    result: { ...whole, phases: upToNow(whole.phases), pace },
    at,
    time: with1(time, at),
    of: (column) => with1(column, valueAt(time, column, at)),
  };
}
