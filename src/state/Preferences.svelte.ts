import type { Keep } from './keep.ts';

export type Theme = 'system' | 'light' | 'dark';

/** What the user likes, apart from any installation. */
export class Preferences {
  theme = $state<Theme>('system');
  #keep: Keep;

  constructor(keep: Keep) {
    this.#keep = keep;
    const kept = keep.read(KEY);
    if (kept === 'light' || kept === 'dark') this.theme = kept;
  }

  /** @param theme  `system` follows the device */
  setTheme(theme: Theme): void {
    this.theme = theme;
    this.#keep.write(KEY, theme);
  }

  /** What the page is marked with: nothing where it follows the device. */
  readonly mark: 'light' | 'dark' | null = $derived(this.theme === 'system' ? null : this.theme);
}

const KEY = 'reheat-bench theme';
