import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { csvRecords } from '../../../../sim/cli/batch/csvRecords.ts';
import { tablePoints } from '../../../../sim/cli/batch/points.ts';

let folder = '';
let file = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'reheat-'));
  file = join(folder, 'table.csv');
});
afterAll(() => rm(folder, { recursive: true }));

async function records(text: string): Promise<string[][]> {
  await writeFile(file, text);
  const all: string[][] = [];
  for await (const some of csvRecords(file)) all.push(...some);
  return all;
}

/** What a table gives, or its problems without the folder. */
async function table(text: string) {
  await writeFile(file, text);
  const found = await tablePoints(file);
  return 'problems' in found ? found.problems.map((said) => said.replace(`${folder}/`, '')) : found;
}

test('quotes, line ends in them, a mark of byte order and 2 empty lines: 3 rows', async () => {
  expect(await records('\ufeffa,b\r\n\r\n"1,5","x\ny"\n\n"say ""so""",2')).toEqual([
    ['a', 'b'],
    ['1,5', 'x\ny'],
    ['say "so"', '2'],
  ]);
});

test('40 random tables come back as they were written, wherever the pieces are cut', async () => {
  const cell = fc.string({ maxLength: 9, unit: fc.constantFrom('a', '"', ',', '\n', '\r\n', 'é') });
  const rows = fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { maxLength: 6 });
  await fc.assert(
    fc.asyncProperty(rows, fc.integer({ min: 0, max: 3 }), async (written, more) => {
      const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;
      // pieces are 64 KiB: what stands before moves the cut over the row
      const before = `${'x'.repeat(65_530 + more)},y\n`;
      const text = before + written.map((row) => `${row.map(quoted).join(',')}\n`).join('');
      expect((await records(text)).slice(1)).toEqual(written);
    }),
    { numRuns: 40, seed: 8 },
  );
});

test.each([
  ['empty', '', 'table.csv: the file is empty; it needs a header and rows.'],
  [
    'a header alone',
    'coil.areaSquareMetres\n',
    'table.csv: there is a header and no row after it.',
  ],
  [
    'without units',
    'coil.area\n1\n',
    'table.csv, column 1: coil.area is not a setting; the nearest is coil.areaSquareMetres.',
  ],
  [
    'quoted to its end',
    'coil.areaSquareMetres\n"1\n',
    'table.csv: the last row ends inside quotation marks; one is missing.',
  ],
  [
    'quoted for 1.2 million characters',
    `coil.areaSquareMetres\n"${'1\n'.repeat(600_000)}`,
    'table.csv: a row is longer than 1 million characters; a quotation mark may be missing.',
  ],
  [
    'of formulas',
    'coil.areaSquareMetres\n1\n=2+2\n',
    'table.csv, row 2: Coil area holds “=2+2”, which looks like a formula; formulas are not worked out: write the value.',
  ],
  [
    'of names without settings',
    'name,source\nSmall coil,invented\n',
    'table.csv: the header has no setting after its words.',
  ],
  [
    'with a source and no name',
    'source,coil.areaSquareMetres\ninvented,1\n',
    'table.csv, column 1: source is not a setting; a setting is named with its group and unit, such as coil.areaSquareMetres.',
  ],
  [
    'with a name left empty',
    'name,coil.areaSquareMetres\nSmall coil,1\n ,2\n',
    'table.csv, row 2: it needs a name.',
  ],
  [
    'with a name that is a formula',
    'name,coil.areaSquareMetres\n=1+1,1\n',
    'table.csv, row 1: the name “=1+1” looks like a formula to a spreadsheet; begin it with a letter or a figure.',
  ],
  [
    'with a cell too few',
    'name,source,coil.areaSquareMetres\nSmall coil,1\n',
    'table.csv, row 1: it has 2 cells where the header has 3.',
  ],
])('a table that is %s', async (_what, text, sentence) => {
  expect(await table(text)).toEqual([sentence]);
});

test('of 30 rows that cannot be read 5 are said, and how many there are more', async () => {
  const said = await table(`coil.areaSquareMetres\n${'=1\n'.repeat(30)}`);
  expect(said).toHaveLength(6);
  expect(Array.isArray(said) && said[5]).toBe('table.csv: 25 rows more cannot be read.');
});

test('rows 3 to 5 of 6 are read without the others', async () => {
  const found = await table('coil.areaSquareMetres\n1\n2\n3\n\n4\n5\n6\n');
  if (Array.isArray(found)) throw new Error(found[0]);
  expect(found.count).toBe(6);
  const rows: unknown[] = [];
  for await (const some of found.between(2, 5)) rows.push(...some);
  expect(rows).toEqual([3, 4, 5].map((area) => ({ settings: [['coil.area', area]], words: [] })));
});

test('1 row more than there may be is one sentence', async () => {
  await writeFile(file, 'coil.areaSquareMetres\n1\n2\n3\n4\n');
  expect(await tablePoints(file, 4)).toMatchObject({ count: 4 });
  expect(await tablePoints(file, 3)).toEqual({
    problems: [`${file} has more than 3 rows: split it into several studies.`],
  });
});
