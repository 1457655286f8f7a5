import { type Source, type SourceKey, sources } from './sources.ts';

/** A source as one line: title, year, and how it is known. */
export function citation(key: SourceKey): string {
  const { title, year, kind }: Source = sources[key];
  const dated = year === null ? title : `${title}, ${year}`;
  return kind === 'published' || dated.toLowerCase().includes(kind) ? dated : `${dated} (${kind})`;
}
