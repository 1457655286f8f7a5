import { coilGroups } from '../fittedCoils.ts';
import { problemsOf } from '../problems.ts';
import { type Variant, withSetting } from '../variant.ts';
import { type Proposal, type Propose, told, withStep } from './proposal.ts';

/** The coils: clean, or larger. */
export const coilProposals: Propose = (variant) => [descaled(variant), larger(variant)];

function descaled(variant: Variant): Proposal | null {
  const scaled = coilGroups(variant).filter(
    (group) => variant[group].given !== 'conductance' && variant[group].scaleThickness > 0,
  );
  if (scaled.length === 0) return null;
  return {
    key: 'descale',
    cause: 'scale',
    text: 'Descale the coil',
    variant: scaled.reduce<Variant>(
      (clean, group) => withSetting(clean, `${group}.scaleThickness`, 0),
      variant,
    ),
  };
}

function larger(variant: Variant): Proposal | null {
  const { coil } = variant;
  const size = SIZE[coil.given];
  const wide = withStep(variant, size, LARGER * Number(coil[keyOf(size)]));
  const tall = withStep(wide, 'coil.top', coil.bottom + LARGER * (coil.top - coil.bottom));
  // in the height of the present coil, where its turns stand far enough apart
  const fits = problemsOf(wide).length === 0 ? wide : tall;
  return {
    key: 'largerCoil',
    cause: 'coil',
    text: `Fit a coil half as large again, ${told(fits, size)}${WORDS[coil.given]}`,
    variant: fits,
  };
}

const keyOf = (path: (typeof SIZE)[keyof typeof SIZE]) =>
  path.slice('coil.'.length) as 'length' | 'area' | 'ratedOutput' | 'conductance';

const LARGER = 1.5; // engineering guess, no source: about the next coil that is sold
const SIZE = {
  geometry: 'coil.length',
  area: 'coil.area',
  rating: 'coil.ratedOutput',
  conductance: 'coil.conductance',
} as const;
const WORDS = {
  geometry: ' of tube',
  area: ' of surface',
  rating: ' by its rating',
  conductance: ' of UA',
} as const;
