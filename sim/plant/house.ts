import type { Celsius, JoulesPerKelvin, Watts, WattsPerKelvin } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { MASS_PARAMETERS } from '../closures/houseCooling.ts';

/** A house as air and fabric. Fixed during a run. */
export interface House {
  readonly airCapacity: JoulesPerKelvin;
  readonly fabricCapacity: JoulesPerKelvin;
  readonly airToFabric: WattsPerKelvin;
  readonly airToOutside: WattsPerKelvin;
  readonly fabricToOutside: WattsPerKelvin;
  /** Part of the radiators' heat that goes to the fabric by radiation, the rest warms the air. */
  readonly radiantShare: number;
}

/**
 * Splits a heat loss into what leaves with the air and what passes the fabric; with the air alone warmed both together give
 * the declared loss. Radiators also warm the fabric by radiation, and then a house loses a few per cent more.
 */
export function makeHouse(variant: Variant): House {
  const { heatLoss, floorArea, mass } = variant.house;
  const airToFabric = SURFACE_COEFFICIENT * SURFACE_PER_FLOOR * floorArea;
  // The fabric cannot pass on more than the air gives it: in a small, leaky house more leaves with the air
  const throughFabric = Math.min((1 - AIR_SHARE) * heatLoss, MOST_THROUGH * airToFabric);
  const airToOutside = heatLoss - throughFabric;
  return {
    airCapacity: AIR_PER_FLOOR * floorArea,
    fabricCapacity: MASS_PARAMETERS[mass] * floorArea,
    airToFabric,
    airToOutside,
    // In series with air to fabric it passes `throughFabric`
    fabricToOutside: 1 / (1 / throughFabric - 1 / airToFabric),
    radiantShare: RADIANT_SHARE,
  };
}

/** Fabric temperature when radiators keep the house in balance with its air, °C. */
export function fabricStart(house: House, air: Celsius, outside: Celsius): Celsius {
  const { airToFabric, airToOutside, fabricToOutside, radiantShare } = house;
  // fabric: r Q + a (air − fabric) = f (fabric − outside), with Q = w (air − outside) + f (fabric − outside)
  const toAir = radiantShare * airToOutside + airToFabric;
  const toOutside = (1 - radiantShare) * fabricToOutside;
  return (
    (toAir * air + (toOutside - radiantShare * airToOutside) * outside) / (airToFabric + toOutside)
  );
}

/** Heat from air to fabric, W. */
export function heatToFabric(house: House, air: Celsius, fabric: Celsius): Watts {
  return house.airToFabric * (air - fabric);
}

/** Heat that leaves with the air and through the fabric, W. */
export function houseLoss(house: House, air: Celsius, fabric: Celsius, outside: Celsius): Watts {
  return house.airToOutside * (air - outside) + house.fabricToOutside * (fabric - outside);
}

// source: ISO 13790:2008, 7.2.2.2: 3.45 W/(m² K) between air and surfaces, from memory
const SURFACE_COEFFICIENT = 3.45;
// source: ISO 13790:2008, 7.2.2.2: surfaces 4.5 times the floor area, from memory
const SURFACE_PER_FLOOR = 4.5;
// source: ISO 52016-1:2017, default for air and furniture, 10 kJ/(m² K), from memory
const AIR_PER_FLOOR = 10_000;
// common practice, no source: air change and windows, which do not pass the fabric
const AIR_SHARE = 0.4;
// engineering guess, no source: reached above 12.9 W/K for each square metre of floor, several times a leaky house
const MOST_THROUGH = 0.5;
// common practice, no source: panel radiators give about a third of their heat by radiation
const RADIANT_SHARE = 0.35;
