import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { cautionsOf } from '../../../shared/cautions.ts';
import { toFile, toText } from '../../../shared/codec.ts';
import { fields } from '../../../shared/fields.ts';
import { clock, measureText, shown } from '../../../shared/format.ts';
import { presets, presetVariant } from '../../../shared/presets.ts';
import {
  type Measures,
  measureRows,
  type Quantity,
  quantities,
  type Result,
} from '../../../shared/result.ts';
import { plain, plainFinding } from '../../../shared/sentences.ts';
import { dayFinding } from '../../../shared/sentences/day.ts';
import { dayMeasureGroups } from '../../../shared/sentences/dayMeasures.ts';
import { fromSI, units } from '../../../shared/units.ts';
import { answer } from '../../../sim/cli/run.ts';
import { dayRun } from '../../../sim/run/day.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { toEnd } from '../../../sim/run/toEnd.ts';

let folder = '';
let file = '';
const worked = presetVariant(presets[0]);
const result = simulateToEnd(worked);
const flat = (text: string) => text.replace(/\s+/g, ' ');

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'reheat-'));
  file = join(folder, 'worked.json');
  await writeFile(file, toText(worked));
});

afterAll(() => rm(folder, { recursive: true }));

describe('the report of a run', () => {
  test('has the finding, all 36 measures as the screen prints them, and every caution', async () => {
    const { out, problems, exitCode } = await answer([file]);
    expect(problems).toEqual([]);
    expect(exitCode).toBe(0);
    expect(flat(out)).toContain(flat(plainFinding(result)));
    const keys = Object.keys(measureRows) as (keyof Measures)[];
    expect(keys).toHaveLength(36);
    for (const key of keys) {
      const text =
        result.measures[key] === null ? 'not reached' : measureText(key, result.measures[key]);
      expect(flat(out)).toContain(flat(`${measureRows[key].label} ${text}`));
    }
    const cautions = cautionsOf(worked, result);
    expect(cautions.length).toBeGreaterThanOrEqual(5);
    for (const { text } of cautions) expect(flat(out)).toContain(flat(text));
  });

  test('says the standing loss of 75.0 W, its class, and 2 limits', async () => {
    const { out } = await answer([file]);
    const section = flat(/Standing loss of the cylinder\n(.*?)\n\n/s.exec(out)?.[1] ?? '');
    expect(section.trim()).toBe(
      'with the store 45 K above the air 75.0 W for each kelvin 1.67 W/K ' +
        'on the energy label class C (B below 62.3 W) ' +
        'limit for new cylinders, European Union 87.4 W ' +
        'guide of the United Kingdom 2.30 kWh/24 h',
    );
  });

  test('keeps its lines to 100 characters', async () => {
    for (const line of (await answer([file])).out.split('\n')) {
      expect(line.length, line).toBeLessThanOrEqual(100);
    }
  });

  test('gives the same text twice, letter for letter', async () => {
    expect((await answer([file])).out).toBe((await answer([file])).out);
  });
});

describe('--json', () => {
  test('prints the variant, the finding and each measure with its unit in the key', async () => {
    const printed = JSON.parse((await answer(['--json', file])).out);
    expect(printed.variant).toEqual(toFile(worked));
    expect(printed.finding.join(' ')).toBe(plainFinding(result));
    expect(printed.measures.recoveryMinutes * 60).toBeCloseTo(result.measures.recovery ?? 0, 9);
    expect(printed.measures.usableAtCallLitres).toBeNull();
    expect(Object.keys(printed.measures)).toHaveLength(36);
    expect(printed.outcome).toEqual({ kind: 'finished', atMinutes: 120 });
    expect(printed.balance.residualKilowattHours).toBe(result.balance.residual / 3_600_000);
  });

  test('prints every quantity and all 48 layers, as many values as samples, null for NaN', async () => {
    const { trace } = JSON.parse((await answer([file, '--json'])).out);
    expect(Object.keys(trace)).toHaveLength(1 + Object.keys(quantities).length + 48);
    for (const values of Object.values(trace)) expect(values).toHaveLength(result.trace.samples);
    const coilInlet = Array.from(result.trace.of.coilInlet);
    expect(coilInlet.some(Number.isNaN)).toBe(true);
    expect(trace.coilInletCelsius).toEqual(coilInlet.map((v) => (Number.isNaN(v) ? null : v)));
  });
});

