import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Writable } from 'node:stream';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Asked, askedFileKey, askedFileValue } from '../../../../shared/asked.ts';
import { toText } from '../../../../shared/codec.ts';
import { variantAt } from '../../../../shared/grid.ts';
import { gapSentences } from '../../../../shared/point.ts';
import { presetNamed, presets, presetVariant } from '../../../../shared/presets.ts';
import { withSetting } from '../../../../shared/variant.ts';
import { readBatchArgs } from '../../../../sim/cli/batch/args.ts';
import { batch } from '../../../../sim/cli/batch/batch.ts';
import type { Crew } from '../../../../sim/cli/batch/crew.ts';
import { computeRows, type Done, type Task } from '../../../../sim/cli/batch/rows.ts';
import { pointOf } from '../../../../sim/run/pointOf.ts';
import { toEnd } from '../../../../sim/run/toEnd.ts';

let folder = '';
const at = (name: string) => join(folder, name);
const house = presetVariant(presetNamed('healthy-house') ?? presets[0]);
const outputs = [12, 18, 24, 30];
const scales = [0, 0.5, 1];
const measures: readonly Asked[] = ['recovery', 'usableAtCall', 'usableAtSatisfied'];
const study = {
  format: 'reheat-bench study',
  version: 1,
  base: { example: 'healthy-house', settings: { run: { durationHours: 0.75 } } },
  grid: { 'coil.scaleThicknessMillimetres': scales, 'boiler.outputKilowatts': outputs },
  measures: measures.map(askedFileKey),
};

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'reheat-'));
  await writeFile(at('study.json'), JSON.stringify(study));
});
afterAll(() => rm(folder, { recursive: true }));

/** Computes in this thread, later tasks sooner than earlier ones. */
function crewOf(compute: (task: Task) => Done = computeRows, program = 'this') {
  let tasks = 0;
  const crew: Crew = {
    workers: 2,
    program,
    compute: async (task) => {
      tasks++;
      await new Promise((settle) => setTimeout(settle, Math.max(0, 20 - task.from)));
      return compute(task);
    },
    dismiss: async () => {},
  };
  return { crew, tasks: () => tasks };
}

/** Runs a batch; gives what it wrote to the streams. */
async function run(args: readonly string[], { crew } = crewOf(), isTTY = false) {
  const command = readBatchArgs(args);
  if ('problems' in command) return { out: '', err: '', problems: command.problems, early: false };
  if (command.kind !== 'batch') throw new Error(`${command.kind} is not a batch`);
  let out = '';
  let err = '';
  const end = await batch(command, {
    out: new Writable({
      write(piece, _encoding, settle) {
        out += piece;
        settle();
      },
    }),
    err: {
      isTTY,
      write: (text) => {
        err += text;
      },
    },
    crew: async () => crew,
  });
  return { out, err, ...end };
}

const objects = (text: string) =>
  text
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));

