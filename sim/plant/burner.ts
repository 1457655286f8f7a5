import { RATED_RETURN } from '../../shared/conventions.ts';
import type { Celsius, Kelvins, Seconds, Share, Watts } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { boilerEfficiency, condensingShare } from '../closures/boilerEfficiency.ts';

/** What a burner does: nothing, its least, what its controller asks, its most. */
export type Firing = 'off' | 'least' | 'between' | 'most';

/** A burner between two inputs of fuel, gross, and its controller. Fixed during a run. */
export interface Burner {
  readonly inputLeast: Watts;
  readonly inputMost: Watts;
  /** Input for each kelvin below the target, W/K. */
  readonly gain: number;
  readonly resetTime: Seconds;
  readonly efficiencyShift: Share;
}

export function makeBurner({ boiler }: Variant): Burner {
  const { output, minimumOutput, efficiencyShift } = boiler;
  // source: EU 813/2013, high-temperature regime: rated with 60 °C back
  const rated = (load: Share) => boilerEfficiency(RATED_RETURN, load) + efficiencyShift;
  const inputMost = output / rated(1);
  // the least depends on its own load: a few rounds settle it, for the efficiency hardly depends on load
  let inputLeast = minimumOutput / rated(minimumOutput / output);
  for (let round = 0; round < 4; round++)
    inputLeast = minimumOutput / rated(inputLeast / inputMost);
  return {
    inputLeast,
    inputMost,
    gain: inputMost / boiler.proportionalBand,
    resetTime: boiler.resetTime,
    efficiencyShift,
  };
}

/** Heat the burner gives to the water, W. @param input  fuel, gross, W @param back  return, °C */
export function burnerHeat(burner: Burner, input: Watts, back: Celsius): Watts {
  if (input <= 0) return 0;
  return input * (boilerEfficiency(back, input / burner.inputMost) + burner.efficiencyShift);
}

/** Part of the heat that counts as given while condensing. @param back  return, °C */
export function condenses(input: Watts, back: Celsius): Share {
  return input > 0 ? condensingShare(back) : 0;
}

/** Fuel burnt, gross, W. @param modulated  what the controller asks, burnt only between the two ends */
export function inputOf(burner: Burner, firing: Firing, modulated: Watts): Watts {
  switch (firing) {
    case 'off':
      return 0;
    case 'least':
      return burner.inputLeast;
    case 'most':
      return burner.inputMost;
    default:
      return modulated;
  }
}

/** The nearest input a burner has, W. */
export function withinEnds({ inputLeast, inputMost }: Burner, input: Watts): Watts {
  return Math.min(Math.max(input, inputLeast), inputMost);
}

/** Input a controller starts with that is this far below its target, W. */
export function inputAtStart(burner: Burner, below: Kelvins): Watts {
  return withinEnds(burner, burner.gain * below);
}

/**
 * How fast the controller moves the input, W/s: proportional and integral action on the flow temperature, written as a rate,
 * so that nothing winds up while the burner is at one of its ends.
 * @param below  target less flow temperature, K
 * @param rate   of the flow temperature, K/s
 */
export function inputRate({ gain, resetTime }: Burner, below: Kelvins, rate: number): number {
  return gain * (below / resetTime - rate);
}
