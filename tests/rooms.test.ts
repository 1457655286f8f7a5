import { describe, expect, test } from 'vitest';
import { importBreaches, type Rooms } from './support/importBreaches.ts';
import { type ProjectFile, projectFiles, topLevelNames } from './support/projectFiles.ts';
import { brandBreaches, digestOf, patternBreaches, proseBreaches } from './support/wordBreaches.ts';

// Which room may import from which. Every room may import from itself and nothing that is not named.
const rooms: Rooms = {
  'shared/units.ts': [],
  'shared/sources.ts': ['shared/sources/'],
  'shared/': ['shared/'],

  'sim/closures/': ['sim/closures/', 'shared/'],
  'sim/plant/': ['sim/plant/', 'sim/closures/', 'shared/'],
  'sim/control/': ['sim/control/', 'sim/closures/', 'shared/'],
  'sim/demand/': ['sim/demand/', 'sim/closures/', 'shared/'],
  'sim/solve/odex.js': ['odex'],
  'sim/solve/odex.d.ts': [],
  'sim/solve/integrate.ts': ['sim/solve/', 'shared/'],
  'sim/solve/': ['sim/solve/', 'sim/plant/', 'sim/control/', 'sim/demand/', 'shared/'],
  'sim/measure/': ['sim/measure/', 'sim/closures/', 'sim/plant/', 'sim/solve/', 'shared/'],
  'sim/run/': [
    'sim/run/',
    'sim/closures/',
    'sim/plant/',
    'sim/control/',
    'sim/demand/',
    'sim/solve/',
    'sim/measure/',
    'shared/',
  ],
  'sim/cli/': ['sim/cli/', 'sim/run/', 'sim/closures/', 'shared/', 'node:'],
  'sim/cli/batch/crew.ts': ['sim/cli/', 'node:', 'tinypool'],
  'sim/cli/batch/csvRecords.ts': ['d3', 'node:'],

  'src/worker/run.worker.ts': ['src/worker/', 'sim/run/', 'shared/'],
  'src/worker/points.worker.ts': ['src/worker/', 'sim/run/', 'shared/'],
  'src/worker/studies.ts': ['src/worker/', 'sim/run/', 'shared/'],
  'src/worker/why.ts': ['src/worker/', 'sim/run/', 'shared/'],
  'src/worker/': ['src/worker/', 'shared/'],
  'src/state/': ['src/state/', 'src/worker/', 'shared/', 'svelte'],
  'src/state/catalogueText.ts': ['shared/', 'd3'],
  'src/drawing/': [
    'src/drawing/',
    'src/charts/',
    'src/fields/held.ts',
    'src/state/',
    'shared/',
    'd3',
    'svelte',
  ],
  'src/charts/': ['src/charts/', 'shared/', 'd3', 'svelte'],
  'src/figures/': [
    'src/figures/',
    'src/charts/',
    'src/fields/held.ts',
    'src/state/',
    'shared/',
    'd3',
    'svelte',
  ],
  'src/fields/': ['src/fields/', 'shared/', 'svelte'],
  'src/explain/': [
    'src/explain/',
    'src/fields/',
    'src/figures/',
    'sim/closures/',
    'shared/',
    'svelte',
  ],
  'src/export/': ['src/export/', 'shared/', 'svelte'],
  'src/': ['src/', 'shared/', 'svelte'],
};

const topLevel = new Set([
  'README.md',
  'DEVELOPERS.md',
  'LICENSE',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'vite.config.ts',
  'src',
  'sim',
  'shared',
  'tests',
  'node_modules',
  'dist',
]);

const files = projectFiles();
const written = files.filter(({ path }) => path !== 'package-lock.json');
const code = files.filter(({ path }) => /^(src|sim|shared)\/.*\.(ts|svelte)$/.test(path));

/** A file that is not there, to see a rule fail. */
const planted = (path: string, text: string): ProjectFile[] => [{ path, text }];

test('the tree that is read holds this file and the page', () => {
  expect(files.map(({ path }) => path)).toContain('tests/rooms.test.ts');
  expect(files.map(({ path }) => path)).toContain('src/index.html');
});

