import { power } from '../closures/power.ts';
import type { Celsius, JoulesPerKelvin, Watts } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { RATED_EXCESS, radiatorOutput } from '../closures/radiator.ts';
import type { Water } from '../closures/water.ts';

/** All radiators as one body of water. Fixed during a run. */
export interface Radiators {
  readonly rated: Watts;
  readonly exponent: number;
  readonly capacity: JoulesPerKelvin;
}

export function makeRadiators(variant: Variant, water: Water): Radiators {
  const { radiatorOutput: rated, radiatorExponent, waterContent } = variant.heating;
  return {
    rated,
    exponent: radiatorExponent,
    capacity: waterContent * water.density(BOOK_TEMPERATURE) * water.specificHeat(BOOK_TEMPERATURE),
  };
}

/** Temperature at which the radiators just keep a house in balance, °C. @param need  heat the house loses, W */
export function radiatorsStart(radiators: Radiators, air: Celsius, need: Watts): Celsius {
  if (need <= 0) return air;
  const excess = RATED_EXCESS * power(need / radiators.rated, 1 / radiators.exponent);
  return Math.min(air + excess, HOTTEST_START);
}

/**
 * Heat the radiators give to the room, W. Rated on the mean of flow and return, so that is what counts while water
 * passes; the water inside is taken at the return temperature.
 * @param water   in the radiators, °C
 * @param mean    of flow and return while water passes, else the same as `water`, °C
 */
export function radiatorHeat(radiators: Radiators, mean: Celsius, air: Celsius): Watts {
  return radiatorOutput(radiators.rated, mean - air, radiators.exponent);
}

const BOOK_TEMPERATURE = 50; // °C, where the heat held by radiator water is taken
const HOTTEST_START = 80; // °C, a start is never hotter than a boiler could make it