describe('--csv', () => {
  test('writes one row for each sample, units in the headers, every digit kept', async () => {
    const csv = join(folder, 'traces.csv');
    expect((await answer([file, '--csv', csv])).exitCode).toBe(0);
    const [header, ...rows] = (await readFile(csv, 'utf8')).trimEnd().split('\n');
    const keys = header.split(',');
    expect(rows).toHaveLength(result.trace.samples);
    expect(keys.slice(0, 2)).toEqual(['timeMinutes', 'sensorCelsius']);
    expect(keys.at(-1)).toBe('layer47Celsius');
    for (const quantity of Object.keys(quantities) as Quantity[]) {
      const { suffix, factor } = units[quantities[quantity].unit];
      const column = keys.indexOf(quantity + suffix);
      const read = rows.map((row) => row.split(',')[column]);
      const inside = Array.from(result.trace.of[quantity], (value) =>
        Number.isNaN(value) ? '' : String(value / factor),
      );
      expect(read).toEqual(inside);
    }
  });

  test('a folder that is not there gets 1 sentence and exit code 2, and nothing is printed', async () => {
    const csv = join(folder, 'nowhere', 'traces.csv');
    const { out, problems, exitCode } = await answer([file, '--csv', csv]);
    expect([out, exitCode]).toEqual(['', 2]);
    expect(problems).toEqual([`${csv}: there is no such file or folder; check the name.`]);
  });
});

describe('other answers', () => {
  test('--examples lists 28 examples, and --example prints each so that it can be run', async () => {
    const { out } = await answer(['--examples']);
    expect(out.trimEnd().split('\n')).toHaveLength(28);
    for (const preset of presets) {
      expect(out).toContain(preset.description);
      expect((await answer(['--example', preset.key])).out).toBe(toText(presetVariant(preset)));
    }
  });

  test('--settings prints one row for each setting under 2 rows of heading', async () => {
    const lines = (await answer(['--settings'])).out.trimEnd().split('\n');
    expect(lines).toHaveLength(fields.length + 2);
    expect(lines[3]).toBe('| `boiler.outputKilowatts` | Boiler output | 1 to 100 kW | 24 |');
  });

  test('--help names the 4 exit codes and the cautions', async () => {
    const { out, exitCode } = await answer(['--help']);
    expect(exitCode).toBe(0);
    expect(out).toMatch(/0 done; 1 a fault .* 2 something .* 3 the run\s+ended early/);
    expect(out).toMatch(/scalds.*Legionella/s);
  });

  test.each(['stopped', 'tooManySteps', 'outOfRange'] as const)(
    'a run that ended early (%s, after 12 min) is printed with exit code 3',
    async (kind) => {
      const early = (): Result => ({
        ...result,
        outcome: { kind, at: 720 },
        measures: { ...result.measures, recovery: null },
      });
      const { out, exitCode } = await answer([file], early);
      expect(exitCode).toBe(3);
      expect(flat(out)).toContain('after 12.0 min, before the stat was satisfied.');
    },
  );

  const options =
    'there are --csv, --json, --day, --why, --spread, --variant, --example, --examples, --settings, --ohms, --degrees, --r25, --beta, --tolerance, --help';
  const refused: readonly (readonly [string[], string])[] = [
    [[], 'Name one file, or - for standard input; none was given. --help says more.'],
    [
      ['a.json', 'b.json'],
      'Name one file, or - for standard input; there are 2. --help says more.',
    ],
    [['--jsn', 'a.json'], '--jsn is not an option; the nearest is --json.'],
    [['--frequency', 'a.json'], `--frequency is not an option; ${options}.`],
    [['-x'], `-x is not an option; ${options}.`],
    [['a.json', '--csv'], '--csv needs the name of a file to write after it.'],
    [['--example'], '--example needs a name after it.'],
    [['--json=yes', 'a.json'], '--json takes no value; it has “yes”.'],
    [['--example', 'far-awy'], 'There is no example “far-awy”; the nearest is far-away.'],
    [['nowhere.json'], 'nowhere.json: there is no such file or folder; check the name.'],
    [[tmpdir()], `${tmpdir()}: this is a folder; name a file in it.`],
  ];
  test.each(refused)('%j is refused with 1 sentence and exit code 2', async (args, sentence) => {
    expect(await answer(args)).toEqual({ out: '', problems: [sentence], exitCode: 2 });
  });

  test('3 problems in a file are 3 lines, each starting with its place', async () => {
    const bad = join(folder, 'bad.json');
    await writeFile(
      bad,
      '{"format": "reheat-bench variant", "version": 1, "boiler": {"outputKilowatts": 0}, "stat": {"sensorHeightMetres": 9, "lagHours": 1}}',
    );
    const { problems, exitCode } = await answer([bad]);
    expect(exitCode).toBe(2);
    expect(problems.map((line) => line.slice(0, line.indexOf(':')))).toEqual([
      'stat.lagHours',
      'boiler.outputKilowatts',
      'stat.sensorHeightMetres',
    ]);
  });
});

