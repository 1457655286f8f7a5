import { csvParseRows } from 'd3';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CatalogueEntry, entryFrom } from '../../shared/catalogue.ts';
import { startingCatalogue } from '../../shared/catalogueStart.ts';
import { catalogueFromCells, catalogueToCsv } from '../../shared/codec/catalogue.ts';
import { anyVariant } from '../make/anyVariant.ts';

const read = (text: string) => catalogueFromCells(csvParseRows(text));
const said = (text: string) => {
  const found = read(text);
  return 'problems' in found
    ? found.problems.map(({ field, message }) =>
        `${field === '' ? '' : `${field}: `}${message}`.replaceAll('\u00a0', ' '),
      )
    : [];
};

describe('what is written can be read', () => {
  test('the catalogue at the start, and its text is the same again', () => {
    const text = catalogueToCsv(startingCatalogue());
    const found = read(text);
    expect(found).toEqual({ entries: startingCatalogue() });
    expect(catalogueToCsv('entries' in found ? found.entries : [])).toBe(text);
  });

  test('units stand in the header, and an empty cell is a setting that is not said', () => {
    const [header, boiler] = catalogueToCsv(startingCatalogue()).split('\n');
    expect(header).toMatch(/^name,source,boiler\.outputKilowatts,/);
    expect(boiler).toMatch(/^Boiler of 12 kW that turns down to 2,invented,12,2,.*,,,$/);
  });

  test('100 lists of things kept of any house, whatever they are called', () => {
    const words = fc
      .string({ unit: 'binary', minLength: 1, maxLength: 60 })
      .map((text) => `n${text.trim()}`.trim());
    const kept = fc
      .tuple(anyVariant, fc.constantFrom('boiler', 'coil', 'cylinderWithCoil'), words, words)
      .map(([variant, as, name, source]) => entryFrom(variant, as, name, source));
    const catalogue = fc.uniqueArray(kept, {
      minLength: 1,
      maxLength: 6,
      selector: ({ name }) => name,
    });
    fc.assert(
      fc.property(catalogue, (entries) => {
        const text = catalogueToCsv(entries);
        const found = read(text);
        if ('problems' in found) throw new Error(JSON.stringify(found.problems));
        expect(found.entries.map(({ name, source }) => [name, source])).toEqual(
          entries.map(({ name, source }) => [name, source]),
        );
        expect(catalogueToCsv(found.entries)).toBe(text);
      }),
      { numRuns: 100 },
    );
  });
});

