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
  const { tapPipe } = plant;
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
  const lostByTapPipe = gained(slots.lostByTapPipe);
  const drawn = gained(slots.drawn);
  let gainedByTapPipe = 0;
  for (let cell = 0; tapPipe !== null && cell < tapPipe.cells; cell++) {
    gainedByTapPipe += (tapPipe.capacity / tapPipe.cells) * gained(slots.tapPipe + cell);
  }
  const terms = {
    fromBoiler,
    fromImmersion,
    gainedByPrimary,
    gainedByStore,
    gainedByHouse,
    gainedByTapPipe,
    lostByCylinder,
    lostByPipes,
    lostByHouse,
    lostByTapPipe,
    drawn,
  };
  const gone = lostByCylinder + lostByPipes + lostByHouse + lostByTapPipe + drawn;
  const kept = gainedByPrimary + gainedByStore + gainedByHouse + gainedByTapPipe;
  const residual = fromBoiler + fromImmersion - kept - gone;
  const moved = Object.values(terms).reduce((sum, term) => sum + Math.abs(term), 0);
  return { ...terms, residual, relative: moved > 0 ? residual / moved : 0 };
}
