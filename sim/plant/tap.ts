import type { PatternDraw } from '../../shared/drawPattern.ts';
import type { Celsius, CubicMetresPerSecond, Share, Watts } from '../../shared/units.ts';
import { drawOffRates } from './drawOff.ts';
import { pipeCellRates } from './pipeCells.ts';
import type { Plant } from './plant.ts';

/** What passes at the tap. */
export interface TapFlows {
  /** Out of the store. */
  hotFlow: CubicMetresPerSecond;
  /** At the tap; NaN while it is shut. */
  outlet: Celsius;
  /** Out of the tap, above the incoming cold. */
  drawnHeat: Watts;
  tapPipeLoss: Watts;
}

/**
 * Hot water out of the store, through the pipe to the tap, cold mixed in there: adds what it carries to `net`, [layer], W,
 * writes the rates of the pipe's cells, K/s, and says what passed. While nothing is drawn the pipe cools.
 * @param draw     null while the tap is shut
 * @param isWarm   what arrives is at or above what is wanted
 * @param pipe     slot of the pipe's first cell
 */
export function tapRates(
  draw: PatternDraw | null,
  isWarm: boolean,
  { cylinder, inlet, tapPipe }: Plant,
  pipe: number,
  y: ArrayLike<number>,
  net: Float64Array,
  rates: number[],
  flows: TapFlows,
): void {
  const { cold } = inlet;
  const top = y[cylinder.layers - 1];
  const arriving = tapPipe === null ? top : y[pipe + tapPipe.cells - 1];
  if (draw === null) {
    flows.hotFlow = 0;
    flows.outlet = Number.NaN;
  } else if (coldWillDo(draw, cold)) {
    flows.hotFlow = 0;
    flows.outlet = cold;
  } else if (draw.mixedTo !== undefined && isWarm) {
    flows.hotFlow = draw.flow * shareAlong(arriving, cold, draw.mixedTo);
    flows.outlet = draw.mixedTo;
  } else {
    flows.hotFlow = draw.flow;
    flows.outlet = arriving;
  }
  const { hotFlow } = flows;
  const heatRate = hotFlow * cylinder.waterHeat; // W/K
  if (hotFlow > 0) drawOffRates(cylinder, inlet, hotFlow, y, net);
  flows.tapPipeLoss = tapPipe === null ? 0 : pipeCellRates(tapPipe, pipe, top, heatRate, y, rates);
  flows.drawnHeat = heatRate * (arriving - cold);
}

/** Whether the incoming cold is as warm as what is wanted, so that it comes out by itself. */
export function coldWillDo({ mixedTo }: PatternDraw, cold: Celsius): boolean {
  return mixedTo !== undefined && mixedTo <= cold;
}

/**
 * Share of hot water in a blend. A step in which the hot turns too cold goes on along the same curve, up to a share of 2, so
 * that the solver sees no corner before the event that ends the step there.
 */
function shareAlong(hot: Celsius, cold: Celsius, wanted: Celsius): Share {
  return (wanted - cold) / Math.max(hot - cold, (wanted - cold) / 2);
}
