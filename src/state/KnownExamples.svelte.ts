import { type Preset, presetVariant, workedExample } from '../../shared/preset.ts';
import type { Variant } from '../../shared/variant.ts';
import { settingsText } from './settingsText.ts';

/** The examples to start from: the worked one at once, all of them once they have been fetched. */
export class KnownExamples {
  all = $state.raw<readonly Preset[]>([workedExample]);
  #known = $derived(
    this.all.map((preset) => [settingsText(presetVariant(preset)), preset] as const),
  );
  #fetched: Promise<void> | null = null;

  /** Fetches the others; asked again, it waits for the same. */
  fetch(): Promise<void> {
    this.#fetched ??= import('../../shared/presets.ts').then(({ presets }) => {
      this.all = presets;
    });
    return this.#fetched;
  }

  /** The example whose settings a variant has, whatever its name; null when none that is known does. */
  at(variant: Variant): Preset | null {
    const text = settingsText(variant);
    return this.#known.find(([settings]) => settings === text)?.[1] ?? null;
  }
}
