import { fieldsOf, keyOf } from '../fields.ts';
import { drawColumns } from '../fields/ownDraw.ts';
import { drawKeyOf, fieldInFile, fileKeyOf } from '../fileKeys.ts';
import { nearest } from '../nearest.ts';
import type { Problem } from '../problems/problem.ts';
import { type Group, groups } from '../variant.ts';
import { clipped, inFile } from './inFile.ts';

/** The problem of a key that is no part of a variant. */
export function unknownGroup(key: string): Problem {
  const known = ['name', ...groups, 'ownDraws'];
  const near = nearest(key, known);
  const hint = near ? `; the nearest is ${near}` : `; there are ${known.join(', ')}`;
  return inFile(clipped(key), 'unknown', `${clipped(key)} is not a part of a variant${hint}.`);
}

/** The problem of a key that is no setting of its group; names the nearest that is. */
export function unknownSetting(group: Group, key: string): Problem {
  const path = `${group}.${clipped(key)}`;
  const own = fieldsOf(group);
  const otherUnit = own.find(
    (field) => field.kind === 'number' && isWithOtherUnit(key, keyOf(field)),
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

/** The problem of a key that is no part of a draw, and the key that was meant, if one is near. @param place  of the draw */
export function unknownInDraw(
  place: string,
  key: string,
): { readonly problem: Problem; readonly meant: string | undefined } {
  const path = `${place}.${clipped(key)}`;
  const keys = drawColumns.map(drawKeyOf);
  const otherUnit = drawColumns.find(
    (column) => column.kind === 'number' && isWithOtherUnit(key, column.key),
  );
  const meant = otherUnit ? drawKeyOf(otherUnit) : nearest(key, keys);
  const hint = meant ? `; the nearest is ${place}.${meant}` : `; a draw has ${keys.join(', ')}`;
  return { problem: inFile(path, 'unknown', `${path} is not a setting${hint}.`), meant };
}

/** Whether a key is the right word with another unit behind it, or with none. */
function isWithOtherUnit(key: string, word: string): boolean {
  return new RegExp(`^${word}([A-Z]|$)`).test(key);
}

/** A list, or its beginning and how many more there are. */
function someOf(keys: readonly string[]): string {
  if (keys.length <= MOST_NAMED) return keys.join(', ');
  return `${keys.slice(0, MOST_NAMED).join(', ')} and ${keys.length - MOST_NAMED} more`;
}

const MOST_NAMED = 6;
