import type { Balance } from '../../shared/result.ts';
import { heldByPrimary } from './primaryHeat.ts';
import type { Plant } from '../plant/plant.ts';
import type { Slots } from '../solve/slots.ts';

/** Where the energy went between two states of a run. */
export function balanceOf(
  plant: Plant,
  slots: Slots,
  start: readonly number[],
  end: readonly number[],
): Balance {
  const { cylinder, radiators, house, built } = plant;
  const gained = (slot: number) => end[slot] - start[slot];
  let warmed = 0;
  for (let layer = 0; layer < slots.layers; layer++) warmed += gained(layer);
  const gainedByStore = cylinder.layerCapacity * warmed;
  const gainedByHouse =
    radiators.capacity * gained(slots.radiator) +
    house.airCapacity * gained(slots.air) +
    house.fabricCapacity * gained(slots.fabric);
  const gainedByPrimary = built === null ? 0 : heldByPrimary(built.loop, slots, gained);
  const fromBoiler = gained(slots.fromBoiler);
  const fromImmersion = gained(slots.fromImmersion);
  const lostByCylinder = gained(slots.lostByCylinder);
  const lostByPipes = gained(slots.lostByPipes);
  const lostByHouse = gained(slots.lostByHouse);
  const drawn = gained(slots.drawn);
  const gone = lostByCylinder + lostByPipes + lostByHouse + drawn;
  const residual =
    fromBoiler + fromImmersion - gainedByPrimary - gainedByStore - gainedByHouse - gone;
  const moved =
    Math.abs(fromBoiler) +
    Math.abs(fromImmersion) +
    Math.abs(gainedByPrimary) +
    Math.abs(gainedByStore) +
    Math.abs(gainedByHouse) +
    Math.abs(lostByCylinder) +
    Math.abs(lostByPipes) +
    Math.abs(lostByHouse) +
    Math.abs(drawn);
  return {
    fromBoiler,
    fromImmersion,
    gainedByPrimary,
    gainedByStore,
    gainedByHouse,
    lostByCylinder,
    lostByPipes,
    lostByHouse,
    drawn,
    residual,
    relative: moved > 0 ? residual / moved : 0,
  };
}
