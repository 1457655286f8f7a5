import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import type { TestProject } from 'vitest/node';
import serveBuiltApp from '../support/builtApp.ts';

// Prints what the first load of the built app weighs: its page's script and the worker, and what is fetched after them.
const stop = await serveBuiltApp({ provide: () => {} } as unknown as TestProject);
await stop();
const assets = fileURLToPath(
  new URL('../../node_modules/.cache/builtApp/assets/', import.meta.url),
);
const scripts = readdirSync(assets).filter((name) => name.endsWith('.js'));
const weigh = (names: readonly string[]) =>
  names.reduce((sum, name) => sum + gzipSync(readFileSync(`${assets}${name}`)).length, 0) / 1000;
// the page's script, what it and its imports import before it can start, and the worker
const first: string[] = [];
function count(name: string) {
  if (first.includes(name)) return;
  first.push(name);
  const text = readFileSync(`${assets}${name}`, 'utf8');
  scripts
    .filter((each) => new RegExp(`(from|import)\\s*["']\\./${each}["']`).test(text))
    .forEach(count);
}
scripts.filter((name) => /^(index|run\.worker)-/.test(name)).forEach(count);
const after = scripts.filter((name) => !first.includes(name));
console.log(
  `first load: ${first.length} scripts, ${weigh(first).toFixed(1)} kB gzip, bar 120 kB; ` +
    `after it: ${after.length} scripts, ${weigh(after).toFixed(1)} kB`,
);
