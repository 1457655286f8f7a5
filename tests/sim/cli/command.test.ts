import { spawn } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { toText } from '../../../shared/codec.ts';
import { presetNamed, presets, presetVariant } from '../../../shared/presets.ts';
import { withSetting } from '../../../shared/variant.ts';

const root = fileURLToPath(new URL('../../..', import.meta.url));
let folder = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'reheat-'));
});
afterAll(() => rm(folder, { recursive: true }));

interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the command as its users do, without npm's own start-up. */
function command(
  args: readonly string[],
  input = '',
  closeEarly = false,
  nodeOptions: readonly string[] = [],
): Promise<Ended> {
  return new Promise((settle, fail) => {
    const child = spawn(
      process.execPath,
      [...nodeOptions, join(root, '.run', 'ready.cjs'), 'reheat', ...args],
      { cwd: folder },
    );
    let out = '';
    let err = '';
    child.stdout.on('data', (piece) => {
      out += piece;
      if (closeEarly) child.stdout.destroy();
    });
    child.stderr.on('data', (piece) => {
      err += piece;
    });
    child.stdin.on('error', () => {}); // a command that stops before reading all of its input
    child.stdin.end(input);
    child.on('error', fail);
    child.on('close', (code) => settle({ code, out, err }));
  });
}

test('an example of 1 command is the input of the next: exit code 0, nothing on stderr', async () => {
  const example = await command(['--example', 'far-away']);
  expect(example).toEqual({
    code: 0,
    out: toText(presetVariant(presetNamed('far-away') ?? presets[0])),
    err: '',
  });
  const run = await command(['-'], example.out);
  expect(run.code).toBe(0);
  expect(run.err).toBe('');
  expect(run.out).toMatch(/^Far-away cylinder\n\nFrom cold to 60\u00a0°C at the sensor in \d+\.\d/);
}, 30_000);

test('bad input is exit code 2 with its sentence on stderr and nothing on stdout', async () => {
  const missing = await command(['missing.json']);
  expect(missing).toEqual({
    code: 2,
    out: '',
    err: 'missing.json: there is no such file or folder; check the name.\n',
  });
  const empty = await command(['-'], '');
  expect(empty).toEqual({
    code: 2,
    out: '',
    err: 'standard input: The file is empty; it must hold one variant or several as JSON.\n',
  });
}, 30_000);

test('a fault of ours, planted in JSON.parse, is exit code 1 with 1 plain sentence and its details', async () => {
  const planted = `const parse = JSON.parse; JSON.parse = (text, ...more) => {
    if (text.includes('"version": 3')) throw new Error('planted');
    return parse(text, ...more);
  };`;
  const url = `data:text/javascript,${encodeURIComponent(planted)}`;
  const text = toText(presetVariant(presets[0]));
  const { code, out, err } = await command(['-'], text, false, ['--import', url]);
  expect([code, out]).toEqual([1, '']);
  expect(err).toMatch(/^This is a fault in Reheat Bench, not in the input\.\nError: planted\n/);
}, 30_000);

test('a reader that closes after the first piece of a result of 200 layers ends it quietly', async () => {
  const file = join(folder, 'long.json');
  await writeFile(file, toText(withSetting(presetVariant(presets[0]), 'run.layers', 200)));
  const whole = await command([file, '--json']);
  // more than a pipe holds, so that the command is still writing when its reader leaves
  expect(whole.out.length).toBeGreaterThan(500_000);
  const { code, err } = await command([file, '--json'], '', true);
  expect(err).toBe('');
  expect(code).toBe(0);
}, 30_000);
