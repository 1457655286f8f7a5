/**
 * `published`: a document with a title and a year. `common practice`: used in the trade, no document behind it. `from memory`:
 * known, not looked up again.
 */
export type SourceKind = 'published' | 'common practice' | 'from memory';

/** A document, or what stands in its place. */
export interface Source {
  readonly title: string;
  readonly year: number | null;
  readonly kind: SourceKind;
  /** How far to trust it, in one sentence. */
  readonly note: string;
}