describe('rows', () => {
  test('12 come in order, each with the bits of its point and why a value is missing', async () => {
    const { out, problems, early } = await run([at('study.json')]);
    expect(problems).toEqual([]);
    expect(early).toBe(false);
    const rows = objects(out);
    expect(rows.map(({ row }) => row)).toEqual(Array.from({ length: 12 }, (_, i) => i + 1));
    const grid = {
      base: withSetting(house, 'run.duration', 2700),
      axes: [
        { path: 'coil.scaleThickness', values: scales.map((thickness) => thickness * (1 / 1000)) },
        { path: 'boiler.output', values: outputs.map((output) => output * 1000) },
      ],
      measures,
    } as const;
    let missing = 0;
    for (const [index, row] of rows.entries()) {
      const point = toEnd(pointOf(variantAt(grid, index), measures));
      for (const [place, key] of measures.entries()) {
        expect(row[askedFileKey(key)]).toBe(askedFileValue(key, point.values[place]));
      }
      expect(row.note).toBe(gapSentences(point).join(' '));
      if (row.recoveryMinutes === null) missing++;
      expect(row['boiler.outputKilowatts']).toBe(outputs[index % 4]);
      expect(row['coil.scaleThicknessMillimetres']).toBe(scales[Math.floor(index / 4)]);
    }
    expect(missing).toBeGreaterThan(0);
    expect(missing).toBeLessThan(12);
  });

  test('comma-separated they are the same numbers under a header', async () => {
    const rows = objects((await run([at('study.json')])).out);
    const { out } = await run([at('study.json'), '--format', 'csv']);
    const [head, ...lines] = out.trimEnd().split('\n');
    expect(head).toBe(Object.keys(rows[0]).join(','));
    for (const [index, line] of lines.entries()) {
      const cells = line.split(',');
      expect(cells[4]).toBe(String(rows[index].recoveryMinutes ?? ''));
      expect(Number(cells[6])).toBe(rows[index].usableAtSatisfiedLitres ?? 0);
    }
  });

  test('a table of settings: an empty cell leaves the base, and bad settings are said in their row', async () => {
    await writeFile(at('house.json'), toText(house));
    await writeFile(at('rows.csv'), 'stat.setPointCelsius,coil.areaSquareMetres\n,\n500,\n55,\n');
    const { grid: _, ...rest } = study;
    await writeFile(
      at('table.json'),
      JSON.stringify({ ...rest, base: { file: 'house.json' }, rows: 'rows.csv' }),
    );
    const rows = objects((await run([at('table.json')])).out);
    expect(rows.map((row) => row['stat.setPointCelsius'])).toEqual([60, 500, 55]);
    expect(rows[0].recoveryMinutes).toBe(
      askedFileValue('recovery', toEnd(pointOf(house, ['recovery'])).values[0]),
    );
    expect(rows[1].recoveryMinutes).toBeNull();
    expect(rows[1].note).toMatch(/Set-point must be between .* it is 500/);
    expect(rows[2].recoveryMinutes).toBeLessThan(rows[0].recoveryMinutes);
  });

  test('cautions are counted and said once each, none of them in the rows', async () => {
    const { out, err } = await run([at('study.json')]);
    expect(err).toMatch(/^Cautions\n {2}- Hot water scalds: the store reaches 60\.0/);
    expect(err.match(/Unvented cylinder/g)).toHaveLength(1);
    expect(out).not.toContain('scalds');
  });

  test('a run that ended early is kept in mind, in this command and in the one that resumes it', async () => {
    const ended = crewOf((task) => {
      const done = computeRows(task);
      const text = done.text.replace(/"note":.*/, '"note":"The run ended early, after 5 min."}');
      return { ...done, text, early: 1 };
    });
    const args = [at('study.json'), '--out', at('early.ndjson'), '--resume'];
    expect((await run(args, ended)).early).toBe(true);
    expect((await run(args)).early).toBe(true);
  });
});

describe('a file of rows', () => {
  test('cut after any number of bytes and resumed is the same file; what is whole is not done again', async () => {
    for (const form of ['csv', 'ndjson']) {
      const whole = at(`whole.${form}`);
      const cut = at(`cut.${form}`);
      await run([at('study.json'), '--out', whole]);
      const bytes = await readFile(whole);
      const lines = (length: number) => bytes.subarray(0, length).toString().split('\n').length - 1;
      const heads = form === 'csv' ? 1 : 0;
      for (const length of [0, 1, 40, 400, 401, 1200, bytes.length - 1, bytes.length]) {
        await writeFile(cut, bytes.subarray(0, length));
        let computed = 0;
        const counting = crewOf((task) => {
          computed += task.rows.length;
          return computeRows(task);
        });
        const { problems } = await run([at('study.json'), '--out', cut, '--resume'], counting);
        expect(problems).toEqual([]);
        expect((await readFile(cut)).equals(bytes), `${form} cut after ${length} bytes`).toBe(true);
        expect(computed).toBe(12 - Math.max(0, lines(length) - heads));
      }
    }
  }, 60_000);

  test('keeps its whole rows when a worker fails, and is gone on with', async () => {
    const out = at('failed.ndjson');
    const failing = crewOf((task) => {
      if (task.from > 8) throw new Error('a worker was lost');
      return computeRows(task);
    });
    await expect(run([at('study.json'), '--out', out], failing)).rejects.toThrow('was lost');
    expect(objects(await readFile(out, 'utf8'))).toHaveLength(8);
    await run([at('study.json'), '--out', out, '--resume']);
    expect(await readFile(out, 'utf8')).toBe((await run([at('study.json')])).out);
  });

  test.each([1, 2, 5, 13])('%i parts one after the other are the whole', async (of) => {
    for (const form of ['csv', 'ndjson']) {
      const whole = (await run([at('study.json'), '--format', form])).out;
      let joined = '';
      for (let part = 1; part <= of; part++) {
        joined += (await run([at('study.json'), '--format', form, '--part', `${part}/${of}`])).out;
      }
      expect(joined).toBe(whole);
    }
  });

  test('is not written over, and not gone on with by another study, part or program', async () => {
    const out = at('kept.ndjson');
    await run([at('study.json'), '--out', out]);
    const before = await readFile(out, 'utf8');
    expect((await run([at('study.json'), '--out', out])).problems).toEqual([
      `${out}: the file is not empty; --resume goes on with it, or name another file.`,
    ]);
    const strange = `${out}: line 1 is not the row of this study that belongs there: the file was written for another study or part, or by another version; name another file.`;
    const resume = [at('study.json'), '--out', out, '--resume'];
    expect((await run([...resume, '--part', '2/2'])).problems).toEqual([strange]);
    expect((await run(resume, crewOf(computeRows, 'another'))).problems).toEqual([strange]);
    await writeFile(at('other.json'), JSON.stringify({ ...study, base: {} }));
    const other = [at('other.json'), '--out', out, '--resume'];
    expect((await run(other)).problems).toEqual([strange]);
    expect(await readFile(out, 'utf8')).toBe(before);
  });

  test('that cannot be written is one sentence', async () => {
    const out = join(folder, 'nowhere', 'rows.csv');
    expect((await run([at('study.json'), '--out', out])).problems).toEqual([
      `${out}: there is no such file or folder; check the name.`,
    ]);
  });
});

