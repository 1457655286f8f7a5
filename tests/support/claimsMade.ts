import ts from 'typescript';
import { isDirectional } from './proseClaims.ts';
import type { ProjectFile } from './projectFiles.ts';

/** The quotes of the claims in some test files: what stands first in each call of `claim`. */
export function quotesIn(files: readonly ProjectFile[]): string[] {
  return files.flatMap(({ path, text }) => {
    const found: string[] = [];
    const visit = (node: ts.Node): void => {
      if (ts.isCallExpression(node) && node.expression.getText() === 'claim') {
        const [first] = node.arguments;
        const quotes = ts.isArrayLiteralExpression(first) ? [...first.elements] : [first];
        for (const quote of quotes) {
          if (!ts.isStringLiteralLike(quote)) {
            throw new Error(
              `${path} has a claim that quotes ${quote.getText()}; expected a string`,
            );
          }
          found.push(quote.text);
        }
      }
      ts.forEachChild(node, visit);
    };
    visit(ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true));
    return found;
  });
}

/** True where a sentence has no directional word outside the quotes. */
export function isAnswered(sentence: string, quotes: readonly string[]): boolean {
  if (quotes.includes(sentence)) return true;
  // the longest first, so that none takes words out of another
  const parts = quotes.filter((quote) => sentence.includes(quote) && isLong(quote));
  const left = parts
    .sort((a, b) => b.length - a.length)
    .reduce((rest, quote) => rest.replace(quote, ' '), sentence);
  return parts.length > 0 && !isDirectional(left);
}

/** True where a quote is one of the sentences, or a part of one that is long enough to mean it alone. */
export function isFound(quote: string, sentences: readonly string[]): boolean {
  return isLong(quote)
    ? sentences.some((sentence) => sentence.includes(quote))
    : sentences.includes(quote);
}

function isLong(quote: string): boolean {
  return quote.split(' ').length >= 3;
}
