// `npm run check`: types, lint and formatting side by side; prints only what fails.
'use strict';

const { spawn } = require('node:child_process');
const { join } = require('node:path');

const root = join(__dirname, '..');
const bin = join(root, 'node_modules');
const cache = 'node_modules/.cache';

const tsc = (project) => [
  'typescript/bin/tsc',
  '--project',
  project,
  '--incremental',
  '--tsBuildInfoFile',
  `${cache}/tsc/${project.replaceAll('/', '-')}.tsbuildinfo`,
];

// the slowest first, as two run at a time
const checks = {
  'types of the whole project and warnings of Svelte': [
    'svelte-check/bin/svelte-check',
    '--tsconfig',
    './tsconfig.json',
    '--fail-on-warnings',
    '--output',
    'human',
  ],
  'types of sim, without DOM or Node': tsc('sim/tsconfig.json'),
  'types of sim/cli': tsc('sim/cli/tsconfig.json'),
  'formatting (npm run format puts it right)': [
    'prettier/bin/prettier.cjs',
    '--check',
    '--log-level',
    'warn',
    '--cache',
    '.',
  ],
  lint: [
    '@biomejs/biome/bin/biome',
    'lint',
    '--config-path=tests/biome.json',
    '--error-on-warnings',
    'src',
    'sim',
    'shared',
    'tests',
    '.run',
    'vite.config.ts',
  ],
};

/** Runs one check; gives true when it passes. */
function passes(name) {
  const [script, ...args] = checks[name];
  return new Promise((settle) => {
    const child = spawn(process.execPath, [join(bin, script), ...args], {
      cwd: root,
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let said = '';
    child.stdout.on('data', (text) => {
      said += text;
    });
    child.stderr.on('data', (text) => {
      said += text;
    });
    child.on('close', (code) => {
      console.log(code === 0 ? `ok      ${name}` : `FAILED  ${name}\n${said}`);
      settle(code === 0);
    });
  });
}

async function check() {
  const waiting = Object.keys(checks);
  let failed = 0;
  const work = async () => {
    for (let name = waiting.shift(); name !== undefined; name = waiting.shift()) {
      if (!(await passes(name))) failed += 1;
    }
  };
  await Promise.all([work(), work()]);
  if (failed > 0) process.exitCode = 1;
}

check();
