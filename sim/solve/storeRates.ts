import { conductionRates, type Cylinder, standingLossRates } from '../plant/cylinder.ts';
import type { Watts } from '../../shared/units.ts';
import type { Pools } from './pools.ts';

/**
 * Store: C · dT/dt = from outside + conducted − to surroundings, W, for each pool as a whole. All of its layers have one
 * temperature, so nothing is conducted inside it, and it has one rate.
 * @param T      [layer] °C, the layers of a pool alike
 * @param net    heat from coil, immersion heater and draw, [layer] W
 * @param rates  [layer] K/s, written
 * @returns the standing loss, W
 */
export function storeRates(
  { first, count }: Pools,
  { layers, layerCapacity, conductance, lossUpTo, surroundings }: Cylinder,
  T: ArrayLike<number>,
  net: Float64Array,
  rates: number[],
): Watts {
  let lost = 0;
  let fromBelow = 0;
  for (let pool = 0; pool < count; pool++) {
    const bottom = first[pool];
    const end = first[pool + 1];
    const loss = (lossUpTo[end] - lossUpTo[bottom]) * (T[bottom] - surroundings);
    const up = end < layers ? conductance * (T[bottom] - T[end]) : 0;
    let heat = fromBelow - up - loss;
    for (let layer = bottom; layer < end; layer++) heat += net[layer];
    const rate = heat / (layerCapacity * (end - bottom));
    for (let layer = bottom; layer < end; layer++) rates[layer] = rate;
    fromBelow = up;
    lost += loss;
  }
  return lost;
}

/** Heat into each layer by itself, W: what decides how layers pool. @param into  [layer], written */
export function layerHeats(
  cylinder: Cylinder,
  T: ArrayLike<number>,
  net: Float64Array,
  into: Float64Array,
): void {
  into.set(net);
  conductionRates(cylinder, T, into);
  standingLossRates(cylinder, T, into);
}
