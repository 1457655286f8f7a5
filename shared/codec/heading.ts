import type { Problem } from '../problems/problem.ts';
import { inFile, kindOf } from './inFile.ts';

/** What stands in a file under `format`. */
export const fileFormat = 'reheat-bench variant';
/** The version of the file form that is written, the newest that is read. */
export const fileVersion = 3;
/** All that are read. */
const versions: readonly unknown[] = [1, 2, fileVersion];
const longestName = 120;

/** The problem of a file that is of another kind or version, or null. */
export function headingProblem(file: Record<string, unknown>): Problem | null {
  if (file.format !== fileFormat) {
    return inFile(
      'format',
      'format',
      `This is not a variant of Reheat Bench: its "format" must be "${fileFormat}".`,
    );
  }
  const version = file.version;
  if (versions.includes(version)) return null;
  const advice =
    typeof version === 'number' && version > fileVersion
      ? `it was saved by a newer Reheat Bench, and this one reads versions ${listed('and')}.`
      : `it must be ${listed('or')}.`;
  return inFile(
    'version',
    'version',
    `The file has version ${JSON.stringify(version) ?? 'missing'}: ${advice}`,
  );
}

/** The problem of a name, or null. */
export function nameProblem(value: unknown): Problem | null {
  if (typeof value !== 'string') {
    return inFile('name', 'name', `The name must be text in quotes; it holds ${kindOf(value)}.`);
  }
  if (value.length <= longestName) return null;
  return inFile(
    'name',
    'name',
    `The name must have at most ${longestName} characters; it has ${value.length}.`,
  );
}

/** The versions that are read: `1, 2 or 3`. */
function listed(last: 'and' | 'or'): string {
  return `${versions.slice(0, -1).join(', ')} ${last} ${versions.at(-1)}`;
}
