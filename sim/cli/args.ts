import { type OhmsKey, ohmsAsked } from '../../shared/ohmsAsked.ts';
import { type BatchCommand, readBatchArgs } from './batch/args.ts';
import type { OhmsTyped } from './ohms.ts';
import { readOptions } from './readOptions.ts';

/** What the command line asks for. */
export type Command =
  | BatchCommand
  | {
      readonly kind: 'run';
      /** Path of a variant, or `-` for standard input. */
      readonly file: string;
      /** Letter of the variant in a file of several, or null. */
      readonly letter: string | null;
      readonly csv: string | null;
      readonly json: boolean;
      /** The day of hot water in use, in place of the reheat. */
      readonly day: boolean;
      /** Why it takes so long, in place of the reheat. */
      readonly why: boolean;
      /** What the unknowns leave open, in place of the reheat alone. */
      readonly spread: boolean;
    }
  | { readonly kind: 'example'; readonly name: string }
  | { readonly kind: 'ohms'; readonly typed: OhmsTyped }
  | { readonly kind: 'examples' | 'settings' | 'help' };

/** Reads the arguments, or says what is wrong with them, one sentence each. */
export function readArgs(args: readonly string[]): Command | { readonly problems: string[] } {
  if (args[0] === 'batch') return readBatchArgs(args.slice(1));
  const typed = readOptions(args, options, '', neededAfter);
  if ('problems' in typed) return typed;
  const { values, positionals } = typed;
  if (values.help) return { kind: 'help' };
  if (values.examples) return { kind: 'examples' };
  if (values.settings) return { kind: 'settings' };
  if (typeof values.example === 'string') return { kind: 'example', name: values.example };
  if (ohmsKeys.some((key) => values[key] !== undefined)) return ohmsCommand(values, positionals);
  if (positionals.length !== 1) {
    const got = positionals.length === 0 ? 'none was given' : `there are ${positionals.length}`;
    return { problems: [`Name one file, or - for standard input; ${got}. --help says more.`] };
  }
  const questions = (['day', 'why', 'spread'] as const).filter((name) => values[name] === true);
  if (questions.length > 1) {
    return {
      problems: [
        `--${questions[0]} and --${questions[1]} answer two questions; leave out one of them.`,
      ],
    };
  }
  return {
    kind: 'run',
    file: positionals[0],
    letter: typeof values.variant === 'string' ? values.variant.toUpperCase() : null,
    csv: typeof values.csv === 'string' ? values.csv : null,
    json: values.json === true,
    day: values.day === true,
    why: values.why === true,
    spread: values.spread === true,
  };
}

/** Ohms and degrees stand alone: no file is read. */
function ohmsCommand(
  values: Readonly<Record<string, unknown>>,
  positionals: readonly string[],
): Command | { readonly problems: string[] } {
  const given = ohmsKeys.filter((key) => values[key] !== undefined);
  if (!given.some((key) => key === 'ohms' || key === 'degrees')) {
    return { problems: [`--${given[0]} goes with --ohms or --degrees; give one of them too.`] };
  }
  const written = ['csv', 'json', 'day', 'why', 'spread'].filter(
    (name) => values[name] !== undefined,
  );
  const others = [...positionals, ...written.map((name) => `--${name}`)];
  if (others.length > 0) {
    return { problems: [`--${given[0]} is answered without a file; leave out ${others[0]}.`] };
  }
  const text = (key: OhmsKey) => {
    const value = values[key];
    return typeof value === 'string' ? value : null;
  };
  return {
    kind: 'ohms',
    typed: {
      ohms: text('ohms'),
      degrees: text('degrees'),
      r25: text('r25'),
      beta: text('beta'),
      tolerance: text('tolerance'),
    },
  };
}

function neededAfter(name: string): string {
  if (name === 'csv') return 'the name of a file to write';
  if (name === 'variant') return 'a letter, A to D';
  return Object.hasOwn(ohmsAsked, name) ? 'a number' : 'a name';
}

const options = {
  csv: { type: 'string' },
  json: { type: 'boolean' },
  day: { type: 'boolean' },
  why: { type: 'boolean' },
  spread: { type: 'boolean' },
  variant: { type: 'string' },
  example: { type: 'string' },
  examples: { type: 'boolean' },
  settings: { type: 'boolean' },
  ohms: { type: 'string' },
  degrees: { type: 'string' },
  r25: { type: 'string' },
  beta: { type: 'string' },
  tolerance: { type: 'string' },
  help: { type: 'boolean', short: 'h' },
} as const;

const ohmsKeys: readonly OhmsKey[] = ['ohms', 'degrees', 'r25', 'beta', 'tolerance'];
