import { exponential } from '../../shared/portableMaths.ts';
import type { Seconds } from '../../shared/units.ts';
import { loopRate } from '../plant/loop.ts';
import { restingRate } from '../plant/restingCoil.ts';
import { hasLag } from '../control/sensor.ts';
import type { CoilRun } from '../plant/coil.ts';
import type { Pools } from './pools.ts';
import type { System } from './system.ts';

/**
 * The longest step that is worth taking until the next event, s. The solver is explicit: a part that settles much faster
 * than the step is still held to the tolerance, but only by steps that it has to take again, and what is left of the error
 * shows inside the step, where rates are multiplied by its length. So the step keeps in proportion to whatever settles
 * fastest: the sensor, neighbouring layers, water around the coil, the radiators, the air, water on its way through boiler
 * and pipes, and a front that a draw carries one layer on. With this the runs are both truer and shorter.
 */
export function longestStep({ plant, control, mounting }: System): Seconds {
  const { cylinder, house, radiators, built } = plant;
  const { service, tap, pools } = control;
  const sensor = hasLag(mounting.lag) ? 1 / mounting.lag : 0;
  const layers = (4 * cylinder.conductance) / cylinder.layerCapacity;
  // without water in the boiler what leaves the coil is back at its inlet at once: two layers then settle twice as fast
  const round = built === null ? 2 : 1;
  const coil =
    service.coil === null ? 0 : round * coilRate(service.coil, pools, cylinder.layerCapacity);
  const room =
    (house.airToFabric + house.airToOutside) / house.airCapacity +
    service.radiatorRate / radiators.capacity;
  const wholeRate = (service.coil?.heatRate ?? 0) + service.radiatorRate;
  const controller =
    built !== null && control.firing === 'between'
      ? built.burner.gain / built.loop.boilerCapacity
      : 0;
  const loop = built === null ? 0 : loopRate(built.loop, service.coil, wholeRate, controller);
  const resting =
    built !== null && service.coil === null
      ? restingRate(built.loop.coil, cylinder.layerCapacity)
      : 0;
  const drawFlow = tap.draw?.flow ?? 0;
  const front = (SETTLINGS * drawFlow) / cylinder.layerVolume;
  const tapPipe =
    plant.tapPipe === null
      ? 0
      : (drawFlow * cylinder.waterHeat * plant.tapPipe.cells) / plant.tapPipe.capacity;
  return SETTLINGS / Math.max(sensor, layers + coil + resting + front, room, loop, tapPipe);
}

/** How fast the water of the pool that is warmed fastest for its size follows the coil, 1/s. */
function coilRate(run: CoilRun, { first, count }: Pools, layerCapacity: number): number {
  let fastest = 0;
  for (let pool = 0; pool < count; pool++) {
    let conductance = 0;
    for (let part = 0; part < run.tube.length; part++) {
      const coefficient = run.tube[part] === null ? 1 : COEFFICIENT;
      for (let piece = run.stretch[part]; piece < run.stretch[part + 1]; piece++) {
        const layer = run.layer[piece];
        if (layer >= first[pool] && layer < first[pool + 1]) {
          conductance += coefficient * run.size[piece];
        }
      }
    }
    const share = 1 - exponential(-conductance / run.heatRate);
    const capacity = layerCapacity * (first[pool + 1] - first[pool]);
    fastest = Math.max(fastest, (share * run.heatRate) / capacity);
  }
  return fastest;
}

// of the fastest part in one step: the solver's row of two is stable to 4.46, and costs the fewest calls for its length
const SETTLINGS = 4.4;
const COEFFICIENT = 2000; // W/(m² K), what few tubes in water exceed; only the step length depends on it
