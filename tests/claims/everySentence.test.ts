import { describe, expect, test } from 'vitest';
import { isAnswered, isFound, quotesIn } from '../support/claimsMade.ts';
import { type ProjectFile, projectFiles } from '../support/projectFiles.ts';
import { isDirectional, isProse, sentencesOf } from '../support/proseClaims.ts';
import { everyRecord } from '../support/recordOf.ts';
import { followNumbers } from './followNumbers.ts';
import { noDirection } from './noDirection.ts';

const files = projectFiles();
const prose = files.filter(({ path }) => isProse(path)).map(read);
const claimed = quotesIn(files.filter(({ path }) => /^tests\/claims\/.*\.test\.ts$/.test(path)));
const excused = [...noDirection, ...followNumbers].flatMap(({ says }) => says);
const quotes = [...claimed, ...excused];

/** What a person may read in a file. */
interface Said {
  readonly path: string;
  readonly sentences: readonly string[];
}

function read(file: ProjectFile): Said {
  return { path: file.path, sentences: sentencesOf(file) };
}

/** Sentences of a file that say which way something goes, and for which nobody answers. */
function unanswered({ path, sentences }: Said): string[] {
  return sentences
    .filter((sentence) => isDirectional(sentence) && !isAnswered(sentence, quotes))
    .map((sentence) => `${path} says: ${sentence}`);
}

/** The same of one file more, that is not there. */
const planted = (path: string, text: string) => unanswered(read({ path, text }));

describe('every sentence that says which way something goes', () => {
  test('is claimed and shown against the model, or says why it claims nothing', () => {
    expect(prose.flatMap(unanswered)).toEqual([]);
  });

  test('of a relation, what would change its result is claimed with or without such a word', () => {
    const said = [...new Set(everyRecord.map(({ changes }) => changes))];
    const isQuoted = (changes: string) => quotes.some((quote) => isFound(quote, [changes]));
    expect(said.filter((changes) => !isQuoted(changes))).toEqual([]);
  });

  test('is still there: 0 claims and excuses quote a sentence that is gone', () => {
    const sentences = prose.flatMap((file) => file.sentences);
    expect(quotes.filter((quote) => !isFound(quote, sentences))).toEqual([]);
  });

  test('names a test that there is, where its words follow the numbers', () => {
    for (const { in: path, test: name } of followNumbers) {
      expect(files.find((file) => file.path === path)?.text ?? '', path).toContain(name);
    }
  });
});

describe('a sentence that nobody answers for is seen', () => {
  test.each([
    ['in a record', 'sim/closures/hum.ts', "export const changes = 'A longer tube hums lower.';"],
    [
      'in a help text',
      'shared/fields/hum.ts',
      "const help = 'The wider the tube, the lower it hums.';",
    ],
    [
      'in the text of a component',
      'src/explain/Hum.svelte',
      '<p>A wide tube hums <em>lower</em>.</p>',
    ],
    [
      'with a value in it, drawn by a component',
      'src/explain/Hum.svelte',
      '<p>At <Value text={hum} of="hum" /> it hums lower.</p>',
    ],
    ['in a label', 'src/explain/Hum.svelte', '<input aria-label="Hums twice" />'],
    ['in a paragraph', 'README.md', 'A wide tube\nhums lower.'],
    ['in a list', 'README.md', '- one\n- A wide tube hums lower.'],
  ])('%s', (_where, path, text) => {
    expect(planted(path, text)).toHaveLength(1);
  });

  test('in both words of a choice', () => {
    const text = "const words = wide ? 'hums lower' : 'hums higher';";
    expect(planted('shared/sentences/hum.ts', text)).toHaveLength(2);
  });

  test('in a template and what is added to it, as one sentence with … for what is computed', () => {
    // biome-ignore lint/suspicious/noTemplateCurlyInString: the planted text is itself a template
    const text = "const words = `At ${hertz} it hums ` + 'lower than before.';";
    expect(planted('shared/sentences/hum.ts', text)).toEqual([
      'shared/sentences/hum.ts says: At … it hums lower than before.',
    ]);
  });

  test('beside one that is claimed: of 2 directions in a sentence both are to be quoted', () => {
    const sentence = 'A wide tube hums lower, and a long one hums longer.';
    expect(isAnswered(sentence, ['A wide tube hums lower'])).toBe(false);
    expect(isAnswered(sentence, ['A wide tube hums lower', 'a long one hums longer'])).toBe(true);
    expect(isAnswered(sentence, ['lower', 'longer'])).toBe(false); // too short to mean this one
  });

  test('save for 4 that are no direction: a limit, a comment, an import and a fault', () => {
    const text = `import { more } from './more.ts';
      // the wider, the lower
      const limit = 'at 60 °C or more';
      throw new Error('the tube hums lower than expected');`;
    expect(planted('shared/fields/hum.ts', text)).toEqual([]);
  });

  test('only where people read it: 0 in the plant, 1 in the causes', () => {
    expect(isProse('sim/plant/coil.ts')).toBe(false);
    expect(isProse('shared/causes.ts')).toBe(true);
  });
});
