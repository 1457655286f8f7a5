import type { Variant } from '../../shared/variant.ts';

/** The settings of a variant as text, its name left out: the same text for the same settings. */
export const settingsText = ({ name: _name, ...settings }: Variant): string =>
  JSON.stringify(settings);

/** Whether two variants have the same settings, whatever their names. */
export function sameSettings(one: Variant, other: Variant): boolean {
  return settingsText(one) === settingsText(other);
}
