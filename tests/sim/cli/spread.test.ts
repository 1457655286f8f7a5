import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { toText } from '../../../shared/codec.ts';
import { minutes, percent } from '../../../shared/format.ts';
import { presets, presetVariant } from '../../../shared/presets.ts';
import { unknownRows } from '../../../shared/sentences/spread.ts';
import type { Spread } from '../../../shared/spread.ts';
import { withSetting } from '../../../shared/variant.ts';
import { answer } from '../../../sim/cli/run.ts';
import { SPREAD_RUNS, spreadOf } from '../../../sim/run/spread.ts';
import { toEnd } from '../../../sim/run/toEnd.ts';

// 10 layers: a quarter of the time, and only what is printed is tested
const variant = withSetting(presetVariant(presets[0]), 'run.layers', 10);
const flat = (text: string) => text.replace(/\s+/g, ' ');
let folder = '';
let file = '';
let spread: Spread;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'reheat-'));
  file = join(folder, 'coarse.json');
  await writeFile(file, toText(variant));
  spread = toEnd(spreadOf(variant, SPREAD_RUNS));
}, 60_000);

afterAll(() => rm(folder, { recursive: true }));

test('--spread prints low, median and high, and for each of 5 unknowns its share and range', async () => {
  const { out, exitCode } = await answer([file, '--spread']);
  expect(exitCode).toBe(0);
  expect(flat(out)).toContain(flat(`low, 1 case in 10 is shorter ${minutes(spread.low)}`));
  expect(flat(out)).toContain(flat(`median ${minutes(spread.median)}`));
  expect(flat(out)).toContain(flat(`high, 1 case in 10 is longer ${minutes(spread.high)}`));
  const rows = unknownRows(spread);
  expect(rows).toHaveLength(5);
  for (const { name, ranges, share } of rows) {
    expect(flat(out)).toContain(flat(`${name} ${percent(share)} ${ranges[0].text}`));
  }
  expect(out).toContain('Cautions');
}, 60_000);

test('--spread --json has the same 3 times, 256 recoveries and 5 indices, units in the keys', async () => {
  const { out } = await answer([file, '--spread', '--json']);
  const read = JSON.parse(out);
  expect(read).toMatchObject({
    format: 'reheat-bench spread',
    lowSeconds: spread.low,
    medianSeconds: spread.median,
    highSeconds: spread.high,
    runs: 256,
  });
  expect(read.recoveriesSeconds).toEqual([...spread.recoveries]);
  expect(Object.keys(read.firstOrder)).toHaveLength(5);
  expect(read.cautions.length).toBeGreaterThan(3);
}, 60_000);

test('--day with --spread is 1 thing to put right', async () => {
  expect((await answer([file, '--day', '--spread'])).problems).toEqual([
    '--day and --spread answer two questions; leave out one of them.',
  ]);
});
