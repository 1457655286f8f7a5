import type { Field } from '../fields/row.ts';
import { fieldInFile } from '../fileKeys.ts';
import { nearest } from '../nearest.ts';
import { readNumber } from '../problems/parseNumber.ts';
import type { Problem } from '../problems/problem.ts';
import { settingProblem } from '../problems/ranges.ts';
import { type Group, groups } from '../variant.ts';
import { clipped, inFile } from './inFile.ts';
import { unknownSetting } from './unknown.ts';

/** The setting of a path in a file, `coil.areaSquareMetres`, or why there is none. @param place  where the path stands */
export function settingNamed(
  path: string,
  place: string,
): { readonly field: Field } | { readonly problem: Problem } {
  const dot = path.indexOf('.');
  const group = path.slice(0, Math.max(0, dot));
  if (!(groups as readonly string[]).includes(group)) {
    const near = dot < 0 ? undefined : nearest(group, groups);
    const hint = near
      ? `the nearest group is ${near}`
      : 'a setting is named with its group and unit, such as coil.areaSquareMetres';
    const message = `${clipped(path)} is not a setting; ${hint}.`;
    return { problem: inFile(place, 'unknown', message) };
  }
  const key = path.slice(dot + 1);
  const field = fieldInFile(group as Group, key);
  if (field) return { field };
  const { code, message } = unknownSetting(group as Group, key);
  return { problem: inFile(place, code, message) };
}

/** A setting as text: SI or a choice, or why it is none. Limits are not looked at. */
export function settingFromText(
  text: string,
  field: Field,
): { readonly value: number | string } | { readonly message: string } {
  if (field.kind === 'choice') {
    const problem = settingProblem(field, text);
    return problem ? { message: problem.message } : { value: text };
  }
  const read = readNumber(text, field);
  return 'problem' in read ? { message: read.problem.message } : { value: read.value };
}
