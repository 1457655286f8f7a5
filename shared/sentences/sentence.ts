import { measureText } from '../format.ts';
import type { Measures } from '../result.ts';

/** A piece of a sentence: words, or a number that can open its working. */
export type Part = string | { readonly text: string; readonly measure: keyof Measures };

/** One sentence about a result. */
export interface Sentence {
  readonly parts: readonly Part[];
}

/** What a figure says: a heading that states the finding, and two sentences at most. */
export interface FigureWords {
  readonly heading: Sentence;
  readonly summary: readonly Sentence[];
}

/** A sentence as plain text. */
export function plain(sentence: Sentence): string {
  return sentence.parts.map((part) => (typeof part === 'string' ? part : part.text)).join('');
}

/** Makes a sentence of a template. */
export function say(strings: TemplateStringsArray, ...values: readonly Part[]): Sentence {
  return { parts: partsOf(strings, values) };
}

/** The words of a template and what stands between them; neighbouring words are joined into one part. */
export function partsOf<P>(
  strings: TemplateStringsArray,
  values: readonly (P | string)[],
): (P | string)[] {
  const parts: (P | string)[] = [];
  const add = (part: P | string) => {
    const last = parts.at(-1);
    if (part === '') return;
    if (typeof part === 'string' && typeof last === 'string') parts[parts.length - 1] = last + part;
    else parts.push(part);
  };
  strings.forEach((words, index) => {
    add(words);
    if (index < values.length) add(values[index]);
  });
  return parts;
}

/** A measure as part of a sentence. @param measures  of the run the sentence is about */
export function measured(measures: Measures, key: keyof Measures): Part {
  return { text: measureText(key, measures[key]), measure: key };
}

/** A clause at the start of a sentence. */
export function capital(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}