describe('the day of a variant', () => {
  const day = toEnd(dayRun(worked));

  test('has its finding, each of its 11 draws with its time, all measures there are and every caution', async () => {
    const { out, exitCode } = await answer([file, '--day']);
    expect(exitCode).toBe(0);
    const { heading, summary } = dayFinding(day);
    for (const sentence of [heading, ...summary])
      expect(flat(out)).toContain(flat(plain(sentence)));
    expect(day.draws).toHaveLength(11);
    for (const draw of day.draws) {
      expect(flat(out)).toContain(
        flat(`${clock(draw.from, 1)} ${draw.name} ${shown(draw.volume, 'litre', 1)}`),
      );
    }
    for (const { rows } of dayMeasureGroups(day)) {
      for (const { label, text } of rows) expect(flat(out)).toContain(flat(`${label} ${text}`));
    }
    for (const { text } of cautionsOf(worked, null, day)) expect(flat(out)).toContain(flat(text));
  }, 30_000);

  test('as JSON has the same useful heat and litres, units in the keys', async () => {
    const { out } = await answer([file, '--day', '--json']);
    const read = JSON.parse(out);
    expect(read.format).toBe('reheat-bench day');
    expect(read.measures.usefulKilowattHours).toBeCloseTo(day.measures.useful / 3.6e6, 9);
    expect(read.draws.map((draw: { drawnLitres: number }) => draw.drawnLitres)).toEqual(
      day.draws.map(({ volume }) => fromSI(volume, 'litre')),
    );
    expect(read.trace.timeSeconds ?? Object.values(read.trace)[0]).toHaveLength(day.trace.samples);
    expect(read.cautions.length).toBeGreaterThan(4);
  }, 30_000);

  test('writes its traces as CSV, one line for each sample', async () => {
    const csv = join(folder, 'day.csv');
    await answer([file, '--day', '--csv', csv]);
    const lines = (await readFile(csv, 'utf8')).trim().split('\n');
    expect(lines).toHaveLength(day.trace.samples + 1);
  }, 30_000);

  test('is not asked for together with ohms', async () => {
    const { problems, exitCode } = await answer(['--ohms', '2981', '--day']);
    expect(exitCode).toBe(2);
    expect(problems).toEqual(['--ohms is answered without a file; leave out --day.']);
  });
});
