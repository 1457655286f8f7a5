import { type Preset, presets, presetVariant } from '../../shared/presets.ts';
import type { Variant } from '../../shared/variant.ts';

/** The example whose settings a variant has, whatever its name; null when there is none. */
export function presentExample(variant: Variant): Preset | null {
  const text = settingsText(variant);
  return known.find(([settings]) => settings === text)?.[1] ?? null;
}

/** Whether two variants have the same settings, whatever their names. */
export function sameSettings(one: Variant, other: Variant): boolean {
  return settingsText(one) === settingsText(other);
}

const settingsText = ({ name: _name, ...settings }: Variant): string => JSON.stringify(settings);

const known = presets.map((preset) => [settingsText(presetVariant(preset)), preset] as const);
