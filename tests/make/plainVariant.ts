import { asFirstVersion } from '../../shared/codec/firstVersion.ts';
import { defaultVariant } from '../../shared/fields.ts';
import { type Variant, withSetting } from '../../shared/variant.ts';

/** Every setting at its default, but an ideal boiler, a given flow, valves that open at once, and no jet. */
export function plainVariant(name: string): Variant {
  return withSetting(asFirstVersion(defaultVariant(name)), 'draw.inlet', 'asTyped');
}
