import type { Celsius } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { makePlant, type Plant } from '../plant/plant.ts';
import { type Snapshot, System } from '../solve/system.ts';

/** The store of a variant with a boiler, an immersion heater and a sensor that do nothing: no call is ever answered. */
export function storeAlone(variant: Variant): Plant {
  return makePlant({
    ...variant,
    boiler: { ...variant.boiler, model: 'ideal' },
    sensor: { ...variant.sensor, element: 'true' },
    immersion: { ...variant.immersion, used: 'no' },
    heating: { ...variant.heating, arrangement: 'hotWaterOnly' },
    programme: {
      ...variant.programme,
      hotWater: 'timed',
      hotWaterFor: 0,
      hotWaterAgainFor: 0,
      heating: 'always',
    },
  });
}

/** Its start with the layers at these temperatures, and hot water standing before the tap. @param T  [layer] °C */
export function startFrom(plant: Plant, T: ArrayLike<Celsius>): Snapshot {
  const system = new System(plant);
  const { state, memory } = system.start();
  const { layers, tapPipe } = system.slots;
  const begun = state.map((value, slot) => (slot < layers ? T[slot] : value));
  for (let cell = 0; cell < (plant.tapPipe?.cells ?? 0); cell++)
    begun[tapPipe + cell] = T[layers - 1];
  return { state: begun, memory };
}
