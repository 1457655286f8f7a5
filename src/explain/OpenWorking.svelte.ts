import { tick } from 'svelte';
import type { Opener } from './opener.ts';
import type { Place, WorkingKey } from './working.ts';

/** The working that is open. It takes the focus when it opens, and gives it back when it closes. */
export class OpenWorking implements Opener {
  current = $state.raw<Opener['current']>(null);
  #from: HTMLElement | null = null;

  /** @param first  open from the start */
  constructor(first: Opener['current']) {
    this.current = first;
  }

  open(key: WorkingKey, place: Place): void {
    const from = document.activeElement;
    // a number inside the working itself is gone when the next one stands there
    const isInside = from?.closest('.working') !== null;
    if (from instanceof HTMLElement && !isInside) this.#from = from;
    this.current = { key, place };
    void tick().then(() => {
      const panel = document.getElementById(`working-${place}`);
      panel?.querySelector('h3')?.focus({ preventScroll: true });
      panel?.scrollIntoView({ block: 'nearest' });
    });
  }

  close(): void {
    this.current = null;
    this.#from?.focus();
    this.#from = null;
  }
}
