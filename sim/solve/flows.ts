import type { Celsius, Share, Watts } from '../../shared/units.ts';
import type { TapFlows } from '../plant/tap.ts';

/** Heats and temperatures of the moment last evaluated. Temperatures are NaN where no water flows. */
export interface Flows extends TapFlows {
  /** Leaving the boiler, and aimed at. */
  flow: Celsius;
  target: Celsius;
  /** Back at the boiler, both circuits mixed; from the coil alone. */
  returnTemperature: Celsius;
  coilReturn: Celsius;
  coilInlet: Celsius;
  coilOutlet: Celsius;
  outside: Celsius;
  /** From the burner to the water. */
  boilerHeat: Watts;
  /** Gross. */
  fuel: Watts;
  /** What the controller asks of the input, W/s. */
  inputRate: number;
  /** Part of the heat that counts as given while condensing; part of the flow that goes to the radiators. */
  condensing: Share;
  heatingShare: Share;
  /** Into the store. */
  coilHeat: Watts;
  immersionHeat: Watts;
  toRadiators: Watts;
  /** Into the room. */
  radiatorHeat: Watts;
  standingLoss: Watts;
  /** Of the pipes, and of the boiler's case. */
  pipeLoss: Watts;
}

/** Nothing flows. */
export function stillFlows(): Flows {
  return {
    flow: Number.NaN,
    target: Number.NaN,
    returnTemperature: Number.NaN,
    coilReturn: Number.NaN,
    coilInlet: Number.NaN,
    coilOutlet: Number.NaN,
    outside: Number.NaN,
    boilerHeat: 0,
    fuel: 0,
    inputRate: 0,
    condensing: 0,
    heatingShare: 0,
    coilHeat: 0,
    immersionHeat: 0,
    toRadiators: 0,
    radiatorHeat: 0,
    standingLoss: 0,
    pipeLoss: 0,
    hotFlow: 0,
    outlet: Number.NaN,
    drawnHeat: 0,
    tapPipeLoss: 0,
  };
}
