import { createContext } from 'svelte';
import type { Place, WorkingKey } from './working.ts';

/** Opens workings, and knows which one is open and where. */
export interface Opener {
  /** The one that is open, and the part of the page in which it stands. */
  readonly current: { readonly key: WorkingKey; readonly place: Place } | null;
  open(key: WorkingKey, place: Place): void;
  /** Called by a working when it stands on the page: it takes the focus if it has just been opened. */
  stands(panel: HTMLElement): void;
  close(): void;
}

/** Handed down by the view, read by every live number. */
export const [openerHere, setOpener] = createContext<Opener>();
