import type { Plant } from '../plant/plant.ts';

/** Where everything stands in the state vector: the layers first, then these. */
export interface Slots {
  readonly layers: number;
  /** °C */
  readonly sensor: number;
  readonly radiator: number;
  readonly air: number;
  readonly fabric: number;
  /** Sums since the start, J. They are states, so the energy closes to rounding. */
  readonly fromBoiler: number;
  readonly throughCoil: number;
  readonly lostByCylinder: number;
  readonly lostByPipes: number;
  readonly lostByHouse: number;
  readonly drawn: number;
  readonly count: number;
}

export function slotsOf(plant: Plant): Slots {
  const n = plant.cylinder.layers;
  return {
    layers: n,
    sensor: n,
    radiator: n + 1,
    air: n + 2,
    fabric: n + 3,
    fromBoiler: n + 4,
    throughCoil: n + 5,
    lostByCylinder: n + 6,
    lostByPipes: n + 7,
    lostByHouse: n + 8,
    drawn: n + 9,
    count: n + 10,
  };
}

/** Absolute tolerance of each state: kelvins for temperatures, joules for sums. */
export function tolerancesOf(slots: Slots, temperature: number): number[] {
  return Array.from({ length: slots.count }, (_, slot) =>
    slot < slots.fromBoiler ? temperature : temperature * SUM_PER_KELVIN,
  );
}

const SUM_PER_KELVIN = 1e6; // J: as much as a store of 240 litres holds in a kelvin
