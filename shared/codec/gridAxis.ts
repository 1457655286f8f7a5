import type { Field } from '../fields/row.ts';
import { type Axis, evenAxis } from '../grid.ts';
import type { Problem } from '../problems/problem.ts';
import { settingProblem } from '../problems/ranges.ts';
import { toSI } from '../units.ts';
import { clipped, inFile, isObject, kindOf } from './inFile.ts';
import { settingFromText, settingNamed } from './settingInFile.ts';

/** An axis, or everything that has to be put right in it first. */
export type AxisRead = { readonly axis: Axis } | { readonly problems: readonly Problem[] };

/** Reads one setting of a grid. @param key  `coil.areaSquareMetres` @param given  a list, or `{ from, to, count }` */
export function readAxis(key: string, given: unknown): AxisRead {
  const place = `grid.${clipped(key)}`;
  const named = settingNamed(key, 'grid');
  if ('problem' in named) return { problems: [named.problem] };
  const { field } = named;
  const problems: Problem[] = [];
  const no = (code: string, message: string) => problems.push(inFile(place, code, message));
  const values = Array.isArray(given) ? listed(given, field, no) : evenSteps(given, field, no);
  for (const value of values ?? []) {
    const problem = settingProblem(field, value);
    if (problem) no(problem.code, problem.message);
  }
  if (values !== null && new Set(values).size < values.length) {
    no('twice', `${field.label} has one value twice.`);
  }
  return problems.length > 0 || values === null
    ? { problems: problems.slice(0, 1) }
    : { axis: { path: field.path, values } };
}

type No = (code: string, message: string) => void;

function listed(given: readonly unknown[], field: Field, no: No): (number | string)[] | null {
  if (given.length === 0 || given.length > MOST_VALUES) {
    no('count', `The list must hold 1 to ${MOST_VALUES} values; it holds ${given.length}.`);
    return null;
  }
  return given.flatMap((value: unknown) => {
    if (typeof value === 'number' && field.kind === 'number') return [toSI(value, field.unit)];
    if (typeof value !== 'string') {
      no('value', `${field.label}: ${kindOf(value)} is not ${needed(field)}.`);
      return [];
    }
    const read = settingFromText(value, field);
    if ('value' in read) return [read.value];
    no('value', read.message);
    return [];
  });
}

function evenSteps(given: unknown, field: Field, no: No): readonly (number | string)[] | null {
  if (!isObject(given) || field.kind === 'choice') {
    no('notAList', `${field.label} needs ${shape(field)}; it holds ${kindOf(given)}.`);
    return null;
  }
  const strange = Object.keys(given).find((key) => !['from', 'to', 'count'].includes(key));
  if (strange !== undefined) {
    no('unknown', `${clipped(strange)} is not a part of it; there are from, to, count.`);
    return null;
  }
  const { count } = given;
  if (!Number.isInteger(count) || Number(count) < 2 || Number(count) > MOST_VALUES) {
    no('count', `count must be a whole number from 2 to ${MOST_VALUES}; it is ${said(count)}.`);
    return null;
  }
  const ends = [given.from, given.to].map((end, index) => shownEnd(end, index, no));
  if (ends.some((end) => end === null)) return null;
  return evenAxis(field.path, Number(ends[0]), Number(ends[1]), Number(count)).values;
}

/** One end, in the unit that is shown. */
function shownEnd(given: unknown, index: number, no: No): number | null {
  if (typeof given === 'number') return given;
  const name = index === 0 ? 'from' : 'to';
  no('number', `${name} must be a number, the unit standing in the key; it is ${said(given)}.`);
  return null;
}

function said(given: unknown): string {
  return given === undefined ? 'missing' : kindOf(given);
}

function needed(field: Field): string {
  return field.kind === 'number' ? 'a number' : 'one of its words in quotes';
}

function shape(field: Field): string {
  return field.kind === 'choice'
    ? 'a list of its words'
    : 'a list of numbers, or from, to and count';
}

/** Of one setting. Engineering guess, no source. */
const MOST_VALUES = 100_000;