describe('imports', () => {
  test('0 files import from a room that theirs may not', () => {
    expect(importBreaches(files, rooms)).toEqual([]);
  });

  test.each([
    ['sim/plant/coil.ts', "import { Bench } from '../../src/state/Bench.svelte.ts';"],
    ['sim/solve/trace.ts', "import { Solver } from 'odex';"],
    ['sim/plant/boiler.ts', "import { integrate } from '../solve/integrate.ts';"],
    ['sim/closures/water.ts', "import { readFileSync } from 'node:fs';"],
    ['shared/result.ts', "export type { Trace } from '../sim/solve/trace.ts';"],
    ['shared/units.ts', "import type { Variant } from './variant.ts';"],
    ['src/state/Run.svelte.ts', "const run = await import('../../sim/run/reheat.ts');"],
    ['src/worker/client.ts', "import { reheat } from '../../sim/run/reheat.ts';"],
    ['src/state/Run.svelte.ts', "new Worker(new URL('../../sim/run/a.ts', import.meta.url));"],
    ['src/views/Bench.svelte', '<script>import { axe } from "axe-core";</script>\n<p>Hello</p>'],
    ['src/views/Bench.svelte', '{#await import("../../sim/run/reheat.ts")}<p>...</p>{/await}'],
  ])('a planted breach in %s is seen: %s', (path, text) => {
    expect(importBreaches(planted(path, text), rooms)).toHaveLength(1);
  });

  test('2 allowed imports and 1 in a comment are let through', () => {
    const text = `import { scaleLinear } from 'd3';
      import { litres } from '../../shared/format.ts';
      // import { reheat } from '../../sim/run/reheat.ts';`;
    expect(importBreaches(planted('src/charts/axis.ts', text), rooms)).toEqual([]);
  });

  test('only sim/solve/integrate.ts imports sim/solve/odex.js', () => {
    expect(adapterBreaches(files)).toEqual([]);
    const breach = planted('sim/solve/trace.ts', "import { Solver } from './odex.js';");
    expect(adapterBreaches(breach)).toHaveLength(1);
  });
});

describe('size and names', () => {
  test('0 files in src, sim, shared and tests are longer than 300 lines', () => {
    expect(sizeBreaches(files)).toEqual([]);
    expect(sizeBreaches(planted('sim/plant/coil.ts', 'x;\n'.repeat(300)))).toEqual([]);
    expect(sizeBreaches(planted('sim/plant/coil.ts', 'x;\n'.repeat(301)))).toHaveLength(1);
  });

  test('0 files or folders are named utils, helpers, common, misc or types', () => {
    expect(dumpingGrounds(files)).toEqual([]);
    const bad = ['src/utils.ts', 'sim/helpers/a.ts', 'shared/types.ts', 'tests/misc.ts'];
    expect(bad.flatMap((path) => dumpingGrounds(planted(path, '')))).toHaveLength(4);
  });

  test('0 files break camelCase.ts, PascalCase.svelte or PascalCase.svelte.ts', () => {
    expect(caseBreaches(files)).toEqual([]);
    const bad = ['sim/Coil.ts', 'src/bench.svelte', 'src/run.svelte.ts', 'sim/coil-outside.ts'];
    expect(bad.flatMap((path) => caseBreaches(planted(path, '')))).toHaveLength(4);
    const good = ['tests/coil.test.ts', 'src/worker/run.worker.ts', 'sim/solve/odex.d.ts'];
    expect(good.flatMap((path) => caseBreaches(planted(path, '')))).toEqual([]);
  });

  test('0 names stand at the top level that have no place there', () => {
    expect(strangers(topLevelNames())).toEqual([]);
    expect(strangers(['src', '.gitignore', 'scripts'])).toEqual(['scripts']);
  });
});

