import type { LoopSlots } from '../plant/loop.ts';
import type { Plant } from '../plant/plant.ts';

/** Where everything stands in the state vector: the layers first, then these. */
export interface Slots {
  readonly layers: number;
  /** °C */
  readonly bead: number;
  readonly radiator: number;
  readonly air: number;
  readonly fabric: number;
  /** The water of a boiler as built, °C; null for the ideal boiler. */
  readonly loop: LoopSlots | null;
  /** Cells of that loop after the boiler, in a row from `loopCells` on. */
  readonly loopCells: number;
  readonly loopCellCount: number;
  /** The first cell of the pipe to the tap; −1 for a tap at the store. */
  readonly tapPipe: number;
  /** Fuel the burner takes while its controller moves it, gross, W. */
  readonly input: number;
  /** Time of day, s after the midnight before the run. */
  readonly clock: number;
  /** Sums since the start, J. They are states, so the energy closes to rounding. */
  readonly fromBoiler: number;
  readonly fuel: number;
  readonly fuelForHeating: number;
  readonly whileCondensing: number;
  readonly fromImmersion: number;
  readonly throughCoil: number;
  readonly lostByCylinder: number;
  readonly lostByPipes: number;
  readonly lostByHouse: number;
  readonly lostByTapPipe: number;
  /** Out of the tap above the incoming cold water; of it, what counts as useful. */
  readonly drawn: number;
  readonly useful: number;
  /** Water out of the store, m³. */
  readonly fromStore: number;
  readonly count: number;
}

export function slotsOf(plant: Plant): Slots {
  const { built } = plant;
  let next = plant.cylinder.layers;
  const one = () => next++;
  const row = (length: number) => {
    const first = next;
    next += length;
    return first;
  };
  const bead = one();
  const radiator = one();
  const air = one();
  const fabric = one();
  let loop: LoopSlots | null = null;
  const loopCells = next + 1;
  if (built !== null) {
    const { pipe, coil } = built.loop;
    const halves = coil.halfCapacity > 0;
    const boilerWater = one();
    const out = row(pipe.cells);
    const coilIn = halves ? one() : -1;
    const coilOut = halves ? one() : -1;
    loop = { boilerWater, out, coilIn, coilOut, back: row(pipe.cells) };
  }
  const loopCellCount = loop === null ? 0 : next - loopCells;
  return {
    layers: plant.cylinder.layers,
    bead,
    radiator,
    air,
    fabric,
    loop,
    loopCells,
    loopCellCount,
    tapPipe: plant.tapPipe === null ? -1 : row(plant.tapPipe.cells),
    input: one(),
    clock: one(),
    fromBoiler: one(),
    fuel: one(),
    fuelForHeating: one(),
    whileCondensing: one(),
    fromImmersion: one(),
    throughCoil: one(),
    lostByCylinder: one(),
    lostByPipes: one(),
    lostByHouse: one(),
    lostByTapPipe: one(),
    drawn: one(),
    useful: one(),
    fromStore: one(),
    count: next,
  };
}

/**
 * Absolute tolerance of each state: kelvins for temperatures, watts, seconds, joules and cubic metres for sums. The solver
 * judges the mean square over all states; those that stand still while no tap runs must not thin it out.
 */
export function tolerancesOf(slots: Slots, temperature: number): number[] {
  const kept = temperature * Math.sqrt((slots.count - STILL) / slots.count);
  return Array.from({ length: slots.count }, (_, slot) => {
    if (slot < slots.input) return kept;
    if (slot === slots.input) return kept * INPUT_PER_KELVIN;
    if (slot === slots.clock) return 1;
    return kept * (slot === slots.fromStore ? WATER_PER_KELVIN : SUM_PER_KELVIN);
  });
}

const STILL = 3; // sums of what is lost by the pipe to the tap, useful, and out of the store
const SUM_PER_KELVIN = 1e6; // J: as much as a store of 240 litres holds in a kelvin
const WATER_PER_KELVIN = 1e-2; // m³: as much water of 60 °C as holds the heat above, in round figures
const INPUT_PER_KELVIN = 1000; // W: about what a kelvin moves the controller
