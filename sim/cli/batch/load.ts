import { dirname, isAbsolute, join } from 'node:path';
import { fromText, toFile } from '../../../shared/codec.ts';
import { type BaseWish, readStudy } from '../../../shared/codec/batchStudy.ts';
import { defaultName, fromFile } from '../../../shared/codec/fromFile.ts';
import { isObject } from '../../../shared/codec/inFile.ts';
import { defaultVariant } from '../../../shared/fields.ts';
import { nearest } from '../../../shared/nearest.ts';
import { presetNamed, presets, presetVariant } from '../../../shared/presets.ts';
import type { Asked } from '../../../shared/asked.ts';
import type { Variant } from '../../../shared/variant.ts';
import { nameOf, readInput } from '../read.ts';
import { gridPoints, type Points, tablePoints } from './points.ts';

/** A study with everything it names found. */
export interface Loaded {
  readonly base: Variant;
  readonly points: Points;
  readonly measures: readonly Asked[];
}

type OrProblems<T> = T | { readonly problems: readonly string[] };

/** Reads a study and the files it names, which stand relative to it. @param path  or `-` for standard input */
export async function loadStudy(path: string): Promise<OrProblems<Loaded>> {
  const input = await readInput(path);
  if ('problem' in input) return { problems: [input.problem] };
  const read = readStudy(input.text);
  if ('problems' in read) return { problems: read.problems.map(saidIn(nameOf(path))) };
  const { study } = read;
  const folder = path === '-' ? '.' : dirname(path);
  const base = await loadBase(study.base, folder);
  if ('problems' in base) return base;
  const points =
    'axes' in study.points
      ? gridPoints(study.points.axes)
      : await tablePoints(beside(folder, study.points.rows));
  if ('problems' in points) return points;
  return { base, points, measures: study.measures };
}

async function loadBase(wish: BaseWish, folder: string): Promise<OrProblems<Variant>> {
  const start = await startOf(wish, folder);
  if ('problems' in start || Object.keys(wish.settings).length === 0) return start;
  const file = toFile(start);
  for (const [group, settings] of Object.entries(wish.settings)) {
    const before = file[group];
    file[group] = isObject(before) && isObject(settings) ? { ...before, ...settings } : settings;
  }
  const read = fromFile(file);
  return 'variant' in read
    ? read.variant
    : { problems: read.problems.map(({ field, message }) => `base.settings.${field}: ${message}`) };
}

async function startOf({ file, example }: BaseWish, folder: string): Promise<OrProblems<Variant>> {
  if (example !== null) {
    const preset = presetNamed(example);
    if (preset) return presetVariant(preset);
    const keys = presets.map(({ key }) => key);
    const near = nearest(example, keys);
    const hint = near ? `the nearest is ${near}` : `there are ${keys.join(', ')}`;
    return { problems: [`base.example: There is no example “${example}”; ${hint}.`] };
  }
  if (file === null) return defaultVariant(defaultName);
  const path = beside(folder, file);
  const input = await readInput(path);
  if ('problem' in input) return { problems: [`base.file: ${input.problem}`] };
  const read = fromText(input.text);
  return 'variant' in read ? read.variant : { problems: read.problems.map(saidIn(file)) };
}

/** The path of a file that is named in another of this folder. */
function beside(folder: string, name: string): string {
  return isAbsolute(name) ? name : join(folder, name);
}

const saidIn =
  (file: string) =>
  ({ field, message }: { readonly field: string; readonly message: string }): string =>
    field === '' ? `${file}: ${message}` : `${file}: ${field}: ${message}`;
