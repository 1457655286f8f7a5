import type { Problem } from '../problems/problem.ts';
import { inFile, kindOf } from './inFile.ts';

/** What stands in a file under `format`. */
export const fileFormat = 'reheat-bench variant';
/** The newest version of the file form that is written and read. */
export const fileVersion = 2;
/** The oldest version that is still read. */
export const firstVersion = 1;
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
  if (version === fileVersion || version === firstVersion) return null;
  const advice =
    typeof version === 'number' && version > fileVersion
      ? `it was saved by a newer Reheat Bench, and this one reads versions ${firstVersion} and ${fileVersion}.`
      : `it must be ${firstVersion} or ${fileVersion}.`;
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
