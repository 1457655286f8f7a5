import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { toText } from '../../../shared/codec.ts';
import { presetNamed, presetVariant } from '../../../shared/presets.ts';
import { withSetting } from '../../../shared/variant.ts';
import { answer } from '../../../sim/cli/run.ts';
import { changesOf } from '../../../sim/run/changes.ts';
import { minutesByCause } from '../../../sim/run/minutes.ts';
import { toEnd } from '../../../sim/run/toEnd.ts';

let folder = '';
let file = '';
const preset = presetNamed('scaled-coil');
if (!preset) throw new Error('scaled-coil is no example');
// fewer layers than usual, for speed
const scaled = withSetting(presetVariant(preset), 'run.layers', 12);
const found = toEnd(minutesByCause(scaled));
const changes = toEnd(changesOf(scaled));

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'reheat-'));
  file = join(folder, 'scaled.json');
  await writeFile(file, toText(scaled));
});

afterAll(() => rm(folder, { recursive: true }));

describe('why a scaled coil is slow', () => {
  test('names the scale, 9 causes, the whole and what descaling saves', async () => {
    const { out, problems, exitCode } = await answer([file, '--why']);
    expect([problems, exitCode]).toEqual([[], 0]);
    const plain = out.replaceAll('\u00a0', ' ');
    const whole = ((found.whole ?? 0) / 60).toFixed(1);
    const scale = ((found.shares.find(({ key }) => key === 'scale')?.time ?? 0) / 60).toFixed(1);
    expect(plain).toContain(`The scale on the coil costs ${scale} of the ${whole} min.`);
    for (const word of ['sensor', 'times and valve', 'heating', 'pipes', 'scale', 'in all']) {
      expect(plain).toMatch(new RegExp(`^  ${word} +−?[\\d.]+ min$`, 'm'));
    }
    expect(plain).toContain(`saves ${((changes[0].saves ?? 0) / 60).toFixed(1)} min`);
    expect(plain).toContain('Cautions');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  }, 60_000);

  test('as JSON has 8 causes that add up, units in the keys, and cautions', async () => {
    const { out } = await answer([file, '--why', '--json']);
    const json = JSON.parse(out);
    expect(json.format).toBe('reheat-bench why');
    expect(json.causes).toHaveLength(8);
    const sum = json.causes.reduce(
      (all: number, { costsMinutes }: { costsMinutes: number }) => all + costsMinutes,
      0,
    );
    expect(sum).toBeCloseTo(json.wholeMinutes - json.atFullOutputMinutes, 6);
    expect(json.changes[0]).toMatchObject({ change: 'descale', cause: 'scale', cautions: [] });
    expect(json.cautions.length).toBeGreaterThan(3);
  }, 60_000);
});

test('--why and --day together are 1 sentence to put right', async () => {
  const { problems, exitCode } = await answer([file, '--why', '--day']);
  expect(exitCode).toBe(2);
  expect(problems).toEqual(['--day and --why answer two questions; leave out one of them.']);
});