describe('one clear sentence', () => {
  const good = 'name,source,coil.given,coil.areaSquareMetres\n';

  test.each([
    [
      'an empty file',
      '',
      'The first two columns must be called name and source; the header begins with nothing.',
    ],
    ['a header alone', good, 'The table has a header and no rows; each row is an entry.'],
    [
      'another table',
      'Model,Area\nx,1\n',
      'The first two columns must be called name and source; the header begins with Model, Area.',
    ],
    [
      'semicolons',
      'name;source;coil.areaSquareMetres\nx;y;1\n',
      'The cells of the header are not separated by commas; save the table as comma-separated text.',
    ],
    [
      'a missing unit',
      'name,source,coil.area\nx,y,1\n',
      'column 3: coil.area is not a setting; the nearest is coil.areaSquareMetres.',
    ],
    [
      'another unit',
      'name,source,cylinder.volumeGallons\nx,y,30\n',
      'column 3: cylinder.volumeGallons is not a setting; the nearest is cylinder.volumeLitres.',
    ],
    [
      'words in place of a setting',
      'name,source,Coil area in m²\nx,y,1\n',
      'column 3: Coil area in m² is not a setting; a setting is named with its group and unit, such as coil.areaSquareMetres.',
    ],
    [
      'a column without a name',
      'name,source,coil.areaSquareMetres,\nx,y,1,2\n',
      'column 4: it has no name in the header.',
    ],
    [
      'a column twice',
      'name,source,coil.areaSquareMetres,coil.areaSquareMetres\nx,y,1,1\n',
      'The header has Coil area twice; leave out one column.',
    ],
    [
      'a setting of the house',
      'name,source,boiler.hotWaterFlowCelsius\nx,y,80\n',
      'boiler.hotWaterFlowCelsius: Flow target for hot water belongs to the installation, not to what is bought; leave the column out.',
    ],
    [
      'a setting of another group',
      'name,source,stat.setPointCelsius\nx,y,60\n',
      'stat.setPointCelsius: Set-point belongs to the installation, not to what is bought; leave the column out.',
    ],
    ['no name', `${good},y,area,1\n`, 'row 1: it needs a name.'],
    ['a name twice', `${good}x,y,area,1\nx,y,area,2\n`, 'row 2: the name x is there twice.'],
    ['nothing said', `${good}x,y,,\n`, 'row 1: x has no settings.'],
    ['too few cells', `${good}x,y,area\n`, 'row 1: it has 3 cells where the header has 4.'],
    [
      'text for a number',
      `${good}x,y,area,big\n`,
      'row 1: Coil area needs a number, such as 0.85 m²; “big” is not one.',
    ],
    [
      'an unknown word',
      `${good}x,y,guessed,1\n`,
      'row 1: Coil is known by: choose one of geometry, area, rating, conductance; "guessed" is not among them.',
    ],
    [
      'out of range',
      `${good}x,y,area,60\n`,
      'row 1: Coil area must be between 0.05 m² and 6 m²; it is 60 m².',
    ],
    [
      'a formula for a number',
      `${good}x,y,area,=1+1\n`,
      'row 1: Coil area holds “=1+1”, which looks like a formula; formulas are not worked out: write the value.',
    ],
    [
      'a formula for a name',
      `${good}"=HYPERLINK(""x"")",y,area,1\n`,
      'row 1: the name “=HYPERLINK("x")” looks like a formula to a spreadsheet; begin it with a letter or a figure.',
    ],
    [
      'a formula for a source',
      `${good}x,@SUM(A1),area,1\n`,
      'row 1: the source “@SUM(A1)” looks like a formula to a spreadsheet; begin it with a letter or a figure.',
    ],
    [
      'a name without end',
      `${good}${'x'.repeat(500)},y,area,1\n`,
      'row 1: the name has 500 characters; at most 120 are kept.',
    ],
  ])('for %s', (_what, text, sentence) => {
    expect(said(text)).toEqual([sentence]);
  });

  test('for a million rows, without looking at them', () => {
    const rows: string[][] = [['name', 'source', 'coil.areaSquareMetres']];
    for (let row = 0; row < 1e6; row++) rows.push(['=x', '', 'nonsense']);
    const found = catalogueFromCells(rows);
    expect('problems' in found && found.problems.map(({ message }) => message)).toEqual([
      'The table has 1\u00a0000\u00a0000 rows; a catalogue holds at most 500.',
    ]);
  });

  test('for each of many rows, up to ten and how many more', () => {
    const lines = Array.from({ length: 40 }, (_, row) => `x${row},y,area,none\n`).join('');
    const sentences = said(good + lines);
    expect(sentences).toHaveLength(11);
    expect(sentences[0]).toMatch(/^row 1: Coil area needs a number/);
    expect(sentences[10]).toBe('There are 30 more like these.');
  });

  test('columns may come in any order, and the entry is the same', () => {
    const one = read('name,source,coil.given,coil.areaSquareMetres\nx,y,area,1.5\n');
    const other = read('name,source,coil.areaSquareMetres,coil.given\nx,y,"1,5 m²",area\n');
    const entry: CatalogueEntry = {
      name: 'x',
      source: 'y',
      settings: [
        ['coil.given', 'area'],
        ['coil.area', 1.5],
      ],
    };
    expect(one).toEqual({ entries: [entry] });
    expect(other).toEqual({ entries: [entry] });
  });
});
