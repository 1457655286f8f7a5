import { spaced } from '../format.ts';
import { type Asked, askedFileKey, askedInFile, askedRows } from '../asked.ts';
import { type Axis, pointCount } from '../grid.ts';
import { nearest } from '../nearest.ts';
import type { Problem } from '../problems/problem.ts';
import { readAxis } from './gridAxis.ts';
import { clipped, inFile, isObject, kindOf } from './inFile.ts';
import { readJson } from './json.ts';

/** What stands under `format` in the file of a study over settings. */
export const studyFormat = 'reheat-bench study';
/** The version of that form. */
export const studyVersion = 1;
/** More than any machine gets through in a week. Engineering guess, no source. */
export const MOST_ROWS = 10_000_000;

/** A study over settings as its file has it: what it starts from is still to be found. */
export interface BatchStudy {
  readonly base: BaseWish;
  /** The settings of a grid, or the file with a row of settings for each point. */
  readonly points: { readonly axes: readonly Axis[] } | { readonly rows: string };
  readonly measures: readonly Asked[];
}

/** A file or an example, or neither for the defaults; and settings put over it. */
export interface BaseWish {
  readonly file: string | null;
  readonly example: string | null;
  /** Groups of settings in the form of a variant's file. */
  readonly settings: Readonly<Record<string, unknown>>;
}

/** A study, or everything that has to be put right in it first. */
export type StudyRead = { readonly study: BatchStudy } | { readonly problems: readonly Problem[] };

/** Reads the text of a study. */
export function readStudy(text: string): StudyRead {
  const read = readJson(text, 'one study');
  if ('problem' in read) return { problems: [read.problem] };
  const file = read.value;
  if (!isObject(file)) {
    const message = `The file must hold one object in braces; it holds ${kindOf(file)}.`;
    return { problems: [inFile('', 'notAnObject', message)] };
  }
  const heading = headingProblem(file);
  if (heading) return { problems: [heading] };

  const problems: Problem[] = [];
  for (const key of Object.keys(file)) {
    if (!keys.includes(key)) problems.push(unknownKey('', key, keys));
  }
  const base = readBase(file.base, problems);
  const points = readPoints(file, problems);
  const measures = readMeasures(file.measures, problems);
  return problems.length > 0 || points === null
    ? { problems }
    : { study: { base, points, measures } };
}

function headingProblem({ format, version }: Record<string, unknown>): Problem | null {
  if (format !== studyFormat) {
    const message = `This is not a study of Reheat Bench: its "format" must be "${studyFormat}".`;
    return inFile('format', 'format', message);
  }
  if (version === studyVersion) return null;
  const newer = typeof version === 'number' && version > studyVersion;
  const advice = newer
    ? `it was made for a newer Reheat Bench, and this one reads version ${studyVersion}.`
    : `it must be ${studyVersion}.`;
  const given = JSON.stringify(version) ?? 'missing';
  return inFile('version', 'version', `The file has version ${given}: ${advice}`);
}

function readBase(given: unknown, problems: Problem[]): BaseWish {
  const nothing = { file: null, example: null, settings: {} };
  if (given === undefined) return nothing;
  if (!isObject(given)) {
    const message = `base must hold "file", "example" or "settings" in braces; it holds ${kindOf(given)}.`;
    problems.push(inFile('base', 'notAnObject', message));
    return nothing;
  }
  for (const key of Object.keys(given)) {
    if (!baseKeys.includes(key)) problems.push(unknownKey('base.', key, baseKeys));
  }
  const { file, example, settings } = given;
  for (const [key, value] of Object.entries({ file, example })) {
    if (value === undefined || (typeof value === 'string' && value !== '')) continue;
    const message = `base.${key} must be a name in quotes; it holds ${kindOf(value)}.`;
    problems.push(inFile(`base.${key}`, 'name', message));
  }
  if (file !== undefined && example !== undefined) {
    const message = 'base starts from a file or from an example; leave out one of them.';
    problems.push(inFile('base', 'twoStarts', message));
  }
  if (settings !== undefined && !isObject(settings)) {
    const message = `base.settings must hold groups of settings in braces; it holds ${kindOf(settings)}.`;
    problems.push(inFile('base.settings', 'notAnObject', message));
  }
  return {
    file: typeof file === 'string' ? file : null,
    example: typeof example === 'string' ? example : null,
    settings: isObject(settings) ? settings : {},
  };
}

