import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { benchToText } from '../../../shared/codec/bench.ts';
import { toText } from '../../../shared/codec.ts';
import { defaultVariant } from '../../../shared/fields.ts';
import { withSetting } from '../../../shared/variant.ts';
import { answer } from '../../../sim/cli/run.ts';

const first = withSetting(defaultVariant('as found'), 'run.layers', 10);
const second = withSetting(first, 'boiler.output', 12_000);
let folder = '';
let both = '';
let one = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'reheat-'));
  both = join(folder, 'both.json');
  one = join(folder, 'one.json');
  await writeFile(both, benchToText({ variants: [first, second], inHand: 1 }));
  await writeFile(one, toText(second));
});
afterAll(() => rm(folder, { recursive: true }));

describe('a file of 2 variants', () => {
  test('B of it prints what a file of B alone prints, and b is B', async () => {
    const alone = await answer([one]);
    expect(alone.out).toMatch(/min/);
    expect((await answer([both, '--variant', 'B'])).out).toBe(alone.out);
    expect((await answer([both, '--variant', 'b'])).out).toBe(alone.out);
  });

  test.each([
    ['without a letter', () => [both], /holds the variants A, B; say which with --variant\.$/],
    ['with D', () => [both, '--variant', 'D'], /holds the variants A, B, and no D\.$/],
    ['with nothing after it', () => [both, '--variant'], /needs a letter, A to D after it\.$/],
  ])('%s is 1 sentence, and nothing is run', async (_how, args, said) => {
    const { out, problems, exitCode } = await answer(args());
    expect([out, problems.length, exitCode]).toEqual(['', 1, 2]);
    expect(problems[0]).toMatch(said);
  });
});

test('a file of 1 variant is A, and has no B', async () => {
  expect((await answer([one, '--variant', 'A'])).exitCode).toBe(0);
  expect((await answer([one, '--variant', 'B'])).problems[0]).toMatch(/one variant, A, and no B/);
});
