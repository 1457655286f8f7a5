// `npm run bench` and `npm run convergence`: bundles each script named on the command line and runs them one after the
// other in this process. Scripts are TypeScript; the packages they use are left as they are installed.
'use strict';

const { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } = require('node:fs');
const { basename, join } = require('node:path');
const { pathToFileURL } = require('node:url');

const root = join(__dirname, '..');
const folder = join(root, 'node_modules', '.cache', 'study');

/** Keeps `import.meta.url` at the place of the source, which the bundle would move. */
const keepPlaces = {
  name: 'keep-places',
  transform(code, id) {
    if (!code.includes('import.meta.url') || id.includes('node_modules')) return null;
    return code.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(id).href));
  },
};

/** Bundles one script; gives the path of the file made. */
async function bundle(script) {
  const { build } = await import('rolldown');
  const { output } = await build({
    cwd: root,
    input: join(root, script),
    platform: 'node',
    logLevel: 'silent',
    write: false,
    external: (id) => /^[^./]/.test(id) && id !== 'odex' && !/^[A-Za-z]:/.test(id),
    plugins: [keepPlaces],
    output: { format: 'esm', codeSplitting: false },
  });
  mkdirSync(folder, { recursive: true });
  const file = join(folder, `${basename(script, '.ts')}.${process.pid}.mjs`);
  writeFileSync(file, output[0].code);
  return file;
}

/** The scripts to run: those named, a folder standing for the scripts in it that are named `*.bench.ts`. */
function scripts(named) {
  return named.flatMap((name) =>
    name.endsWith('.ts')
      ? [name]
      : readdirSync(join(root, name))
          .filter((entry) => entry.endsWith('.bench.ts'))
          .sort()
          .map((entry) => `${name}/${entry}`),
  );
}

async function study() {
  const named = scripts(process.argv.slice(3));
  if (named.length === 0) throw new Error('no script named; expected a .ts file or a folder');
  for (const script of named) {
    if (!existsSync(join(root, script))) throw new Error(`there is no ${script}`);
    const file = await bundle(script);
    try {
      await import(pathToFileURL(file).href);
    } finally {
      rmSync(file, { force: true });
    }
  }
}

study().catch((fault) => {
  console.error(fault);
  process.exit(1);
});
