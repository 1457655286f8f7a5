import { tick } from 'svelte';
import type { Opener } from './opener.ts';
import type { Place, WorkingKey } from './working.ts';

/** The working that is open. It takes the focus when it opens, and gives it back when it closes. */
export class OpenWorking implements Opener {
  current = $state.raw<Opener['current']>(null);
  #from: HTMLElement | null = null;
  /** What has been opened does not have the focus yet. */
  #isAwaited = false;

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
    this.#isAwaited = true;
    void tick().then(() => {
      // one that is fetched first says itself when it stands
      const panel = document.getElementById(`working-${place}`);
      if (panel) this.stands(panel);
    });
  }

  stands(panel: HTMLElement): void {
    if (!this.#isAwaited) return;
    this.#isAwaited = false;
    panel.querySelector('h3')?.focus({ preventScroll: true });
    panel.scrollIntoView({ block: 'nearest' });
  }

  close(): void {
    this.current = null;
    this.#isAwaited = false;
    this.#from?.focus();
    this.#from = null;
  }
}
