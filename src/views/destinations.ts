import type { Component } from 'svelte';
import type { DayRun } from '../../shared/day.ts';
import type { Result } from '../../shared/result.ts';
import type { Bench } from '../state/Bench.svelte.ts';
import type { TimeCursor } from '../state/TimeCursor.svelte.ts';
import type { VariantRuns } from '../state/VariantRuns.svelte.ts';

/** What every view is given; each takes what it needs. */
export interface ViewProps {
  readonly result: Result | null;
  readonly day: DayRun | null;
  readonly bench: Bench;
  /** Of all variants; null until they can be asked for. */
  readonly runs: VariantRuns | null;
  readonly moment: TimeCursor;
  /** The lesson in the address, or null. */
  readonly lesson: string | null;
  /** Goes to another fragment of the address. */
  readonly ongo: (fragment: string) => void;
  readonly onbench: () => void;
}

/** A view besides the bench, fetched when it is gone to. */
export interface View {
  readonly key: string;
  readonly label: string;
  readonly load: () => Promise<{ default: Component<ViewProps> }>;
}

/** Every view besides the bench, in the order of the navigation. */
export const views: readonly View[] = [
  { key: 'side-by-side', label: 'Side by side', load: () => import('./SideBySideView.svelte') },
  { key: 'catalogue', label: 'Catalogue', load: () => import('./CatalogueView.svelte') },
  { key: 'lessons', label: 'Lessons', load: () => import('./LessonsView.svelte') },
  { key: 'physics', label: 'Physics', load: () => import('./PhysicsView.svelte') },
];
