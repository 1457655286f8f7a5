import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { fields } from '../../shared/fields.ts';
import { drawColumns, mostDraws } from '../../shared/fields/ownDraw.ts';
import { notModelled } from '../../shared/notModelled.ts';
import { settingsTable } from '../../shared/settingsTable.ts';
import { fromText } from '../../shared/codec.ts';
import { units } from '../../shared/units.ts';

const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

/** The cells of every row of a Markdown table that is about a setting; padding does not count. */
function settingRows(markdown: string): string[][] {
  return markdown
    .split('\n')
    .filter((line) => /^\| `\w+\.\w+` /.test(line))
    .map((line) => line.split('|').map((cell) => cell.trim()));
}

test('the README prints each of the settings as the fields have it (--settings prints it again)', () => {
  const rows = settingRows(settingsTable());
  expect(rows).toHaveLength(fields.length);
  expect(settingRows(readme)).toEqual(rows);
});

test('the README says the limits of all 5 columns of the own draws, and that there are 60 at most', () => {
  expect(drawColumns).toHaveLength(5);
  const flat = readme.replace(/\s+/g, ' ');
  expect(flat).toContain(`a list of up to ${mostDraws} draws`);
  for (const column of drawColumns) {
    if (column.kind === 'text') expect(flat).toContain(`up to ${column.most} characters`);
    else if (column.key === 'at') expect(flat).toContain('The time is 00:00 to 23:59');
    else expect(flat).toContain(`${column.least} to ${column.most} ${units[column.unit].symbol}`);
  }
});

test('the README says all 10 things the model does not do, word for word', () => {
  expect(notModelled).toHaveLength(10);
  const flat = readme.replace(/\s+/g, ' ');
  for (const sentence of notModelled) expect(flat).toContain(`- ${sentence}`);
});

test('the variant in the README opens, with 24 kW and 180 l in it', () => {
  const example = /```json\n(.*?)```/s.exec(readme)?.[1] ?? '';
  const reading = fromText(example);
  expect('variant' in reading && reading.variant.boiler.output).toBe(24_000);
  expect('variant' in reading && reading.variant.cylinder.volume).toBeCloseTo(0.18, 12);
});
