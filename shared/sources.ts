import { plantSources } from './sources/plant.ts';
import { ruleSources } from './sources/rules.ts';
import { storeSources } from './sources/store.ts';

export type { Source, SourceKind } from './sources/source.ts';

/** Every document the bench cites, by key. */
export const sources = { ...storeSources, ...plantSources, ...ruleSources } as const;

export type SourceKey = keyof typeof sources;
