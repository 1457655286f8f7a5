import type { Watts } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { type Cylinder, lowerLayer } from './cylinder.ts';

/** An electric heater in one layer, with its own stat there. Fixed during a run. */
export interface Immersion {
  readonly output: Watts;
  readonly layer: number;
}

/** The immersion heater of a variant, or null when it is off. */
export function makeImmersion({ immersion }: Variant, cylinder: Cylinder): Immersion | null {
  if (immersion.used === 'no') return null;
  const layer = lowerLayer(cylinder, immersion.height + cylinder.layerHeight / 2);
  return {
    output: immersion.output,
    layer: Math.min(Math.max(layer, 0), cylinder.layers - 1),
  };
}

/** Adds its heat to `net`, [layer], W, and returns it, W. */
export function immersionRates(
  immersion: Immersion | null,
  isOn: boolean,
  net: Float64Array,
): Watts {
  if (immersion === null || !isOn) return 0;
  net[immersion.layer] += immersion.output;
  return immersion.output;
}
