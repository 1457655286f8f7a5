import { fieldsOf, keyOf } from '../fields.ts';
import { fieldInFile, fileKeyOf } from '../fileKeys.ts';
import { nearest } from '../nearest.ts';
import type { Problem } from '../problems/problem.ts';
import { type Group, groups } from '../variant.ts';
import { clipped, inFile } from './inFile.ts';

/** The problem of a key that is no part of a variant. */
export function unknownGroup(key: string): Problem {
  const near = nearest(key, ['name', ...groups]);
  const hint = near ? `; the nearest is ${near}` : `; there are name, ${groups.join(', ')}`;
  return inFile(clipped(key), 'unknown', `${clipped(key)} is not a part of a variant${hint}.`);
}

/** The problem of a key that is no setting of its group; names the nearest that is. */
export function unknownSetting(group: Group, key: string): Problem {
  const path = `${group}.${clipped(key)}`;
  const own = fieldsOf(group);
  // the right word with another unit behind it, or with none
  const otherUnit = own.find(
    (field) => field.kind === 'number' && new RegExp(`^${keyOf(field)}([A-Z]|$)`).test(key),
  );
  const elsewhere = groups.find((other) => fieldInFile(other, key));
  const near =
    (otherUnit && fileKeyOf(otherUnit)) ??
    (elsewhere ? undefined : nearest(key, own.map(fileKeyOf)));
  const hint = near
    ? `; the nearest is ${group}.${near}`
    : elsewhere
      ? `; ${elsewhere}.${key} is`
      : `; ${group} has ${someOf(own.map(fileKeyOf))}`;
  return inFile(path, 'unknown', `${path} is not a setting${hint}.`);
}

/** A list, or its beginning and how many more there are. */
function someOf(keys: readonly string[]): string {
  if (keys.length <= MOST_NAMED) return keys.join(', ');
  return `${keys.slice(0, MOST_NAMED).join(', ')} and ${keys.length - MOST_NAMED} more`;
}

const MOST_NAMED = 6;