describe('what is wrong', () => {
  test.each([
    [[], 'Name one study, or - for standard input; none was given. batch --help says more.'],
    [['a', 'b'], 'Name one study, or - for standard input; there are 2. batch --help says more.'],
    [['a', '--resume'], '--resume goes on with a file of rows; name it with --out.'],
    [['a', '--part', '3/2'], '--part is written as 2/5, part 2 of 5; “3/2” is not one.'],
    [['a', '--part', '0/2'], '--part is written as 2/5, part 2 of 5; “0/2” is not one.'],
    [['a', '--format', 'xml'], '--format is ndjson or csv; “xml” is neither.'],
    [['a', '--jobs', '0'], '--jobs is a count of workers from 1 to 256; “0” is not one.'],
    [['a', '--out'], '--out needs the name of a file to write after it.'],
    [['a', '--resum'], '--resum is not an option of batch; the nearest is --resume.'],
    [['a', '--resume=yes', '--out', 'b'], '--resume takes no value; it has “yes”.'],
  ])('batch %j', (args, sentence) => {
    expect(readBatchArgs(args)).toEqual({ problems: [sentence] });
  });

  test.each([
    [
      { base: { example: 'healthy-hous' } },
      'base.example: There is no example “healthy-hous”; the nearest is healthy-house.',
    ],
    [
      { base: { settings: { boiler: { outputWatts: 1 } } } },
      'base.settings.boiler.outputWatts: boiler.outputWatts is not a setting; the nearest is boiler.outputKilowatts.',
    ],
    [
      { base: { file: 'gone.json' } },
      /^base\.file: .*gone\.json: there is no such file or folder; check the name\.$/,
    ],
    [
      { grid: undefined, rows: 'gone.csv' },
      /gone\.csv: there is no such file or folder; check the name\.$/,
    ],
    [
      { measures: ['recovery'] },
      /bad\.json: measures\[0\]: recovery is not a measure; the nearest is recoveryMinutes\.$/,
    ],
  ])('a study with %j', async (change, sentence) => {
    await writeFile(at('bad.json'), JSON.stringify({ ...study, ...change }));
    const { problems } = await run([at('bad.json')]);
    expect(problems).toHaveLength(1);
    if (typeof sentence === 'string') expect(problems[0]).toBe(sentence);
    else expect(problems[0]).toMatch(sentence);
  });
});

test('a terminal is shown a bar that goes away; nobody else is', async () => {
  const { err } = await run([at('study.json')], crewOf(), true);
  expect(err).toMatch(/^\r\[\.{30}\] 0 of 12 rows/);
  expect(err).toContain('\r\u001b[K');
  expect((await run([at('study.json')])).err).not.toContain('\r');
});
