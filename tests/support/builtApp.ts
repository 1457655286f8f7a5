import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of the built app, ending in a slash. */
    url: string;
  }
}

/**
 * Builds the app beside the users' own build and serves it to the end-to-end tests.
 * @returns a function that stops the server
 */
export default async function serveBuiltApp(project: TestProject): Promise<() => Promise<void>> {
  build();
  const server = await preview({
    configFile: `${root}/vite.config.ts`,
    build: { outDir },
    preview: { port: 0, host: '127.0.0.1' },
  });
  const url = server.resolvedUrls?.local[0];
  if (url === undefined) throw new Error('the preview server gave no local address');
  project.provide('url', url);
  return () => server.close();
}

/** Builds in a process of its own: inside the test runner it would be a development build. */
function build(): void {
  const env = { ...process.env };
  for (const key of ['VITEST', 'VITEST_MODE', 'NODE_ENV', 'MODE', 'DEV', 'PROD']) delete env[key];
  const vite = `${root}/node_modules/vite/bin/vite.js`;
  const run = spawnSync(
    process.execPath,
    [vite, 'build', '--logLevel', 'warn', '--outDir', outDir],
    { cwd: root, env, encoding: 'utf8' },
  );
  if (run.status !== 0) throw new Error(`the app does not build:\n${run.stdout}${run.stderr}`);
}

const root = fileURLToPath(new URL('../..', import.meta.url)).replace(/\/$/, '');
const outDir = `${root}/node_modules/.cache/builtApp`;
