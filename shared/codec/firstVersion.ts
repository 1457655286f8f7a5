import type { Setting } from '../causes.ts';
import { withSettings } from '../presets.ts';
import type { Variant } from '../variant.ts';

/**
 * What a file of version 1 means by the settings it could not yet have: a boiler that holds its limits exactly, flow and loss
 * of the primary as they are set, and valves that open at once.
 */
const meant: readonly Setting[] = [
  ['boiler.model', 'ideal'],
  ['primary.flowFrom', 'given'],
  ['primary.lossFrom', 'given'],
  ['primary.valveTravel', 0],
];

/** The same variant with everything that version 1 could not say as version 1 meant it. */
export function asFirstVersion(variant: Variant): Variant {
  return withSettings(variant, meant);
}
