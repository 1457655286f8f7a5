import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { askedFileValue } from '../../../../shared/asked.ts';
import { startingCatalogue } from '../../../../shared/catalogueStart.ts';
import { catalogueToCsv } from '../../../../shared/codec/catalogue.ts';
import { withOverrides } from '../../../../shared/grid.ts';
import { loadStudy } from '../../../../sim/cli/batch/load.ts';
import type { PointRow } from '../../../../sim/cli/batch/points.ts';
import { computeRows, headLine } from '../../../../sim/cli/batch/rows.ts';
import { type Variant, withSetting } from '../../../../shared/variant.ts';
import { pointOf } from '../../../../sim/run/pointOf.ts';
import { toEnd } from '../../../../sim/run/toEnd.ts';

let folder = '';
const entries = startingCatalogue();

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'reheat-'));
  await writeFile(join(folder, 'catalogue.csv'), catalogueToCsv(entries));
  const study = {
    format: 'reheat-bench study',
    version: 1,
    base: { example: 'healthy-house' },
    rows: 'catalogue.csv',
    measures: ['recoveryMinutes'],
  };
  await writeFile(join(folder, 'bought.json'), JSON.stringify(study));
});
afterAll(() => rm(folder, { recursive: true }));

/** The rows of the study, as tasks have them. */
async function taskOf(form: 'ndjson' | 'csv') {
  const loaded = await loadStudy(join(folder, 'bought.json'));
  if ('problems' in loaded) throw new Error(loaded.problems.join(' '));
  const { base, measures, points } = loaded;
  const rows: PointRow[] = [];
  for await (const some of points.between(0, points.count)) rows.push(...some);
  const { words, paths } = points;
  return { base, words, paths, measures, form, mark: 'm', from: 1, rows };
}

test('a catalogue saved from the app is a study: 12 rows with name and source, each the entry over the base', async () => {
  const task = await taskOf('ndjson');
  const rows = computeRows(task).text.trimEnd().split('\n');
  expect(rows).toHaveLength(12);
  const minutes = entries.map(({ name, source, settings }, index) => {
    const row = JSON.parse(rows[index]);
    expect([row.name, row.source]).toEqual([name, source]);
    const point = toEnd(pointOf(withOverrides(task.base, settings), ['recovery']));
    expect(row.recoveryMinutes).toBe(askedFileValue('recovery', point.values[0]));
    return row.recoveryMinutes;
  });
  expect(new Set(minutes).size).toBeGreaterThan(8); // they do differ
});

test('a coil’s area in a study of a coil known by its tube: the note says it has no say, and with what it would', async () => {
  const task = await taskOf('ndjson');
  const path = 'coil.area' as const;
  const rowsOf = (base: Variant) =>
    computeRows({
      ...task,
      base,
      words: [],
      paths: [path],
      rows: [{ settings: [[path, 1.5]], words: [] }],
    });
  const byTube = JSON.parse(rowsOf(task.base).text);
  expect(byTube.note).toBe(
    'coil.areaSquareMetres has no say here; it would have with coil.given area.',
  );
  const byArea = JSON.parse(rowsOf(withSetting(task.base, 'coil.given', 'area')).text);
  expect(byArea.note).toBeNull();
  expect(byArea.recoveryMinutes).toBeLessThan(byTube.recoveryMinutes);
});

test('as CSV the names stand after number and mark, quoted where they hold a comma', async () => {
  const task = await taskOf('csv');
  expect(headLine(task)).toMatch(/^row,study,name,source,boiler\.outputKilowatts,/);
  const rows = computeRows(task).text.trimEnd().split('\n');
  expect(rows[0].startsWith(`1,m,${entries[0].name},invented,12,2,`)).toBe(true);
  const comma = entries.findIndex(({ name }) => name.includes(','));
  expect(rows[comma].startsWith(`${comma + 1},m,"${entries[comma].name}",invented,`)).toBe(true);
});
