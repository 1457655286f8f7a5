import type { Celsius, Watts, WattsPerKelvin } from '../../shared/units.ts';
import { type CoilRun, enlarged, passCoil } from './coil.ts';
import { alongPipe, type Primary } from './primary.ts';

/** What a coil would get and take from the boiler at one flow temperature, were pipes and coil in step with it. */
export interface CoilTake {
  /** Into the store. */
  readonly heat: Watts;
  /** From the boiler, the losses of the pipes with it. */
  readonly taken: Watts;
}

/** How that changes, each for a change by its whole: of flow temperature for each kelvin, of surface and of flow as if doubled. */
export interface CoilSlopes {
  readonly perKelvin: { readonly heat: WattsPerKelvin; readonly taken: WattsPerKelvin };
  readonly perSurface: CoilTake;
  readonly perFlow: CoilTake;
}

/** A coil, and the same with a hundredth more of surface or of flow. */
export interface CoilRelaxed {
  readonly run: CoilRun;
  readonly larger: CoilRun;
  readonly faster: CoilRun;
}

/** @param at  makes the same coil at another flow, times the present one */
export function relaxed(run: CoilRun, at: (times: number) => CoilRun): CoilRelaxed {
  return { run, larger: enlarged(run, 1 + HUNDREDTH), faster: at(1 + HUNDREDTH) };
}

/**
 * What a coil takes at a flow temperature.
 * @param flow  leaving the boiler, °C
 * @param T     store, [layer] °C
 */
export function coilTake(
  run: CoilRun,
  primary: Primary,
  flow: Celsius,
  T: ArrayLike<number>,
): CoilTake {
  const { heatRate } = run;
  const inlet = alongPipe(primary, flow, heatRate);
  const outlet = passCoil(run, inlet, T, null);
  return {
    heat: heatRate * (inlet - outlet),
    taken: heatRate * (flow - alongPipe(primary, outlet, heatRate)),
  };
}

/** The slopes at a flow temperature, by small steps through the coil itself. @param here  what it takes there */
export function coilSlopes(
  { larger, faster, run }: CoilRelaxed,
  primary: Primary,
  flow: Celsius,
  T: ArrayLike<number>,
  here: CoilTake,
): CoilSlopes {
  const slope = (there: CoilTake, step: number): CoilTake => ({
    heat: (there.heat - here.heat) / step,
    taken: (there.taken - here.taken) / step,
  });
  return {
    perKelvin: slope(coilTake(run, primary, flow + WARMER, T), WARMER),
    perSurface: slope(coilTake(larger, primary, flow, T), HUNDREDTH),
    perFlow: slope(coilTake(faster, primary, flow, T), HUNDREDTH),
  };
}

const HUNDREDTH = 0.01;
const WARMER = 0.25; // K
