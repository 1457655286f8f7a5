import { cautionsOf } from './cautions.ts';
import { toFile } from './codec.ts';
import { columnsOf } from './columns.ts';
import { notModelled } from './notModelled.ts';
import { type Balance, type Measures, measureRows, type Result } from './result.ts';
import { findingOf, plain } from './sentences.ts';
import { units } from './units.ts';

/** What stands under `format` in a saved result. */
export const resultFormat = 'reheat-bench result';

/** A whole result for other programs: units in the keys, null where there is no value. */
export function resultFile(result: Result): Record<string, unknown> {
  const { variant, outcome, measures, marks, phases, balance, cost, trace } = result;
  const minutes = (seconds: number) => seconds / units.minute.factor;
  return {
    format: resultFormat,
    version: 2,
    variant: toFile(variant),
    finding: findingOf(result).map(plain),
    outcome: { kind: outcome.kind, atMinutes: minutes(outcome.at) },
    measures: measuresFile(measures),
    marks: marks.map(({ at, kind }) => ({ atMinutes: minutes(at), kind })),
    phases: phases.map(({ from, to, ...rest }) => ({
      fromMinutes: minutes(from),
      toMinutes: minutes(to),
      ...rest,
    })),
    balance: balanceFile(balance),
    cost,
    cautions: cautionsOf(variant, result),
    notModelled,
    trace: Object.fromEntries(
      columnsOf(trace).map(({ key, at }) => [
        key,
        Array.from({ length: trace.samples }, (_, sample) => at(sample)),
      ]),
    ),
  };
}

function measuresFile(measures: Measures): Record<string, number | null> {
  const keys = Object.keys(measureRows) as (keyof Measures)[];
  return Object.fromEntries(
    keys.map((key) => {
      const { suffix, factor } = units[measureRows[key].unit];
      const value = measures[key];
      return [key + suffix, value === null || !Number.isFinite(value) ? null : value / factor];
    }),
  );
}

function balanceFile({ relative, ...energies }: Balance): Record<string, number> {
  const { suffix, factor } = units.kilowattHour;
  const entries = Object.entries(energies).map(([key, joules]) => [key + suffix, joules / factor]);
  return { ...Object.fromEntries(entries), relative };
}
