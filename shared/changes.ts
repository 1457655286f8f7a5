import type { Caution } from './cautions.ts';
import type { DelayKey } from './minutes.ts';
import type { Seconds } from './units.ts';
import type { Variant } from './variant.ts';

/** One practical change and what it buys on this installation. */
export interface Change {
  /** Its name in tests and lists. */
  readonly key: string;
  readonly cause: DelayKey | 'output';
  /** What to do: `Raise the flow limit for hot water to 75 °C`. */
  readonly text: string;
  /** The installation with it. */
  readonly variant: Variant;
  /** Until the stat is satisfied with it; null where it is not within the run. */
  readonly recovery: Seconds | null;
  /** Sooner than without it; null where either never gets there. */
  readonly saves: Seconds | null;
  /** What the change brings along that was no concern before. */
  readonly cautions: readonly Caution[];
}
