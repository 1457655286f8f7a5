/** A figure as rows of text: the first column names the row. */
export interface TableOf {
  /** With units, so that the cells need none. */
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** What the rows leave out, where they do. */
  readonly caption?: string;
}

/**
 * Evenly spaced picks from a list, its first and last among them.
 * @param length  of the list
 * @param most    how many to pick at most
 */
export function evenPicks(length: number, most: number): number[] {
  if (length <= most) return Array.from({ length }, (_, index) => index);
  return Array.from({ length: most }, (_, pick) => Math.round((pick * (length - 1)) / (most - 1)));
}
