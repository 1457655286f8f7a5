// `npm run -s reheat -- FILE`: bundles the command line and runs it in this process, so that its
// standard input, output and exit code are the command's own.
'use strict';

const { spawnSync } = require('node:child_process');
const { join } = require('node:path');
const { pathToFileURL } = require('node:url');

/** The path of the bundle. A batch has it made by another process, for the bundler would hold its memory to the end. */
async function bundled(isBatch) {
  if (!isBatch) return require('./bundle.cjs').bundle();
  const child = [join(__dirname, 'bundle.cjs')];
  const made = spawnSync(process.execPath, child, { stdio: ['ignore', 'pipe', 'inherit'] });
  if (made.status !== 0) throw new Error('the command line could not be bundled');
  return made.stdout.toString('utf8');
}

async function reheat() {
  const file = await bundled(process.argv[3] === 'batch');
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
