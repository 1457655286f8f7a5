import { describe, expect, test } from 'vitest';
import { isAnswered, isFound, quotesIn } from '../support/claimsMade.ts';
import { type ProjectFile, projectFiles } from '../support/projectFiles.ts';
import { directionalSentences, isProse, sentencesOf } from '../support/proseClaims.ts';
import { everyRecord } from '../support/recordOf.ts';
import * as day from '../../src/explain/relations/day.ts';
import { followNumbers, noDirection } from './noDirection.ts';

const files = projectFiles();
const prose = files.filter(({ path }) => isProse(path));
const claimed = quotesIn(files.filter(({ path }) => /^tests\/claims\/.*\.test\.ts$/.test(path)));
const excused = [...noDirection, ...followNumbers].flatMap(({ says }) => says);
const dayRelations = Object.values(day);
const quotes = [...claimed, ...excused];

/** Prose that came after the claims and still waits for them. A file leaves this list when its sentences are claimed. */
const waiting = [
  'shared/fields/unknowns.ts',
  'shared/sentences/changes.ts',
  'shared/sentences/minutes.ts',
  'shared/sentences/spread.ts',
  'src/explain/Hygiene.svelte',
  'src/explain/Limits.svelte',
  'src/explain/Pace.svelte',
  'src/explain/SpreadText.svelte',
  'src/explain/WhatToChange.svelte',
  'src/explain/boilerWorkings.ts',
  'src/explain/dayFurther.ts',
  'src/explain/furtherOf.ts',
  'src/explain/heatUpWorking.ts',
  'src/explain/hygieneWorkings.ts',
  'src/explain/physics/',
  'src/explain/pipeWorkings.ts',
  'src/explain/relations/day.ts',
  'src/explain/storeKeys.ts',
  'src/explain/storeWorkings.ts',
  'README.md',
];
const waits = (path: string) => waiting.some((start) => path.startsWith(start));

/** Sentences of a file that say which way something goes, and for which nobody answers. */
function unanswered(file: ProjectFile): string[] {
  return directionalSentences(file)
    .filter((sentence) => !isAnswered(sentence, quotes))
    .map((sentence) => `${file.path} says: ${sentence}`);
}

/** The same of one file more, that is not there. */
const planted = (path: string, text: string) => unanswered({ path, text });

describe('every sentence that says which way something goes', () => {
  test('is claimed and shown against the model, or says why it claims nothing', () => {
    expect(prose.filter(({ path }) => !waits(path)).flatMap(unanswered)).toEqual([]);
  });

  test('waits to be claimed in 20 places, of which each still has one', () => {
    expect(waiting).toHaveLength(20);
    for (const start of waiting) {
      const found = prose.filter(({ path }) => path.startsWith(start)).flatMap(unanswered);
      expect(found.length, start).toBeGreaterThan(0);
    }
  });

  test('of a relation, what would change its result is claimed with or without such a word', () => {
    const days = new Set(dayRelations.map(({ changes }) => changes)); // of a file that waits
    const said = [...new Set(everyRecord.map(({ changes }) => changes))].filter(
      (changes) => !days.has(changes),
    );
    const isQuoted = (changes: string) => quotes.some((quote) => isFound(quote, [changes]));
    expect(said.filter((changes) => !isQuoted(changes))).toEqual([]);
  });

  test('is still there: 0 claims and excuses quote a sentence that is gone', () => {
    const sentences = prose.flatMap(sentencesOf);
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
