import { asFirstVersion } from '../../shared/codec/firstVersion.ts';
import { defaultVariant } from '../../shared/fields.ts';
import type { Variant } from '../../shared/variant.ts';

/** Every setting at its default, but an ideal boiler, a given flow, and valves that open at once. */
export function plainVariant(name: string): Variant {
  return asFirstVersion(defaultVariant(name));
}
