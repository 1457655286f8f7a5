import { readOptions } from '../readOptions.ts';

/** What `batch` is asked for. */
export type BatchCommand =
  | {
      readonly kind: 'batch';
      /** Path of a study, or `-` for standard input. */
      readonly study: string;
      /** Path of a file to write, or null for standard output. */
      readonly out: string | null;
      readonly resume: boolean;
      readonly part: Part;
      readonly form: RowForm;
      /** Workers; null for one on each core. */
      readonly jobs: number | null;
    }
  | { readonly kind: 'batchMeasures' | 'batchHelp' };

/** One of several parts of a study, counted from 1. */
export interface Part {
  readonly number: number;
  readonly of: number;
}

/** How rows are written: one JSON object a line, or comma-separated. */
export type RowForm = 'ndjson' | 'csv';

/** Reads what follows `batch`, or says what is wrong with it, one sentence each. */
export function readBatchArgs(
  args: readonly string[],
): BatchCommand | { readonly problems: string[] } {
  const typed = readOptions(args, options, ' of batch', (name) => neededAfter[name]);
  if ('problems' in typed) return typed;
  const { values, positionals } = typed;
  if (values.help) return { kind: 'batchHelp' };
  if (values.measures) return { kind: 'batchMeasures' };
  if (positionals.length !== 1) {
    const got = positionals.length === 0 ? 'none was given' : `there are ${positionals.length}`;
    return {
      problems: [`Name one study, or - for standard input; ${got}. batch --help says more.`],
    };
  }
  const out = typeof values.out === 'string' ? values.out : null;
  if (values.resume === true && out === null) {
    return { problems: ['--resume goes on with a file of rows; name it with --out.'] };
  }
  const part = partOf(String(values.part ?? '1/1'));
  if (part === null) {
    return {
      problems: [`--part is written as 2/5, part 2 of 5; “${String(values.part)}” is not one.`],
    };
  }
  const form = formOf(values.format, out);
  if (form === null) {
    return { problems: [`--format is ndjson or csv; “${String(values.format)}” is neither.`] };
  }
  const jobs = values.jobs === undefined ? null : jobsOf(String(values.jobs));
  if (jobs !== null && Number.isNaN(jobs)) {
    return {
      problems: [
        `--jobs is a count of workers from 1 to 256; “${String(values.jobs)}” is not one.`,
      ],
    };
  }
  return {
    kind: 'batch',
    study: positionals[0],
    out,
    resume: values.resume === true,
    part,
    form,
    jobs,
  };
}

function partOf(text: string): Part | null {
  const match = /^(\d{1,6})\/(\d{1,6})$/.exec(text);
  if (!match) return null;
  const [number, of] = [Number(match[1]), Number(match[2])];
  return number >= 1 && number <= of ? { number, of } : null;
}

function formOf(given: unknown, out: string | null): RowForm | null {
  if (given === undefined) return out?.toLowerCase().endsWith('.csv') ? 'csv' : 'ndjson';
  return given === 'csv' || given === 'ndjson' ? given : null;
}

function jobsOf(text: string): number {
  const count = /^\d{1,3}$/.test(text) ? Number(text) : Number.NaN;
  return count >= 1 && count <= 256 ? count : Number.NaN;
}

const options = {
  out: { type: 'string' },
  resume: { type: 'boolean' },
  part: { type: 'string' },
  format: { type: 'string' },
  jobs: { type: 'string' },
  measures: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
} as const;

const neededAfter: Readonly<Record<string, string>> = {
  out: 'the name of a file to write',
  part: 'which part of how many, such as 2/5,',
  format: 'ndjson or csv',
  jobs: 'a number',
};
