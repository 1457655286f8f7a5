import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { askedFileKey, askedRows } from '../../shared/asked.ts';
import { readStudy, studyFormat } from '../../shared/codec/batchStudy.ts';
import { readHeader, readOverrides } from '../../shared/codec/overrides.ts';
import { fieldAt, fields } from '../../shared/fields.ts';
import { filePathOf } from '../../shared/fileKeys.ts';
import { toSI } from '../../shared/units.ts';

const sound = {
  format: studyFormat,
  version: 1,
  base: { example: 'healthy-house', settings: { boiler: { outputKilowatts: 18 } } },
  grid: { 'coil.scaleThicknessMillimetres': { from: 0, to: 1, count: 3 } },
  measures: ['recoveryMinutes', 'fuelKilowattHours'],
};
const read = (study: unknown) => readStudy(JSON.stringify(study));
const said = (study: unknown) => {
  const found = read(study);
  return 'problems' in found
    ? found.problems.map(({ field, message }) => `${field}: ${message}`)
    : [];
};
const grid = (key: string, values: unknown) => said({ ...sound, grid: { [key]: values } });

describe('a study that is sound', () => {
  test('gives 3 values in SI, the base that is wished, and 2 measures', () => {
    const found = read(sound);
    expect(found).toEqual({
      study: {
        base: {
          file: null,
          example: 'healthy-house',
          settings: { boiler: { outputKilowatts: 18 } },
        },
        points: { axes: [{ path: 'coil.scaleThickness', values: [0, 0.0005, 0.001] }] },
        measures: ['recovery', 'fuel'],
      },
    });
  });

  test('may name a file of rows, and any of the measures', () => {
    const { grid: _, ...rest } = sound;
    const measures = askedRows.map(({ key }) => askedFileKey(key));
    const found = read({ ...rest, rows: 'coils.csv', measures });
    expect('study' in found && found.study.points).toEqual({ rows: 'coils.csv' });
    expect('study' in found && found.study.measures).toEqual(askedRows.map(({ key }) => key));
  });

  test('may have words and numbers as people type them: “18 kW”, priority', () => {
    const found = read({
      ...sound,
      grid: {
        'boiler.outputKilowatts': [12, '18 kW', '24,5'],
        'heating.arrangement': ['priority', 'simultaneous'],
      },
    });
    expect('study' in found && found.study.points).toEqual({
      axes: [
        { path: 'boiler.output', values: [12_000, 18_000, 24_500] },
        { path: 'heating.arrangement', values: ['priority', 'simultaneous'] },
      ],
    });
  });
});

test('the study that the README shows is sound', () => {
  const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
  const blocks = [...readme.matchAll(/```json\n(.*?)```/gs)].map((block) => block[1]);
  const shown = blocks.filter((block) => block.includes(studyFormat));
  expect(shown).toHaveLength(1);
  const found = readStudy(shown[0]);
  expect('study' in found && found.study.measures).toHaveLength(3);
});

