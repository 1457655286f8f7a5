import { createHash } from 'node:crypto';
import { brandDigests } from './brandDigests.ts';
import type { ProjectFile } from './projectFiles.ts';
import { markupText, proseOf } from './prose.ts';

/** One sentence for each match of a pattern in the files. */
export function patternBreaches(files: readonly ProjectFile[], pattern: RegExp): string[] {
  return files.flatMap(({ path, text }) =>
    text.split('\n').flatMap((line, index) => {
      const found = pattern.exec(line);
      return found ? [`${path}:${index + 1} has ${JSON.stringify(found[0])}`] : [];
    }),
  );
}

/** One sentence for each word of the files that was born as a brand in this trade. */
export function brandBreaches(files: readonly ProjectFile[], digests = brandDigests): string[] {
  return files.flatMap(({ path, text }) => {
    // camelCase falls apart into its words
    const words = new Set(
      text.replace(/([a-z0-9])([A-Z])/g, '$1 $2').match(/[A-Za-z][A-Za-z0-9]+/g),
    );
    return [...words]
      .filter((word) => digests.has(digestOf(word)))
      .map((word) => `${path} has the brand-born word ${word}`);
  });
}

/** The first 16 hexadecimal digits of the SHA-256 of a word in small letters. */
export function digestOf(word: string): string {
  const key = word.toLowerCase();
  const known = digestsSoFar.get(key);
  if (known !== undefined) return known;
  const digest = createHash('sha256').update(key).digest('hex').slice(0, 16);
  digestsSoFar.set(key, digest);
  return digest;
}

/** One sentence for each string a person may read that has a word we do not say to people. */
export function proseBreaches(files: readonly ProjectFile[]): string[] {
  return files.flatMap((file) => {
    const inProse = proseOf(file).filter((string) => neverSaid.test(string));
    const inProblems = saysProblems(file.path)
      ? proseOf(file).filter((string) => /\berrors?\b/i.test(string))
      : [];
    const inMarkup = file.path.endsWith('.svelte')
      ? markupText(file).filter((string) => neverSaid.test(string) || /\berrors?\b/i.test(string))
      : [];
    return [...new Set([...inProse, ...inProblems, ...inMarkup])].map(
      (string) => `${file.path} says ${JSON.stringify(string)}`,
    );
  });
}

/** True for the files whose strings tell a person what is wrong. */
function saysProblems(path: string): boolean {
  return /^shared\/(problems|sentences|cautions|explanations)|^sim\/cli\//.test(path);
}

const neverSaid = /\b(invalid|illegal|sorry|oops|please)\b/i;
const digestsSoFar = new Map<string, string>();
