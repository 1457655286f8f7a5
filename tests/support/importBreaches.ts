import { posix } from 'node:path';
import ts from 'typescript';
import type { ProjectFile } from './projectFiles.ts';

/**
 * A room, as the start of a path, and the starts of what its files may import: paths from the top
 * for the project's own files, names for packages. The room with the longest start is the file's.
 */
export type Rooms = Record<string, readonly string[]>;

/** One sentence for each import that its room does not allow. */
export function importBreaches(files: readonly ProjectFile[], rooms: Rooms): string[] {
  return files.filter(isCode).flatMap(({ path, text }) => {
    const room = Object.keys(rooms)
      .filter((start) => path.startsWith(start))
      .sort((one, other) => other.length - one.length)[0];
    if (room === undefined) return [];
    return importsOf(path, text)
      .filter((target) => !(rooms[room] ?? []).some((start) => target.startsWith(start)))
      .map((target) => `${path} imports ${target}, which ${room} may not`);
  });
}

/**
 * What a file imports, in any of the ways there are: import, export from, import(), require and
 * new URL(..., import.meta.url). Relative ones as paths from the top, packages by name.
 */
export function importsOf(path: string, text: string): string[] {
  const code = path.endsWith('.svelte') ? scriptsOf(text) : text;
  const named = ts.preProcessFile(code, true, true).importedFiles.map((file) => file.fileName);
  const byAddress = [...text.matchAll(/new URL\(\s*['"`](\.[^'"`]*)['"`]\s*,\s*import\.meta/g)];
  const inMarkup = path.endsWith('.svelte') ? [...text.matchAll(/\bimport\(\s*['"]([^'"]+)/g)] : [];
  const specifiers = [...named, ...[...byAddress, ...inMarkup].map((found) => found[1] ?? '')];
  return [...new Set(specifiers.map((specifier) => placeOf(path, specifier)))];
}

function placeOf(importer: string, specifier: string): string {
  const plain = specifier.replace(/[?#].*$/, '');
  return plain.startsWith('.') ? posix.join(posix.dirname(importer), plain) : plain;
}

function scriptsOf(text: string): string {
  return [...text.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)]
    .map((found) => found[1])
    .join('\n');
}

function isCode({ path }: ProjectFile): boolean {
  return /\.(ts|js|svelte)$/.test(path);
}
