import { exponential } from '../../shared/portableMaths.ts';
import type { Celsius, Watts } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';

/** The pipes between boiler and cylinder, flow and return alike, at steady flow. Fixed during a run. */
export interface Primary {
  /** One pipe to its surroundings, W/K. */
  readonly lossConductance: number;
  readonly surroundings: Celsius;
}

export function makePrimary(variant: Variant): Primary {
  return {
    lossConductance: variant.primary.length * variant.primary.heatLoss,
    surroundings: variant.cylinder.surroundings,
  };
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
