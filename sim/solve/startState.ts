import { arrangementOf } from '../../shared/arrangements.ts';
import type { Celsius } from '../../shared/units.ts';
import type { Mounting } from '../../shared/mounting.ts';
import { cylinderStart } from '../plant/cylinder.ts';
import { fabricStart, houseLoss } from '../plant/house.ts';
import { outsideAt } from '../plant/outside.ts';
import type { Plant } from '../plant/plant.ts';
import { radiatorsStart } from '../plant/radiators.ts';
import type { Slots } from './slots.ts';

/**
 * The state in which a run starts, [slot]: the store as set, the sensor at rest in it, house and radiators in balance with the
 * day, pipes as cold as their surroundings, coil water as warm as the store, the boiler as warm as the radiators it has heated.
 */
export function startState(plant: Plant, slots: Slots, mounting: Mounting): number[] {
  const { cylinder, radiators, house, variant, built } = plant;
  const { heating, programme } = variant;
  const state = new Array<number>(slots.count).fill(0);
  cylinderStart(cylinder, variant).forEach((temperature, layer) => {
    state[layer] = temperature;
  });
  const water = plant.sensed(state);
  state[slots.bead] = water + mounting.airShare * (cylinder.surroundings - water);
  state[slots.clock] = programme.startsAt;

  const { heated } = arrangementOf(heating.arrangement);
  const outside = outsideAt(variant.house, programme.startsAt);
  const air: Celsius = heating.roomSetPoint - heating.roomDifferential / 2;
  const fabric = fabricStart(house, air, outside);
  state[slots.air] = air;
  state[slots.fabric] = fabric;
  // no hotter than the boiler would make them
  state[slots.radiator] = heated
    ? Math.min(
        radiatorsStart(radiators, air, houseLoss(house, air, fabric, outside)),
        Math.max(variant.boiler.heatingFlow, air),
      )
    : air;

  for (let cell = 0; cell < (plant.tapPipe?.cells ?? 0); cell++) {
    state[slots.tapPipe + cell] = cylinder.surroundings;
  }
  if (built !== null && slots.loop !== null) {
    const { loop } = slots;
    const around = cylinder.surroundings;
    state[loop.boilerWater] = heated ? state[slots.radiator] : around;
    for (let cell = 0; cell < slots.loopCellCount; cell++) state[slots.loopCells + cell] = around;
    if (loop.coilIn >= 0) {
      const { layer, conductance } = built.loop.coil;
      [loop.coilIn, loop.coilOut].forEach((slot, half) => {
        state[slot] = meanAround(state, layer, conductance[half as 0 | 1], around);
      });
    }
  }
  return state;
}

/** Mean temperature of the store round half a coil, °C. */
function meanAround(
  T: readonly number[],
  layer: Int32Array,
  weight: Float64Array,
  otherwise: Celsius,
): Celsius {
  let sum = 0;
  let whole = 0;
  weight.forEach((one, piece) => {
    sum += one * T[layer[piece]];
    whole += one;
  });
  return whole > 0 ? sum / whole : otherwise;
}
