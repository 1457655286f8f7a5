import { asMeantIn } from '../../shared/codec/earlierVersions.ts';
import { defaultVariant } from '../../shared/fields.ts';
import type { Variant } from '../../shared/variant.ts';

/** Every setting as version 1 meant it: defaults, but an ideal boiler, a given flow, valves that open at once, a spread inlet. */
export function plainVariant(name: string): Variant {
  return asMeantIn(1, defaultVariant(name));
}
