import { defaultVariant } from '../fields.ts';
import { fieldInFile, filePathOf } from '../fileKeys.ts';
import { problemsOf } from '../problems.ts';
import { readNumber } from '../problems/parseNumber.ts';
import type { Problem } from '../problems/problem.ts';
import { rangeProblems, settingProblem } from '../problems/ranges.ts';
import { toSI } from '../units.ts';
import { type FieldPath, type Group, groups, type Variant, withSetting } from '../variant.ts';
import { asMeantIn } from './earlierVersions.ts';
import { headingProblem, nameProblem } from './heading.ts';
import { inFile, isObject, kindOf } from './inFile.ts';
import { drawsFromFile } from './ownDraws.ts';
import { unknownGroup, unknownSetting } from './unknown.ts';

/** The name of a variant whose file gives none. */
export const defaultName = 'Cylinder';

/** What reading a file gives: the variant, or everything that has to be put right first. */
export type Reading = { readonly variant: Variant } | { readonly problems: readonly Problem[] };

/** Reads a variant from its file form. */
export function fromFile(file: unknown): Reading {
  if (!isObject(file)) {
    return {
      problems: [
        inFile(
          '',
          'notAnObject',
          `The file must hold one object in braces; it holds ${kindOf(file)}.`,
        ),
      ],
    };
  }
  const heading = headingProblem(file);
  if (heading) return { problems: [heading] };

  const problems: Problem[] = [];
  let variant = asMeantIn(Number(file.version), defaultVariant(defaultName));
  for (const [key, value] of Object.entries(file)) {
    if (key === 'format' || key === 'version') continue;
    if (key === 'name') {
      const problem = nameProblem(value);
      if (problem) problems.push(problem);
      else variant = { ...variant, name: value as string };
    } else if (key === 'ownDraws') {
      const read = drawsFromFile(value);
      if ('problems' in read) problems.push(...read.problems);
      else variant = { ...variant, ownDraws: read.draws };
    } else if (!isGroup(key)) {
      problems.push(unknownGroup(key));
    } else if (!isObject(value)) {
      problems.push(
        inFile(
          key,
          'notAnObject',
          `${key} must hold its settings in braces; it holds ${kindOf(value)}.`,
        ),
      );
    } else {
      for (const [setting, given] of Object.entries(value)) {
        const read = readSetting(key, setting, given);
        if ('message' in read) problems.push(read);
        else variant = withSetting(variant, read.path, read.value);
      }
    }
  }
  if (problems.length > 0) return { problems: [...problems, ...rangeProblems(variant, false)] };
  const others = problemsOf(variant);
  return others.length > 0 ? { problems: others } : { variant };
}

interface Setting {
  readonly path: FieldPath;
  /** SI, or the value of a choice. */
  readonly value: number | string;
}

function readSetting(group: Group, key: string, given: unknown): Setting | Problem {
  const field = fieldInFile(group, key);
  if (!field) return unknownSetting(group, key);
  if (field.kind === 'choice') {
    return settingProblem(field, given) ?? { path: field.path, value: given as string };
  }
  if (typeof given === 'number') return { path: field.path, value: toSI(given, field.unit) };
  if (typeof given === 'string') {
    const read = readNumber(given, field);
    return 'problem' in read ? read.problem : { path: field.path, value: read.value };
  }
  return inFile(
    filePathOf(field),
    'number',
    `${field.label} needs a number; it holds ${kindOf(given)}.`,
    field,
  );
}

function isGroup(key: string): key is Group {
  return (groups as readonly string[]).includes(key);
}
