import { writeFile } from 'node:fs/promises';
import { fromText, toText } from '../../shared/codec.ts';
import { nearest } from '../../shared/nearest.ts';
import { presetNamed, presets, presetVariant } from '../../shared/presets.ts';
import type { Result } from '../../shared/result.ts';
import { resultFile } from '../../shared/resultFile.ts';
import { settingsTable } from '../../shared/settingsTable.ts';
import { traceCsv } from '../../shared/traceCsv.ts';
import type { Variant } from '../../shared/variant.ts';
import { simulateToEnd } from '../run/simulate.ts';
import { type Command, readArgs } from './args.ts';
import { help } from './help.ts';
import { columns } from './layout.ts';
import { ohmsReport } from './ohms.ts';
import { nameOf, readInput, whyNotRead } from './read.ts';
import { report } from './report.ts';

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
    case 'run':
      return runFile(command, run);
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

async function runFile(
  { file, csv, json }: Extract<Command, { kind: 'run' }>,
  run: (variant: Variant) => Result,
): Promise<Answer> {
  const input = await readInput(file);
  if ('problem' in input) return toPutRight([input.problem]);
  const reading = fromText(input.text);
  if ('problems' in reading) {
    return toPutRight(
      reading.problems.map(({ field, message }) => `${field || nameOf(file)}: ${message}`),
    );
  }
  const result = run(reading.variant);
  if (csv !== null) {
    try {
      await writeFile(csv, traceCsv(result.trace));
    } catch (fault) {
      return toPutRight([`${csv}: ${whyNotRead(fault)}`]);
    }
  }
  const out = json ? `${JSON.stringify(resultFile(result), null, 1)}\n` : report(result);
  return { out, problems: [], exitCode: result.outcome.kind === 'finished' ? 0 : 3 };
}

function done(out: string): Answer {
  return { out, problems: [], exitCode: 0 };
}

function toPutRight(problems: readonly string[]): Answer {
  return { out: '', problems, exitCode: 2 };
}
