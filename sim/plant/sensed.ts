import { lowestCoil } from '../../shared/fittedCoils.ts';
import type { Variant } from '../../shared/variant.ts';
import { type Cylinder, temperatureAt } from './cylinder.ts';

/** A temperature of the store that a sensor could have, from its layers, [layer] °C; or a rate from their rates. */
export type Sensed = (T: ArrayLike<number>) => number;

/** Water at the height of the sensor. */
export function atHeight(cylinder: Cylinder, { stat }: Variant): Sensed {
  const { sensorHeight } = stat;
  return (T) => temperatureAt(cylinder, T, sensorHeight);
}

/** Mean of all that the coils can heat: the layers from the foot of the lowest coil up. */
export function meanAboveFoot({ layers, layerHeight }: Cylinder, variant: Variant): Sensed {
  const first = footLayer({ layers, layerHeight }, variant);
  return (T) => {
    let sum = 0;
    for (let layer = first; layer < layers; layer++) sum += T[layer];
    return sum / (layers - first);
  };
}

/** The layer in which the foot of the lowest coil lies. */
export function footLayer(
  { layers, layerHeight }: Pick<Cylinder, 'layers' | 'layerHeight'>,
  variant: Variant,
): number {
  return Math.min(Math.floor(lowestCoil(variant) / layerHeight), layers - 1);
}
