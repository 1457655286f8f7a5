import { writeFile } from 'node:fs/promises';
import { benchFromText } from '../../shared/codec/bench.ts';
import { toText } from '../../shared/codec.ts';
import { letters } from '../../shared/letters.ts';
import { nearest } from '../../shared/nearest.ts';
import { presetNamed, presets, presetVariant } from '../../shared/presets.ts';
import { dayFile } from '../../shared/dayFile.ts';
import type { Outcome, Result, Trace } from '../../shared/result.ts';
import { resultFile } from '../../shared/resultFile.ts';
import { settingsTable } from '../../shared/settingsTable.ts';
import { spreadFile } from '../../shared/spreadFile.ts';
import { traceCsv } from '../../shared/traceCsv.ts';
import type { Variant } from '../../shared/variant.ts';
import { whyFile } from '../../shared/whyFile.ts';
import { changesOf } from '../run/changes.ts';
import { dayRun } from '../run/day.ts';
import { delivered } from '../run/delivery.ts';
import { minutesByCause } from '../run/minutes.ts';
import { SPREAD_RUNS, spreadOf } from '../run/spread.ts';
import { simulateToEnd } from '../run/simulate.ts';
import { toEnd } from '../run/toEnd.ts';
import { type Command, readArgs } from './args.ts';
import { batch } from './batch/batch.ts';
import { batchHelp, measuresTable } from './batch/help.ts';
import { dayReport } from './dayReport.ts';
import { help } from './help.ts';
import { columns } from './layout.ts';
import { ohmsReport } from './ohms.ts';
import { nameOf, readInput, whyNotRead } from './read.ts';
import { report } from './report.ts';
import { whyReport } from './whyReport.ts';
import { spreadReport } from './spreadReport.ts';

/** What a command leaves behind: text for the two streams, and the exit code. */
export interface Answer {
  readonly out: string;
  readonly problems: readonly string[];
  readonly exitCode: 0 | 2 | 3;
}

/**
 * Does what the arguments ask for; writes the CSV file if one is named.
 * @param args  what follows the command's name
 * @param run   runs a variant; another one in tests
 */
export async function answer(
  args: readonly string[],
  run: (variant: Variant) => Result = simulateToEnd,
): Promise<Answer> {
  const command = readArgs(args);
  if ('problems' in command) return toPutRight(command.problems);
  switch (command.kind) {
    case 'help':
      return done(help);
    case 'settings':
      return done(settingsTable());
    case 'examples':
      return done(`${columns(presets.map(({ key, description }) => [key, description]))}\n`);
    case 'example':
      return example(command.name);
    case 'ohms': {
      const found = ohmsReport(command.typed);
      return 'out' in found ? done(found.out) : toPutRight(found.problems);
    }
    case 'batch': {
      const { problems, early } = await batch(command);
      if (problems.length > 0) return toPutRight(problems);
      return { out: '', problems: [], exitCode: early ? 3 : 0 };
    }
    case 'batchMeasures':
      return done(measuresTable());
    case 'batchHelp':
      return done(batchHelp);
    case 'run':
      return runFile(command, foundFor(command, run));
  }
}

function example(name: string): Answer {
  const preset = presetNamed(name);
  if (preset) return done(toText(presetVariant(preset)));
  const keys = presets.map(({ key }) => key);
  const near = nearest(name, keys);
  const hint = near ? `the nearest is ${near}` : `there are ${keys.join(', ')}`;
  return toPutRight([`There is no example “${name}”; ${hint}.`]);
}

/** What answers the question that is asked. */
function foundFor(
  { day, why, spread }: Extract<Command, { kind: 'run' }>,
  run: (variant: Variant) => Result,
): (variant: Variant) => Found {
  if (day) return foundOfDay;
  if (why) return whyBy(run);
  return spread ? foundOfSpread : foundBy(run);
}

/** What a variant came to, in the forms in which it may be asked for. */
interface Found {
  readonly outcome: Outcome;
  readonly trace: Trace;
  readonly json: () => Record<string, unknown>;
  readonly text: () => string;
}

const foundBy =
  (run: (variant: Variant) => Result) =>
  (variant: Variant): Found => {
    const result = run(variant);
    const { outcome, trace } = result;
    return { outcome, trace, json: () => resultFile(result), text: () => report(result) };
  };

/** Why, beside the run that it is about. */
const whyBy =
  (run: (variant: Variant) => Result) =>
  (variant: Variant): Found => {
    const result = run(variant);
    const why = { minutes: toEnd(minutesByCause(variant)), changes: toEnd(changesOf(variant)) };
    const { outcome, trace } = result;
    return { outcome, trace, json: () => whyFile(result, why), text: () => whyReport(result, why) };
  };

function foundOfDay(variant: Variant): Found {
  const day = toEnd(dayRun(variant));
  const { outcome, trace } = day;
  return {
    outcome,
    trace,
    json: () => dayFile(day),
    text: () => dayReport(day, toEnd(delivered(variant))),
  };
}

function foundOfSpread(variant: Variant): Found {
  const result = simulateToEnd(variant);
  const { outcome, trace } = result;
  const spread = toEnd(spreadOf(variant, SPREAD_RUNS));
  return {
    outcome,
    trace,
    json: () => spreadFile(spread, result),
    text: () => spreadReport(spread, result),
  };
}

async function runFile(
  { file, letter, csv, json }: Extract<Command, { kind: 'run' }>,
  run: (variant: Variant) => Found,
): Promise<Answer> {
  const input = await readInput(file);
  if ('problem' in input) return toPutRight([input.problem]);
  const reading = benchFromText(input.text);
  if ('problems' in reading) {
    return toPutRight(
      reading.problems.map(({ field, message }) => `${field || nameOf(file)}: ${message}`),
    );
  }
  const chosen = chosenOf(reading.variants, letter);
  if ('problem' in chosen) return toPutRight([`${nameOf(file)}: ${chosen.problem}`]);
  const found = run(chosen.variant);
  if (csv !== null) {
    try {
      await writeFile(csv, traceCsv(found.trace));
    } catch (fault) {
      return toPutRight([`${csv}: ${whyNotRead(fault)}`]);
    }
  }
  const out = json ? `${JSON.stringify(found.json(), null, 1)}\n` : found.text();
  return { out, problems: [], exitCode: found.outcome.kind === 'finished' ? 0 : 3 };
}

/** The variant with a letter; the only one where there is one and none is named. Nothing is guessed among several. */
function chosenOf(
  variants: readonly Variant[],
  letter: string | null,
): { readonly variant: Variant } | { readonly problem: string } {
  const there = letters.slice(0, variants.length);
  const place = letter === null ? 0 : there.findIndex((each) => each === letter);
  if (letter === null ? variants.length === 1 : place >= 0) return { variant: variants[place] };
  const held =
    there.length === 1 ? 'it holds one variant, A' : `it holds the variants ${there.join(', ')}`;
  return {
    problem: letter === null ? `${held}; say which with --variant.` : `${held}, and no ${letter}.`,
  };
}

function done(out: string): Answer {
  return { out, problems: [], exitCode: 0 };
}

function toPutRight(problems: readonly string[]): Answer {
  return { out: '', problems, exitCode: 2 };
}
