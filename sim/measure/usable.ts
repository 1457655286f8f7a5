import type { Celsius, CubicMetres } from '../../shared/units.ts';
import { MIXED, mixedShare } from '../closures/mixedLitres.ts';
import type { Plant } from '../plant/plant.ts';

/**
 * Mixed water at 40 °C that a store holds, m³: every layer at 40 °C or more, let down with cold water. An estimate from
 * the temperatures at one moment; a real draw gives a little less, for it stirs.
 * @param T  [layer] °C, from `offset` on
 */
// source: EU 814/2013, Annex I, definition of V40 (same enthalpy as the water delivered above 40 °C); form of EN 16147, from memory
export function usable(
  T: ArrayLike<number>,
  offset: number,
  layers: number,
  layerVolume: CubicMetres,
  cold: Celsius,
): CubicMetres {
  let sum = 0;
  for (let layer = offset; layer < offset + layers; layer++) {
    if (T[layer] >= MIXED) sum += layerVolume * Math.max(1, mixedShare(T[layer], cold));
  }
  return sum;
}

/** The same of a whole store. @param T  [layer] °C, or a state that begins with the layers */
export function usableIn({ cylinder, inlet }: Plant, T: ArrayLike<number>): CubicMetres {
  return usable(T, 0, cylinder.layers, cylinder.layerVolume, inlet.cold);
}

/** Store water below 40 °C, m³. */
export function belowUsable(
  T: ArrayLike<number>,
  offset: number,
  layers: number,
  layerVolume: CubicMetres,
): CubicMetres {
  let count = 0;
  for (let layer = offset; layer < offset + layers; layer++) if (T[layer] < MIXED) count++;
  return count * layerVolume;
}
