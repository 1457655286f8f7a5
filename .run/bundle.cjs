// Bundles the command line for `.run/reheat.cjs`; run by itself it prints the path of what it made.
'use strict';

const { createHash } = require('node:crypto');
const { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } = require('node:fs');
const { join } = require('node:path');

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

module.exports = { bundle };

if (require.main === module) {
  bundle().then(
    (file) => process.stdout.write(file),
    (fault) => {
      console.error(fault);
      process.exit(1);
    },
  );
}
