import { fieldAt } from '../fields.ts';
import { filePathOf } from '../fileKeys.ts';
import type { FieldPath } from '../variant.ts';

/** Something the user can put right. A value, never thrown. */
export interface Problem {
  /** Where it stands in the file, e.g. `stat.sensorHeightMetres`; empty for the file as a whole. */
  readonly field: string;
  /** The setting, when it is one that has a control. */
  readonly path: FieldPath | null;
  readonly code: string;
  /** What happened and what to do, naming the setting by its label. */
  readonly message: string;
}

/** A problem with one setting. */
export function problemAt(path: FieldPath, code: string, message: string): Problem {
  return { field: filePathOf(fieldAt(path)), path, code, message };
}
