import { DESIGN_SPREAD } from '../../shared/conventions.ts';
import type { Celsius } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { loadFlow, weatherFlow } from '../closures/heatingCurve.ts';

/**
 * The flow temperature the boiler aims at, °C.
 * @param limitOf  whose target it is
 * @param air      of the rooms, °C
 * @param outside  °C
 */
export function flowTarget(
  { boiler, heating }: Variant,
  limitOf: 'hotWater' | 'heating',
  air: Celsius,
  outside: Celsius,
): Celsius {
  if (limitOf === 'hotWater' && boiler.targets === 'separate') return boiler.hotWaterFlow;
  switch (heating.control) {
    case 'loadCompensation':
      return loadFlow(
        air,
        heating.roomSetPoint,
        heating.loadBand,
        Math.min(heating.lowestFlow, boiler.heatingFlow),
        boiler.heatingFlow,
      );
    case 'weatherCompensation':
      return Math.min(
        Math.max(weatherFlowOf(boiler.heatingFlow, heating, outside), heating.lowestFlow),
        boiler.heatingFlow,
      );
    default:
      return boiler.heatingFlow;
  }
}

function weatherFlowOf(
  heatingFlow: Celsius,
  { roomSetPoint, designOutside, radiatorExponent }: Variant['heating'],
  outside: Celsius,
): Celsius {
  return weatherFlow(
    outside,
    roomSetPoint,
    designOutside,
    heatingFlow,
    radiatorExponent,
    DESIGN_SPREAD,
  );
}
