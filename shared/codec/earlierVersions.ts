import { type Setting, withSettings } from '../preset.ts';
import type { Variant } from '../variant.ts';

/** What a file of each earlier version means by settings that neither it nor an older one could have. */
const meant: readonly { readonly version: number; readonly sets: readonly Setting[] }[] = [
  {
    // a boiler that holds its limits exactly, flow and loss of the primary as set, valves that open at once
    version: 1,
    sets: [
      ['boiler.model', 'ideal'],
      ['primary.flowFrom', 'given'],
      ['primary.lossFrom', 'given'],
      ['primary.valveTravel', 0],
    ],
  },
  // cold water spread over a height that is set
  { version: 2, sets: [['draw.inlet', 'asTyped']] },
];

/** The same variant with everything that a version could not say as that version meant it. */
export function asMeantIn(version: number, variant: Variant): Variant {
  return meant
    .filter((earlier) => earlier.version >= version)
    .reduce((changed, { sets }) => withSettings(changed, sets), variant);
}
