// `npm run -s reheat -- FILE`: bundles the command line and runs it in this process, so that its
// standard input, output and exit code are the command's own.
'use strict';

const { createHash } = require('node:crypto');
const { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } = require('node:fs');
const { join } = require('node:path');
const { pathToFileURL } = require('node:url');

const root = join(__dirname, '..');
const folder = join(root, 'node_modules', '.cache', 'reheat');

/** Bundles the command line and the worker of its batches into a folder named by their content; gives the first's path. */
async function bundle() {
  const { build } = await import('rolldown');
  const { output } = await build({
    cwd: root,
    input: {
      main: join(root, 'sim', 'cli', 'main.ts'),
      'batch.worker': join(root, 'sim', 'cli', 'batch', 'batch.worker.ts'),
    },
    platform: 'node',
    external: ['tinypool'],
    logLevel: 'silent',
    write: false,
    output: {
      format: 'esm',
      entryFileNames: '[name].mjs',
      chunkFileNames: '[name]-[hash].mjs',
    },
  });
  const hash = createHash('sha256');
  for (const { fileName, code } of output) hash.update(`${fileName}\n${code}\n`);
  const target = join(folder, hash.digest('hex').slice(0, 16));
  if (!existsSync(target)) {
    // written aside and renamed, so that two commands at once never read half a file
    const aside = `${target}.${process.pid}`;
    mkdirSync(aside, { recursive: true });
    for (const { fileName, code } of output) writeFileSync(join(aside, fileName), code);
    try {
      renameSync(aside, target);
    } catch (fault) {
      if (!existsSync(target)) throw fault;
      rmSync(aside, { recursive: true }); // another command was sooner
    }
  }
  return join(target, 'main.mjs');
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