describe('words', () => {
  test('0 strings that people read say invalid, illegal, sorry, oops, please or speak of errors', () => {
    expect(proseBreaches(code)).toEqual([]);
    const bad = [
      planted('shared/problems.ts', "export const a = 'Invalid sensor height';"),
      // biome-ignore lint/suspicious/noTemplateCurlyInString: the planted text is itself a template
      planted('sim/plant/coil.ts', 'throw new Error(`${turns} turns are illegal`);'),
      planted('sim/cli/main.ts', "const a = 'an error in the file';"),
      planted('src/views/Bench.svelte', '<p>Oops</p>'),
      planted('src/views/Bench.svelte', '<p aria-label="Please wait">{state}</p>'),
      planted('src/views/Bench.svelte', "<p>{isBad ? 'Sorry about this' : ''}</p>"),
    ];
    expect(bad.flatMap((plant) => proseBreaches(plant))).toHaveLength(bad.length);
    const good = [
      planted('src/fields/Field.svelte', '<input aria-invalid="true" class="error box" />'),
      planted('sim/closures/water.ts', "export const a = 'the error of the fit is 0.05 %';"),
      planted('src/state/run.ts', "worker.addEventListener('error', stop); // please"),
    ];
    expect(good.flatMap((plant) => proseBreaches(plant))).toEqual([]);
  }, 30_000);

  test('0 words were born as a brand in this trade', () => {
    expect(brandBreaches(written)).toEqual([]);
    const digests = new Set([digestOf('tundish')]);
    expect(brandBreaches(planted('README.md', 'A Tundish, in small'), digests)).toHaveLength(1);
    expect(brandBreaches(planted('sim/a.ts', 'const oldTundish = 1;'), digests)).toHaveLength(1);
    expect(brandBreaches(planted('README.md', 'A funnel, in small'), digests)).toEqual([]);
  });

  // each planted text is put together here, so that this file does not break its own rules
  test.each([
    ['control layouts by letter', /\b[SYCW][- ]?[Pp]lan\b|\b[sycw]Plan\b/, ['Y', 'plan'].join('-')],
    [
      'machine paths',
      /(?<![\w.])\/(?:work|home|root|tmp|Users)\/|\b[A-Z]:\\Users/,
      ['', 'tmp', 'x'].join('/'),
    ],
    [
      'registry hosts',
      /\bregistry\.[\w-]+\.|\bnpmjs\.|"resolve[d]":/,
      ['registry', 'npmjs', 'org'].join('.'),
    ],
    [
      'undecided notes',
      /\b(?:FIXM[E]|XX[X]|HAC[K])\b|\bTOD[O]\b(?!.*\b(?:when|once|until|if)\b)/,
      `// ${'TO'}DO tidy`,
    ],
  ])('0 files have %s', (_what, pattern, plant) => {
    expect(patternBreaches(files, pattern)).toEqual([]);
    expect(patternBreaches(planted('README.md', plant), pattern)).toHaveLength(1);
  });

  test('0 files in src, sim and shared write to the console, save for console.error', () => {
    const pattern = /\bconsole\.(?!error\b)\w+/;
    expect(patternBreaches(code, pattern)).toEqual([]);
    expect(patternBreaches(planted('sim/a.ts', 'console.log(T);'), pattern)).toHaveLength(1);
  });
});

function adapterBreaches(tree: readonly ProjectFile[]): string[] {
  const others = tree.filter(
    ({ path }) => path.startsWith('sim/') && path !== 'sim/solve/integrate.ts',
  );
  return patternBreaches(others, /(?:from|import\()\s*['"][^'"]*\/odex(?:\.js|\.ts)?['"]/);
}

function sizeBreaches(tree: readonly ProjectFile[]): string[] {
  return tree
    .filter(({ path }) => /^(src|sim|shared|tests)\/.*\.(ts|js|svelte)$/.test(path))
    .map(({ path, text }) => ({ path, lines: text.replace(/\n$/, '').split('\n').length }))
    .filter(({ lines }) => lines > 300)
    .map(({ path, lines }) => `${path} has ${lines} lines`);
}

function dumpingGrounds(tree: readonly ProjectFile[]): string[] {
  const pattern = /(?:^|\/)(?:utils?|helpers?|common|misc|types)(?:\.[\w.]+|\/.*)$/i;
  return tree.map(({ path }) => path).filter((path) => pattern.test(path));
}

function caseBreaches(tree: readonly ProjectFile[]): string[] {
  const inRooms = /^(src|sim|shared|tests)\/.*\.(ts|svelte)$/;
  const good = [
    /^[a-z][A-Za-z0-9]*(\.(test|bench|worker|config|d))?\.ts$/,
    /^[A-Z][A-Za-z0-9]*\.svelte(\.ts)?$/,
  ];
  return tree
    .map(({ path }) => path)
    .filter((path) => inRooms.test(path))
    .filter((path) => !good.some((pattern) => pattern.test(path.split('/').at(-1) ?? '')));
}

function strangers(names: readonly string[]): string[] {
  return names.filter((name) => !name.startsWith('.') && !topLevel.has(name));
}
