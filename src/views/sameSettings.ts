import type { Variant } from '../../shared/variant.ts';

/** Whether two variants have the same settings, whatever their names. */
export function sameSettings(one: Variant, other: Variant): boolean {
  return settingsText(one) === settingsText(other);
}

const settingsText = ({ name: _name, ...settings }: Variant): string => JSON.stringify(settings);
