import type { Celsius, Kelvins, Ohms, Share } from '../../shared/units.ts';
import {
  CLASS_B_CONSTANT,
  CLASS_B_SHARE,
  classB,
  platinumResistance,
  platinumTemperature,
} from './platinum.ts';
import { thermistorResistance, thermistorTemperature } from './thermistor.ts';

/** A value and how far the tolerance of the element lets it be, either way. */
export interface Band {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

/** A temperature element as it is sold. */
export type Element =
  | {
      readonly kind: 'thermistor';
      readonly r25: Ohms;
      readonly beta: Kelvins;
      /** Of R25, either way; below 1. */
      readonly r25Tolerance: Share;
      /** Of beta, either way; below 1. */
      readonly betaTolerance: Share;
    }
  /** Class B; `r0` is its resistance at 0 °C. */
  | { readonly kind: 'platinum'; readonly r0: Ohms };

/** Temperatures at which an element of this kind may have a resistance, °C. @param resistance  ohm */
export function degreesBand(element: Element, resistance: Ohms): Band {
  if (element.kind === 'platinum') {
    // ± (0.3 + 0.005 |t|) K belongs to the temperature that is there, not to the one that is read
    const nominal = platinumTemperature(resistance, element.r0);
    const below = nominal - CLASS_B_CONSTANT;
    const above = nominal + CLASS_B_CONSTANT;
    return {
      low: below / (below > 0 ? 1 + CLASS_B_SHARE : 1 - CLASS_B_SHARE),
      nominal,
      high: above / (above > 0 ? 1 - CLASS_B_SHARE : 1 + CLASS_B_SHARE),
    };
  }
  const { r25, beta } = element;
  return band(
    thermistorTemperature(resistance, r25, beta),
    corners(element).map((corner) => thermistorTemperature(resistance, corner.r25, corner.beta)),
  );
}

/** Resistances an element of this kind may have at a temperature, ohm. @param temperature  °C */
export function ohmsBand(element: Element, temperature: Celsius): Band {
  if (element.kind === 'platinum') {
    return {
      low: platinumResistance(temperature - classB(temperature), element.r0),
      nominal: platinumResistance(temperature, element.r0),
      high: platinumResistance(temperature + classB(temperature), element.r0),
    };
  }
  const { r25, beta } = element;
  return band(
    thermistorResistance(temperature, r25, beta),
    corners(element).map((corner) => thermistorResistance(temperature, corner.r25, corner.beta)),
  );
}

/**
 * The four thermistors at the ends of both tolerances. Ohms and degrees rise or fall with each of
 * R25 and beta all the way, so nothing within the tolerances lies beyond these.
 */
function corners(element: Extract<Element, { kind: 'thermistor' }>) {
  const { r25, beta, r25Tolerance, betaTolerance } = element;
  return [1 - r25Tolerance, 1 + r25Tolerance].flatMap((ofR25) =>
    [1 - betaTolerance, 1 + betaTolerance].map((ofBeta) => ({
      r25: r25 * ofR25,
      beta: beta * ofBeta,
    })),
  );
}

function band(nominal: number, others: readonly number[]): Band {
  return { low: Math.min(nominal, ...others), nominal, high: Math.max(nominal, ...others) };
}
