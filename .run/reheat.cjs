// `npm run -s reheat -- FILE`: bundles the command line and runs it in this process, so that its
// standard input, output and exit code are the command's own.
'use strict';

const { createHash } = require('node:crypto');
const { existsSync, mkdirSync, renameSync, writeFileSync } = require('node:fs');
const { join } = require('node:path');
const { pathToFileURL } = require('node:url');

const root = join(__dirname, '..');
const folder = join(root, 'node_modules', '.cache', 'reheat');

/** Bundles sim/cli/main.ts into one file named by its content; gives the path. */
async function bundle() {
  const { build } = await import('rolldown');
  const { output } = await build({
    cwd: root,
    input: join(root, 'sim', 'cli', 'main.ts'),
    platform: 'node',
    logLevel: 'silent',
    write: false,
    output: { format: 'esm', codeSplitting: false },
  });
  const { code } = output[0];
  const file = join(folder, `${createHash('sha256').update(code).digest('hex').slice(0, 16)}.mjs`);
  if (!existsSync(file)) {
    // written aside and renamed, so that two commands at once never read half a file
    mkdirSync(folder, { recursive: true });
    const aside = `${file}.${process.pid}`;
    writeFileSync(aside, code);
    renameSync(aside, file);
  }
  return file;
}

async function reheat() {
  const file = await bundle();
  process.argv = [process.execPath, file, ...process.argv.slice(3)];
  // npm moves to the project's folder; FILE is meant from where the user stands
  if (process.env.npm_lifecycle_event === 'reheat' && process.env.INIT_CWD) {
    process.chdir(process.env.INIT_CWD);
  }
  await import(pathToFileURL(file).href);
}

reheat().catch((fault) => {
  console.error(fault);
  process.exit(1);
});
