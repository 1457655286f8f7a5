import { PIPE_TEMPERATURE, PRIMARY_TEMPERATURE } from '../../shared/conventions.ts';
import type { CubicMetres } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { copperTubes, tubeContent, tubeMetalHeat } from '../closures/copperTube.ts';
import { pipeConductance, usualPipe } from '../closures/pipeHeatLoss.ts';
import { volumetricHeat, type Water } from '../closures/water.ts';
import type { PipeCells } from './pipeCells.ts';

/** The pipe from the store to the tap, or null where it holds too little to be followed. */
export function makeTapPipe({ draw, cylinder }: Variant, water: Water): PipeCells | null {
  const { pipeLength, pipeSize, pipeLagging } = draw;
  const content = tapPipeContent(draw);
  if (content < LEAST_CELL) return null;
  const { surroundings } = cylinder;
  const pipe = usualPipe(copperTubes[pipeSize].outside, pipeLagging);
  return {
    cells: Math.min(MOST_CELLS, Math.floor(content / LEAST_CELL)),
    capacity:
      content * volumetricHeat(water, PRIMARY_TEMPERATURE) + pipeLength * tubeMetalHeat(pipeSize),
    lossConductance: pipeLength * pipeConductance(pipe, PIPE_TEMPERATURE, surroundings),
    surroundings,
  };
}

/** Water in the pipe to the tap, which runs off before the store's own comes. */
export function tapPipeContent({ pipeLength, pipeSize }: Variant['draw']): CubicMetres {
  return pipeLength * tubeContent(pipeSize);
}

const MOST_CELLS = 6; // the arrival of hot water is then spread over two fifths of the time it takes
const LEAST_CELL: CubicMetres = 1e-4; // emptied in a second at 6 l/min; smaller ones would only make the solver’s steps short
