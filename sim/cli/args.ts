import { parseArgs } from 'node:util';
import { nearest } from '../../shared/nearest.ts';

/** What the command line asks for. */
export type Command =
  | {
      readonly kind: 'run';
      /** Path of a variant, or `-` for standard input. */
      readonly file: string;
      readonly csv: string | null;
      readonly json: boolean;
    }
  | { readonly kind: 'example'; readonly name: string }
  | { readonly kind: 'examples' | 'settings' | 'help' };

/** Reads the arguments, or says what is wrong with them, one sentence each. */
export function readArgs(args: readonly string[]): Command | { readonly problems: string[] } {
  const { values, positionals, tokens } = parseArgs({
    args: [...args],
    options,
    strict: false, // so that the sentences are ours
    allowPositionals: true,
    tokens: true,
  });
  const problems = tokens.flatMap((token) =>
    token.kind === 'option' ? optionProblems(token.name, token.rawName, token.value) : [],
  );
  if (problems.length > 0) return { problems };
  if (values.help) return { kind: 'help' };
  if (values.examples) return { kind: 'examples' };
  if (values.settings) return { kind: 'settings' };
  if (typeof values.example === 'string') return { kind: 'example', name: values.example };
  if (positionals.length !== 1) {
    const got = positionals.length === 0 ? 'none was given' : `there are ${positionals.length}`;
    return { problems: [`Name one file, or - for standard input; ${got}. --help says more.`] };
  }
  return {
    kind: 'run',
    file: positionals[0],
    csv: typeof values.csv === 'string' ? values.csv : null,
    json: values.json === true,
  };
}

function optionProblems(name: string, rawName: string, value: string | undefined): string[] {
  const option = Object.hasOwn(options, name) ? options[name as keyof typeof options] : undefined;
  if (!option) {
    const near = nearest(name, Object.keys(options));
    const hint = near ? `the nearest is --${near}` : `there are --${known.join(', --')}`;
    return [`${rawName} is not an option; ${hint}.`];
  }
  if (option.type === 'string' && (value === undefined || value === '')) {
    return [
      `${rawName} needs ${name === 'csv' ? 'the name of a file to write' : 'a name'} after it.`,
    ];
  }
  if (option.type === 'boolean' && value !== undefined) {
    return [`${rawName} takes no value; it has “${value}”.`];
  }
  return [];
}

const options = {
  csv: { type: 'string' },
  json: { type: 'boolean' },
  example: { type: 'string' },
  examples: { type: 'boolean' },
  settings: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
} as const;

const known = Object.keys(options);
