import { incomingCold } from '../../shared/coldWater.ts';
import type { CubicMetresPerSecond } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import type { Water } from '../closures/water.ts';
import type { Cylinder } from './cylinder.ts';
import { type InletJet, jetShares, makeInletJet } from './inletJet.ts';

/** How incoming water spreads near the base. */
export interface Inlet {
  readonly cold: number;
  /** [layer] share of the incoming water that enters this layer; adds up to 1. A jet writes it anew. */
  readonly share: Float64Array;
  /** Null where the spread is fixed during a run. */
  readonly jet: InletJet | null;
}

export function makeInlet(variant: Variant, cylinder: Cylinder, water: Water): Inlet {
  const jet = makeInletJet(variant, water);
  const mixing = jet === null ? Math.max(variant.draw.inletMixing, cylinder.layerHeight) : 0;
  const share = Float64Array.from({ length: cylinder.layers }, (_, layer) => {
    const floor = layer * cylinder.layerHeight;
    const inside = Math.min(mixing, floor + cylinder.layerHeight) - floor;
    return jet === null ? Math.max(0, inside) / mixing : 0;
  });
  return { cold: incomingCold(variant.draw), share, jet };
}

/**
 * Adds what a draw carries to `net`, [layer], W: cold water enters near the base, all water above moves up, the top leaves.
 * The temperature carried through each face is the fifth-order upwind value held between its neighbours, so a front stays
 * a few layers thick and never over- or undershoots.
 * @param flow  above 0
 * @param T     [layer] °C
 */
export function drawOffRates(
  cylinder: Cylinder,
  inlet: Inlet,
  flow: CubicMetresPerSecond,
  T: ArrayLike<number>,
  net: Float64Array,
): void {
  if (inlet.jet !== null) jetShares(inlet.jet, flow, inlet.cold, T, inlet.share);
  const last = cylinder.layers - 1;
  const full = flow * cylinder.waterHeat; // W/K
  let rising = 0; // W/K, what has entered up to here
  for (let layer = 0; layer <= last; layer++) {
    const entering = full * inlet.share[layer];
    rising += entering;
    const carried = layer === last ? T[last] : faceTemperature(T, layer, last, inlet.cold);
    const up = (layer === last ? full : rising) * carried;
    net[layer] += entering * inlet.cold - up;
    if (layer < last) net[layer + 1] += up;
  }
}

/** Temperature carried up through the face above a layer, °C. */
function faceTemperature(T: ArrayLike<number>, layer: number, last: number, cold: number): number {
  const here = T[layer];
  const below = layer > 0 ? T[layer - 1] : cold;
  const above = T[layer + 1];
  const slope = here - below;
  const ahead = above - here;
  // At a peak or a dip: plain upwind
  if (slope * ahead <= 0) return here;
  const farBelow = layer > 1 ? T[layer - 2] : cold;
  const farAbove = layer + 2 <= last ? T[layer + 2] : T[last];
  // source: fifth-order upwind-biased value on equal cells, textbook (finite volumes), from memory
  const smooth = (2 * farBelow - 13 * below + 47 * here + 27 * above - 3 * farAbove) / 60;
  const step = smooth - here;
  // source: bounds of Suresh and Huynh 1997 for a monotone profile, with slope factor 4, from memory
  if (ahead > 0) return here + Math.max(0, Math.min(step, ahead, STEEPEST * slope));
  return here + Math.min(0, Math.max(step, ahead, STEEPEST * slope));
}

const STEEPEST = 4;