describe('a study that is not, one sentence for each thing', () => {
  test.each([
    ['', ': The file is empty; it must hold one study as JSON.'],
    [
      '{"format": }',
      ': The file is not JSON: line 1, column 12 has “}” where something else is needed.',
    ],
    ['[]', ': The file must hold one object in braces; it holds a list.'],
    [
      '{"format":"reheat-bench variant"}',
      'format: This is not a study of Reheat Bench: its "format" must be "reheat-bench study".',
    ],
    [
      '{"format":"reheat-bench study","version":9}',
      'version: The file has version 9: it was made for a newer Reheat Bench, and this one reads version 1.',
    ],
  ])('%s', (text, sentence) => {
    const found = readStudy(text);
    expect('problems' in found && found.problems.map((p) => `${p.field}: ${p.message}`)).toEqual([
      sentence,
    ]);
  });

  test.each([
    [{ measure: [] }, 'measure: measure is not a part of a study; the nearest is measures.'],
    [
      { base: 'x.json' },
      'base: base must hold "file", "example" or "settings" in braces; it holds text.',
    ],
    [
      { base: { exampel: 'a' } },
      'base.exampel: base.exampel is not a part of a study; the nearest is base.example.',
    ],
    [
      { base: { file: 'a', example: 'b' } },
      'base: base starts from a file or from an example; leave out one of them.',
    ],
    [
      { base: { file: 3 } },
      'base.file: base.file must be a name in quotes; it holds the number 3.',
    ],
    [
      { base: { settings: [] } },
      'base.settings: base.settings must hold groups of settings in braces; it holds a list.',
    ],
    [{ rows: 'a.csv' }, 'grid: The study needs "grid" or "rows": one of the two, and not both.'],
    [{ grid: {} }, 'grid: grid must hold settings in braces; it holds nothing.'],
    [
      { measures: undefined },
      'measures: measures must hold a list of names, such as ["recoveryMinutes"]; it holds nothing.',
    ],
    [
      { measures: ['recovery'] },
      'measures[0]: recovery is not a measure; the nearest is recoveryMinutes.',
    ],
    [
      { measures: ['recoveryHours'] },
      'measures[0]: recoveryHours is not a measure; the nearest is recoveryMinutes.',
    ],
    [
      { measures: ['xyz'] },
      'measures[0]: xyz is not a measure; reheat batch --measures lists them.',
    ],
    [{ measures: [7] }, 'measures[0]: a measure is named in quotes; it holds the number 7.'],
    [
      { measures: ['recoveryMinutes', 'recoveryMinutes'] },
      'measures[1]: recoveryMinutes is asked twice.',
    ],
  ])('%j', (change, sentence) => {
    expect(said({ ...sound, ...change })).toEqual([sentence]);
  });

  test.each([
    ['coil.area', [1], 'grid: coil.area is not a setting; the nearest is coil.areaSquareMetres.'],
    [
      'area',
      [1],
      'grid: area is not a setting; a setting is named with its group and unit, such as coil.areaSquareMetres.',
    ],
    [
      'coyl.areaSquareMetres',
      [1],
      'grid: coyl.areaSquareMetres is not a setting; the nearest group is coil.',
    ],
    [
      'coil.areaSquareMetres',
      1,
      'grid.coil.areaSquareMetres: Coil area needs a list of numbers, or from, to and count; it holds the number 1.',
    ],
    [
      'coil.areaSquareMetres',
      [],
      'grid.coil.areaSquareMetres: The list must hold 1 to 100000 values; it holds 0.',
    ],
    ['coil.areaSquareMetres', [1, 1], 'grid.coil.areaSquareMetres: Coil area has one value twice.'],
    [
      'coil.areaSquareMetres',
      [null],
      'grid.coil.areaSquareMetres: Coil area: null is not a number.',
    ],
    [
      'coil.areaSquareMetres',
      { from: 1, to: 2, step: 3 },
      'grid.coil.areaSquareMetres: step is not a part of it; there are from, to, count.',
    ],
    [
      'coil.areaSquareMetres',
      { from: 1, to: 2 },
      'grid.coil.areaSquareMetres: count must be a whole number from 2 to 100000; it is missing.',
    ],
    [
      'coil.areaSquareMetres',
      { from: 1, to: '2', count: 3 },
      'grid.coil.areaSquareMetres: to must be a number, the unit standing in the key; it is text.',
    ],
    [
      'heating.arrangement',
      { from: 1, to: 2, count: 2 },
      'grid.heating.arrangement: When both call needs a list of its words; it holds an object.',
    ],
  ])('a grid of %s: %j', (key, values, sentence) => {
    expect(grid(key, values)).toEqual([sentence]);
  });

  test('a value beyond its limits is said with the limits', () => {
    expect(grid('boiler.outputKilowatts', [12, 5000])[0]).toMatch(
      /^grid\.boiler\.outputKilowatts: .* must be between 1\skW and 100\skW; it is 5000\skW\.$/,
    );
  });

  test('a grid of 10¹⁰ rows is refused before any is made', () => {
    const axis = { from: 0.1, to: 1, count: 100_000 };
    const big = { 'coil.scaleThicknessMillimetres': axis, 'coil.bottomMetres': axis };
    expect(said({ ...sound, grid: big }).map((text) => text.replaceAll('\u00a0', ' '))).toEqual([
      'grid: The grid has 10 000 000 000 rows; at most 10 000 000 are computed: split it into several studies.',
    ]);
  });

  test('3 mistakes are 3 sentences', () => {
    expect(said({ ...sound, base: 1, grid: 2, measures: 3 })).toHaveLength(3);
  });
});

describe('a table of settings', () => {
  const header = (...cells: string[]) => {
    const found = readHeader(cells);
    return 'problems' in found
      ? found.problems.map(({ field, message }) => `${field}: ${message}`)
      : found.fields;
  };
  const known = header('coil.areaSquareMetres', 'boiler.outputKilowatts', 'coil.given') as never;
  const row = (...cells: string[]) => {
    const found = readOverrides(cells, known, 3);
    return 'problem' in found
      ? `${found.problem.field}: ${found.problem.message}`
      : found.overrides;
  };

  test('every setting may be a column by its name in a file', () => {
    expect(header(...fields.map(filePathOf))).toEqual(fields);
  });

  test.each([
    [['coil.area'], 'column 1: coil.area is not a setting; the nearest is coil.areaSquareMetres.'],
    [
      ['boiler.outputWatts'],
      'column 1: boiler.outputWatts is not a setting; the nearest is boiler.outputKilowatts.',
    ],
    [['coil.given', ''], 'column 2: it has no name in the header.'],
    [
      ['=1+1'],
      'column 1: =1+1 is not a setting; a setting is named with its group and unit, such as coil.areaSquareMetres.',
    ],
  ])('a header of %j', (cells, sentence) => {
    expect(header(...cells)).toEqual([sentence]);
  });

  test('a setting in 2 columns is said', () => {
    expect(header('coil.given', 'coil.given')).toEqual([
      `: The header has ${fieldAt('coil.given').label} twice; leave out one column.`,
    ]);
  });

  test('1.5 m², 24 kW and a word are read to SI; an empty cell leaves the setting', () => {
    expect(row('1.5', '24 kW', 'area')).toEqual([
      ['coil.area', 1.5],
      ['boiler.output', toSI(24, 'kilowatt')],
      ['coil.given', 'area'],
    ]);
    expect(row('', ' ', '')).toEqual([]);
  });

  test.each(['=1+1', '=HYPERLINK("x")', '@SUM(A1)', '+A1', '-A1*2', '|calc'])(
    'a cell of %s is refused as a formula and not worked out',
    (cell) => {
      expect(row(cell, '24', 'area')).toContain(
        `row 3: Coil area holds “${cell}”, which looks like a formula; formulas are not worked out: write the value.`,
      );
    },
  );

  test.each([
    [['many', '24', 'area'], 'row 3: Coil area needs a number'],
    [['1', '24 bar', 'area'], 'row 3: '],
    [['1', '24', 'guessed'], 'choose one of'],
    [['1', '24'], 'row 3: it has 2 cells where the header has 3.'],
  ])('a row of %j', (cells, part) => {
    expect(row(...cells)).toContain(part);
  });

  test('a value beyond its limits is let through, to be said in its row', () => {
    expect(row('-5', '', '')).toEqual([['coil.area', -5]]);
  });
});
