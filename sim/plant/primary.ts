import { PIPE_TEMPERATURE, PRIMARY_TEMPERATURE } from '../../shared/conventions.ts';
import { exponential } from '../../shared/portableMaths.ts';
import type { Celsius, CubicMetresPerSecond, Watts } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { copperTubes, tubeContent, tubeMetalHeat } from '../closures/copperTube.ts';
import { pipeConductance, usualPipe } from '../closures/pipeHeatLoss.ts';
import { volumetricHeat, type Water } from '../closures/water.ts';
import type { PipeCells } from './pipeCells.ts';

/**
 * One of the pipes between boiler and cylinder, flow and return alike. No cells where it is emptied so fast that it holds
 * nothing worth following.
 */
export type Primary = PipeCells;

/** @param flow  the largest through the coil, m³/s */
export function makePrimary(variant: Variant, water: Water, flow: CubicMetresPerSecond): Primary {
  const { length, size } = variant.primary;
  const volume = length * tubeContent(size);
  const capacity =
    volume * volumetricHeat(water, PRIMARY_TEMPERATURE) + length * tubeMetalHeat(size);
  return {
    lossConductance: length * lossOf(variant),
    surroundings: variant.cylinder.surroundings,
    cells:
      variant.boiler.model === 'asBuilt'
        ? Math.min(MOST_CELLS, Math.floor(volume / flow / SHORTEST_CELL))
        : 0,
    capacity,
  };
}

/** Loss of one metre for each kelvin, W/(m K): as given, or of the pipe in its lagging. */
function lossOf({ primary, cylinder }: Variant): number {
  if (primary.lossFrom === 'given') return primary.heatLoss;
  const pipe = usualPipe(copperTubes[primary.size].outside, primary.lagging);
  return pipeConductance(pipe, PIPE_TEMPERATURE, cylinder.surroundings);
}

/**
 * Temperature at the far end of one pipe, °C: the exact exponential of a stream that loses heat on its way.
 * @param inlet     °C
 * @param heatRate  mass flow times specific heat, W/K, above zero
 */
export function alongPipe(primary: Primary, inlet: Celsius, heatRate: number): Celsius {
  const { lossConductance, surroundings } = primary;
  return surroundings + (inlet - surroundings) * exponential(-lossConductance / heatRate);
}

/** Heat a pipe has lost between its two ends, W. */
export function pipeLoss(inlet: Celsius, outlet: Celsius, heatRate: number): Watts {
  return heatRate * (inlet - outlet);
}

/** Time water stays in a cell that is followed, s; shorter ones would only make the solver's steps short. */
export const SHORTEST_CELL = 4;
const MOST_CELLS = 10; // the delay of a long run is then spread over a third of itself
