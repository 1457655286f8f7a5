import { readdirSync, readFileSync } from 'node:fs';
import { extname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

/** A text file of the project: its path from the top with forward slashes, and all it holds. */
export interface ProjectFile {
  path: string;
  text: string;
}

/** Every text file of the project, without what is installed or built. */
export function projectFiles(): ProjectFile[] {
  return filesBelow(root).map((path) => ({
    path: relative(root, path).split(sep).join('/'),
    text: readFileSync(path, 'utf8'),
  }));
}

/** The names at the top level of the project. */
export function topLevelNames(): string[] {
  return readdirSync(root);
}

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return notOurs.has(entry.name) ? [] : filesBelow(path);
    return entry.isFile() && !notText.has(extname(entry.name)) ? [path] : [];
  });
}

const root = fileURLToPath(new URL('../..', import.meta.url));
const notOurs = new Set(['.git', 'node_modules', 'dist', '.svelte-kit', '.svelte-check']);
const notText = new Set(['.png', '.jpg', '.ico', '.woff2', '.log']);
