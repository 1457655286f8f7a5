import { parseArgs } from 'node:util';
import { nearest } from '../../shared/nearest.ts';

/** The options of a command, by their names. */
export type Options = Readonly<
  Record<string, { readonly type: 'string' | 'boolean'; readonly short?: string }>
>;

/** What was typed after a command. */
export interface Typed {
  readonly values: Readonly<Record<string, unknown>>;
  readonly positionals: readonly string[];
}

/**
 * Reads options and what stands beside them, or says what is wrong with them, one sentence each.
 * @param called  what is no option is none of it: ` of batch`; empty for the command itself
 * @param needed  what an option must have after it: `the name of a file to write`
 */
export function readOptions(
  args: readonly string[],
  options: Options,
  called: string,
  needed: (name: string) => string,
): Typed | { readonly problems: string[] } {
  const { values, positionals, tokens } = parseArgs({
    args: [...args],
    options,
    strict: false, // so that the sentences are ours
    allowPositionals: true,
    tokens: true,
  });
  const known = Object.keys(options);
  const problemOf = (name: string, rawName: string, value: string | undefined): string[] => {
    const option = Object.hasOwn(options, name) ? options[name] : undefined;
    if (!option) {
      const near = nearest(name, known);
      const hint = near ? `the nearest is --${near}` : `there are --${known.join(', --')}`;
      return [`${rawName} is not an option${called}; ${hint}.`];
    }
    if (option.type === 'string' && (value === undefined || value === '')) {
      return [`${rawName} needs ${needed(name)} after it.`];
    }
    if (option.type === 'boolean' && value !== undefined) {
      return [`${rawName} takes no value; it has “${value}”.`];
    }
    return [];
  };
  const problems = tokens.flatMap((token) =>
    token.kind === 'option' ? problemOf(token.name, token.rawName, token.value) : [],
  );
  return problems.length > 0 ? { problems } : { values, positionals };
}
