import { cautionsOf } from './cautions.ts';
import { toFile } from './codec.ts';
import { columnsOf } from './columns.ts';
import { notModelled } from './notModelled.ts';
import { type Balance, measureRows, type Result, type Trace } from './result.ts';
import { findingOf, plain } from './sentences.ts';
import { type UnitName, units } from './units.ts';

/** What stands under `format` in a saved result. */
export const resultFormat = 'reheat-bench result';

/** A whole result for other programs: units in the keys, null where there is no value. */
export function resultFile(result: Result): Record<string, unknown> {
  const { variant, outcome, measures, marks, phases, pace, balance, cost, trace } = result;
  const minutes = (seconds: number) => seconds / units.minute.factor;
  return {
    format: resultFormat,
    version: 2,
    variant: toFile(variant),
    finding: findingOf(result).map(plain),
    outcome: { kind: outcome.kind, atMinutes: minutes(outcome.at) },
    measures: measuresFile(measureRows, measures),
    marks: marks.map(({ at, kind }) => ({ atMinutes: minutes(at), kind })),
    phases: phases.map(({ from, to, ...rest }) => ({
      fromMinutes: minutes(from),
      toMinutes: minutes(to),
      ...rest,
    })),
    pace: pace.stretches.map(({ from, to, by }) => ({
      fromMinutes: minutes(from),
      toMinutes: minutes(to),
      by,
    })),
    balance: balanceFile(balance),
    cost,
    cautions: cautionsOf(variant, result),
    notModelled,
    trace: traceFile(trace),
  };
}

/** Measures under keys with their units, null where there is no value. */
export function measuresFile<K extends string>(
  rows: Readonly<Record<K, { readonly unit: UnitName }>>,
  measures: Readonly<Record<K, number | null>>,
): Record<string, number | null> {
  const keys = Object.keys(rows) as K[];
  return Object.fromEntries(
    keys.map((key) => {
      const { suffix, factor } = units[rows[key].unit];
      const value = measures[key];
      return [key + suffix, value === null || !Number.isFinite(value) ? null : value / factor];
    }),
  );
}

/** Traces as columns of numbers under keys with their units. */
export function traceFile(trace: Trace): Record<string, readonly (number | null)[]> {
  return Object.fromEntries(
    columnsOf(trace).map(({ key, at }) => [
      key,
      Array.from({ length: trace.samples }, (_, sample) => at(sample)),
    ]),
  );
}

/** The balance in kilowatt-hours. */
export function balanceFile({ relative, ...energies }: Balance): Record<string, number> {
  const { suffix, factor } = units.kilowattHour;
  const entries = Object.entries(energies).map(([key, joules]) => [key + suffix, joules / factor]);
  return { ...Object.fromEntries(entries), relative };
}