function readPoints(
  { grid, rows }: Record<string, unknown>,
  problems: Problem[],
): BatchStudy['points'] | null {
  const no = (field: string, code: string, message: string) => {
    problems.push(inFile(field, code, message));
    return null;
  };
  if ((grid === undefined) === (rows === undefined)) {
    return no('grid', 'points', 'The study needs "grid" or "rows": one of the two, and not both.');
  }
  if (rows !== undefined) {
    return typeof rows === 'string' && rows !== ''
      ? { rows }
      : no(
          'rows',
          'name',
          `rows must be the name of a CSV file in quotes; it holds ${kindOf(rows)}.`,
        );
  }
  if (!isObject(grid) || Object.keys(grid).length === 0) {
    const got = isObject(grid) ? 'nothing' : kindOf(grid);
    return no('grid', 'notAnObject', `grid must hold settings in braces; it holds ${got}.`);
  }
  const before = problems.length;
  const axes = Object.entries(grid).flatMap(([key, given]) => {
    const read = readAxis(key, given);
    if ('axis' in read) return [read.axis];
    problems.push(...read.problems);
    return [];
  });
  if (problems.length > before) return null;
  const count = pointCount({ axes });
  if (count > MOST_ROWS) return no('grid', 'tooMany', tooManyRows('The grid', count));
  return { axes };
}

/** The sentence on a study that is too long. @param count  null where they were not all counted */
export function tooManyRows(what: string, count: number | null, most = MOST_ROWS): string {
  const limit = spaced(most);
  const has =
    count === null
      ? `more than ${limit} rows`
      : `${spaced(count)} rows; at most ${limit} are computed`;
  return `${what} has ${has}: split it into several studies.`;
}

function readMeasures(given: unknown, problems: Problem[]): Asked[] {
  if (!Array.isArray(given) || given.length === 0) {
    const got = Array.isArray(given) ? 'none' : given === undefined ? 'nothing' : kindOf(given);
    const message = `measures must hold a list of names, such as ["recoveryMinutes"]; it holds ${got}.`;
    problems.push(inFile('measures', 'notAList', message));
    return [];
  }
  return given.flatMap((name: unknown, index) => {
    const place = `measures[${index}]`;
    const asked = typeof name === 'string' ? askedInFile(name) : undefined;
    if (asked === undefined) {
      problems.push(typeof name === 'string' ? unknownMeasure(place, name) : notAName(place, name));
      return [];
    }
    if (given.indexOf(name) === index) return [asked];
    problems.push(inFile(place, 'twice', `${askedFileKey(asked)} is asked twice.`));
    return [];
  });
}

function notAName(place: string, given: unknown): Problem {
  const message = `a measure is named in quotes; it holds ${kindOf(given)}.`;
  return inFile(place, 'name', message);
}

function unknownMeasure(place: string, name: string): Problem {
  const all = askedRows.map(({ key }) => askedFileKey(key));
  // the right word without its unit, or with another one
  const meant = askedRows.find(({ key }) => new RegExp(`^${key}([A-Z]|$)`).test(name));
  const near = meant ? askedFileKey(meant.key) : nearest(name, all);
  const hint = near ? `the nearest is ${near}` : 'reheat batch --measures lists them';
  return inFile(place, 'unknown', `${clipped(name)} is not a measure; ${hint}.`);
}

function unknownKey(before: string, key: string, known: readonly string[]): Problem {
  const path = `${before}${clipped(key)}`;
  const near = nearest(key, known);
  const hint = near ? `the nearest is ${before}${near}` : `there are ${known.join(', ')}`;
  return inFile(path, 'unknown', `${path} is not a part of a study; ${hint}.`);
}

const keys: readonly string[] = ['format', 'version', 'name', 'base', 'grid', 'rows', 'measures'];
const baseKeys: readonly string[] = ['file', 'example', 'settings'];
