import type { CubicMetresPerSecond, Metres, SquareMetres } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import {
  eddyFactorAt,
  type Inlet as Fitting,
  inletEddyFactor,
  inletReynolds,
  inletRichardson,
  turbulentShare,
} from '../closures/inletMixing.ts';
import { volumetricHeat, type Water } from '../closures/water.ts';

/** Cold water that enters as a jet and stirs what it meets. Fixed during a run. */
export interface InletJet {
  readonly water: Water;
  readonly fitting: Fitting;
  /** Of the opening. */
  readonly bore: Metres;
  readonly height: Metres;
  /** Cross-section and height of the store. */
  readonly area: SquareMetres;
  readonly storeHeight: Metres;
  /** Conductivity over heat held of still water, m²/s. */
  readonly diffusivity: number;
}

/** The jet of a variant, or null where the height over which cold water is spread is typed. */
export function makeInletJet({ draw, cylinder }: Variant, water: Water): InletJet | null {
  if (draw.inlet === 'asTyped') return null;
  return {
    water,
    fitting: draw.inlet === 'plain' ? 'side' : 'impingement',
    bore: draw.inletBore,
    height: draw.inletHeight,
    area: cylinder.volume / cylinder.height,
    storeHeight: cylinder.height,
    diffusivity: water.conductivity(STORE) / volumetricHeat(water, STORE),
  };
}

/**
 * Writes the share of the incoming water that enters each layer, [layer], adding up to 1. The jet reaches as far up as its
 * eddies carry heat faster than the water rises, and no further; up to there the store is stirred. Cold water among cold
 * is stirred up to the boundary, where the difference in density stops it.
 * @param flow  entering, above 0
 * @param T     [layer] °C
 */
export function jetShares(
  jet: InletJet,
  flow: CubicMetresPerSecond,
  cold: number,
  T: ArrayLike<number>,
  share: Float64Array,
): void {
  const { water, fitting, bore, area, storeHeight, diffusivity } = jet;
  const layers = share.length;
  const layerHeight = storeHeight / layers;
  const velocity = flow / ((Math.PI / 4) * bore * bore);
  const rise = flow / area;
  const reynolds = inletReynolds(water, cold, bore, velocity);
  const turbulent = turbulentShare(reynolds);
  const entry = Math.min(layers - 1, Math.floor(jet.height / layerHeight));
  share.fill(0);
  share[entry] = 1;
  let whole = 1;
  let met = Number.NaN; // the store temperature that the factor belongs to
  let atInlet = 1;
  let one = 1;
  for (let layer = entry + 1; layer < layers; layer++) {
    const distance = (layer + 0.5) * layerHeight - jet.height;
    // above a layer that gets next to nothing the others get less
    if (turbulent > 0 && one > FAINT && !(Math.abs(T[layer] - met) < ALIKE)) {
      met = T[layer];
      const richardson = inletRichardson(water, cold, met, storeHeight, velocity);
      atInlet = 1 + turbulent * (inletEddyFactor(fitting, reynolds, richardson) - 1);
    }
    const extra = eddyFactorAt(atInlet, distance, bore, storeHeight) - 1;
    const stirring = (extra * diffusivity) / (rise * distance); // over what the rising water carries
    one = 1 / (1 + 1 / (stirring * stirring));
    if (one < LEAST) break;
    share[layer] = one;
    whole += one;
  }
  for (let layer = entry; layer < layers; layer++) share[layer] /= whole;
}

const STORE = 35; // °C, as the heat held by the store is reckoned
const ALIKE = 1e-3; // K; the factor follows the difference to the cold, and changes by less than 1e-4 of itself
const FAINT = 1e-4; // of what the layer at the inlet gets
const LEAST = 1e-6; // of that; less is left out
