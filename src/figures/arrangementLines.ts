import { figure } from '../../shared/format.ts';
import type { Quantity, Result } from '../../shared/result.ts';
import type { Study } from '../../shared/study.ts';
import { valueAt } from '../../shared/sampleAt.ts';
import type { Seconds } from '../../shared/units.ts';
import type { TableOf } from '../charts/table.ts';
import { timeEnd } from './reheatFrames.ts';

export type ArrangementStudy = Extract<Study, { readonly kind: 'arrangement' }>;

/** One of the two runs: its name, in full and short, and how its lines are drawn. */
export interface ArrangementRun {
  readonly key: 'priority' | 'simultaneous';
  readonly name: string;
  readonly short: string;
  readonly run: Result;
  readonly kind: string;
}

/** The two runs of the study, told apart by word and dash. */
export function arrangementRuns(study: ArrangementStudy): ArrangementRun[] {
  return [
    {
      key: 'priority',
      name: 'hot water first',
      short: 'first',
      run: study.priority,
      kind: 'lead',
    },
    {
      key: 'simultaneous',
      name: 'both at once',
      short: 'both',
      run: study.simultaneous,
      kind: 'lead dashed',
    },
  ];
}

/** End of the time axis that both runs fit on, s. */
export function arrangementEnd(study: ArrangementStudy): Seconds {
  return Math.max(timeEnd(study.priority), timeEnd(study.simultaneous));
}

/**
 * Least and most of a quantity over both runs up to a moment, with a little air, in whole steps.
 * @param step  the ends fall on multiples of this, in the unit of the quantity
 */
export function sharedDomain(
  study: ArrangementStudy,
  quantity: Quantity,
  end: Seconds,
  step: number,
): [number, number] {
  let [least, most] = [Infinity, -Infinity];
  for (const { trace } of [study.priority, study.simultaneous]) {
    trace.of[quantity].forEach((value, sample) => {
      if (trace.time[sample] > end || Number.isNaN(value)) return;
      least = Math.min(least, value);
      most = Math.max(most, value);
    });
  }
  if (least > most) return [0, step];
  const low = Math.floor((least - step * 0.1) / step) * step;
  return [low, Math.max(low + step, Math.ceil((most + step * 0.1) / step) * step)];
}

/** Rooms and sensor under both arrangements as rows of text, at most 24. */
export function arrangementTable(study: ArrangementStudy, end: Seconds): TableOf {
  const every = [1, 2, 5, 10, 15, 20, 30, 60, 120, 240, 480].find((each) => end / each / 60 <= 23);
  const step = (every ?? 1440) * 60;
  const runs = arrangementRuns(study);
  const cell = (run: Result, quantity: Quantity, at: Seconds, digits: number) =>
    at > run.outcome.at
      ? figure(null)
      : figure(valueAt(run.trace.time, run.trace.of[quantity], at), digits);
  return {
    columns: [
      'min',
      ...runs.map(({ name }) => `rooms, ${name}, °C`),
      ...runs.map(({ name }) => `sensor, ${name}, °C`),
    ],
    rows: Array.from({ length: Math.floor(end / step) + 1 }, (_, row) => [
      figure((row * step) / 60, 0),
      ...runs.map(({ run }) => cell(run, 'air', row * step, 2)),
      ...runs.map(({ run }) => cell(run, 'sensor', row * step, 1)),
    ]),
  };
}
