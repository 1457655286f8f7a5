import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { askedFileKey, askedRows } from '../../../../shared/asked.ts';
import { simulateToEnd } from '../../../../sim/run/simulate.ts';
import { presetNamed, presets, presetVariant } from '../../../../shared/presets.ts';
import { withSettings } from '../../../../shared/preset.ts';

const root = fileURLToPath(new URL('../../../..', import.meta.url));
const rows = 96;
let folder = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'reheat-'));
  const study = {
    format: 'reheat-bench study',
    version: 1,
    base: { example: 'healthy-house' },
    grid: {
      'coil.scaleThicknessMillimetres': { from: 0, to: 1.1, count: 12 },
      'boiler.outputKilowatts': { from: 12, to: 33, count: 8 },
    },
    measures: ['recoveryMinutes', 'usableAtCallLitres'],
  };
  await writeFile(join(folder, 'study.json'), JSON.stringify(study));
});
afterAll(() => rm(folder, { recursive: true }));

interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs a batch as its users do; `meanwhile` may end it. */
function batch(
  args: readonly string[],
  meanwhile: (child: ChildProcess) => void = () => {},
  env: NodeJS.ProcessEnv = process.env,
): Promise<Ended> {
  return new Promise((settle, fail) => {
    const command = [join(root, '.run', 'ready.cjs'), 'reheat', 'batch', ...args];
    const child = spawn(process.execPath, command, { cwd: folder, env });
    let out = '';
    let err = '';
    child.stdout.on('data', (piece) => {
      out += piece;
    });
    child.stderr.on('data', (piece) => {
      err += piece;
    });
    child.on('error', fail);
    child.on('close', (code) => settle({ code, out, err }));
    meanwhile(child);
  });
}

/** Ends a command without warning as soon as its file is longer than so many bytes. */
const killAt = (file: string, bytes: number) => (child: ChildProcess) => {
  const watch = setInterval(async () => {
    const size = await stat(file).then(
      (found) => found.size,
      () => 0,
    );
    if (size > bytes) child.kill('SIGKILL');
  }, 2);
  child.on('close', () => clearInterval(watch));
};

test('killed 4 times without warning, cut in a line as well, and resumed: the same 97 lines to the byte', async () => {
  const whole = join(folder, 'whole.csv');
  const cut = join(folder, 'cut.csv');
  const first = await batch(['study.json', '--out', whole, '--jobs', '2']);
  expect({ ...first, err: '' }).toEqual({ code: 0, out: '', err: '' });
  const bytes = await readFile(whole);
  expect(bytes.toString().split('\n')).toHaveLength(1 + rows + 1);
  let before = 0;
  let killed = 0;
  for (const share of [0, 0.2, 0.5, 0.7]) {
    const run = ['study.json', '--out', cut, '--resume', '--jobs', '2'];
    const { code } = await batch(run, killAt(cut, Math.max(before, share * bytes.length)));
    const left = await readFile(cut);
    expect(left.equals(bytes.subarray(0, left.length))).toBe(true);
    expect(left.length).toBeGreaterThan(before);
    if (code === null) killed++;
    // what a disk may keep of a write that was under way
    before = Math.max(0, left.length - 7);
    await writeFile(cut, left.subarray(0, before));
  }
  expect(killed).toBeGreaterThan(1);
  const last = await batch(['study.json', '--out', cut, '--resume', '--jobs', '1']);
  expect(last.code).toBe(0);
  expect((await readFile(cut)).equals(bytes)).toBe(true);
  const again = await batch(['study.json', '--out', cut, '--resume']);
  expect(again).toEqual({ code: 0, out: '', err: '' });
}, 180_000);

test('3 parts by 3 commands one after the other are the whole; each number is that of a run in the app', async () => {
  const parts = [];
  for (const part of ['1/3', '2/3', '3/3']) {
    parts.push(await batch(['study.json', '--part', part, '--jobs', '2']));
  }
  const lines = parts
    .flatMap(({ out }) => out.trimEnd().split('\n'))
    .map((line) => JSON.parse(line));
  expect(lines.map(({ row }) => row)).toEqual(Array.from({ length: rows }, (_, i) => i + 1));
  const house = presetVariant(presetNamed('healthy-house') ?? presets[0]);
  for (const index of [0, 17, 50, 95]) {
    const line = lines[index];
    const { measures } = simulateToEnd(
      withSettings(house, [
        ['coil.scaleThickness', line['coil.scaleThicknessMillimetres']],
        ['boiler.output', line['boiler.outputKilowatts']],
      ]),
    );
    expect(line.recoveryMinutes).toBe((measures.recovery ?? Number.NaN) / 60);
  }
  const whole = (await batch(['study.json'])).out;
  expect(parts.map(({ out }) => out).join('')).toBe(whole);
}, 120_000);

test('a reader that has seen enough is no fault', async () => {
  const { code, err } = await batch(['study.json'], (child) => {
    child.stdout?.once('data', () => child.stdout?.destroy());
  });
  expect({ code, err }).toEqual({ code: 0, err: '' });
}, 60_000);

test('a study that is missing is exit code 2 and one sentence; --measures lists all 61', async () => {
  expect(await batch(['gone.json'])).toEqual({
    code: 2,
    out: '',
    err: 'gone.json: there is no such file or folder; check the name.\n',
  });
  const { out } = await batch(['--measures']);
  const listed = out.trimEnd().split('\n');
  expect(listed).toHaveLength(61);
  for (const [index, { key, label }] of askedRows.entries()) {
    expect(listed[index].trim().split(/\s\s+/)).toEqual([askedFileKey(key), label]);
  }
  expect((await batch(['--help'])).out).toContain('batch STUDY');
}, 60_000);

test('a table of 1 000 000 rows is read to its last one in a heap that a quarter of them would fill', async () => {
  await batch(['--measures']); // built before there is little room
  const rows = `${'1.25,24\n'.repeat(999_999)}1.25,much\n`;
  await writeFile(
    join(folder, 'long.csv'),
    `coil.areaSquareMetres,boiler.outputKilowatts\n${rows}`,
  );
  const study = {
    format: 'reheat-bench study',
    version: 1,
    rows: 'long.csv',
    measures: ['recoveryMinutes'],
  };
  await writeFile(join(folder, 'long.json'), JSON.stringify(study));
  // a row takes 200 bytes and more where it is kept, all of them over 200 MB
  const env = { ...process.env, NODE_OPTIONS: '--max-old-space-size=48' };
  const { code, err } = await batch(['long.json'], () => {}, env);
  expect(err).toBe(
    'long.csv, row 1000000: Boiler output needs a number, such as 24\u00a0kW; “much” is not one.\n',
  );
  expect(code).toBe(2);
}, 60_000);
