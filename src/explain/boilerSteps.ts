import { DESIGN_SPREAD, RATED_RETURN } from '../../shared/conventions.ts';
import { boilerEfficiency, boilerEfficiencyRecord } from '../../sim/closures/boilerEfficiency.ts';
import { loadFlowRecord, weatherFlowRecord } from '../../sim/closures/heatingCurve.ts';
import type { Reading, Sampled } from './reading.ts';
import { belowTarget, burnerGives, fuelBurnt } from './relations/burner.ts';
import { type Step, worked } from './working.ts';

/** Heat of a boiler as built: fuel times efficiency, and what the efficiency follows from. */
export function burnerSteps(result: Sampled, { of }: Reading): Step[] {
  const [fuel, heat] = [of('fuel'), of('boilerHeat')];
  return [
    worked(burnerGives, { fuel, efficiency: fuel > 0 ? heat / fuel : Number.NaN }),
    efficiencyStep(result, of('returnTemperature'), fuel),
  ];
}

/** The fuel behind the heat. */
export function fuelSteps(result: Sampled, { of }: Reading): Step[] {
  const [fuel, heat] = [of('fuel'), of('boilerHeat')];
  return [
    worked(fuelBurnt, { power: heat, efficiency: fuel > 0 ? heat / fuel : Number.NaN }),
    efficiencyStep(result, of('returnTemperature'), fuel),
  ];
}

/** Efficiency at a return and a load. @param fuel  burnt, gross, W */
export function efficiencyStep({ variant }: Sampled, back: number, fuel: number): Step {
  const { output, efficiencyShift } = variant.boiler;
  const most = output / (boilerEfficiency(RATED_RETURN, 1) + efficiencyShift);
  return worked(boilerEfficiencyRecord, {
    returnTemperature: back,
    load: fuel > 0 ? fuel / most : Number.NaN,
  });
}

/** Said beside the efficiency where the boiler departs from the curve. */
export function efficiencyNote({ variant }: Sampled): string {
  const { model, efficiencyShift } = variant.boiler;
  if (model === 'ideal') return 'An ideal boiler burns no fuel that is counted.';
  return efficiencyShift === 0
    ? ''
    : `This boiler is ${(100 * efficiencyShift).toFixed(1).replace('-', '−')} percentage points off the curve.`;
}

/** What the boiler aims at, and how far it is from it. */
export function targetSteps({ variant }: Sampled, reading: Reading): Step[] {
  const { boiler, heating } = variant;
  const { of } = reading;
  const below = worked(belowTarget, { target: of('flowTarget'), flow: of('flow') });
  const isOwn = of('coilFlow') > 0 && boiler.targets === 'separate';
  if (isOwn || heating.control === 'stat') return [below];
  if (heating.control === 'loadCompensation') {
    const curve = worked(loadFlowRecord, {
      air: of('air'),
      setPoint: heating.roomSetPoint,
      band: heating.loadBand,
      lowest: Math.min(heating.lowestFlow, boiler.heatingFlow),
      highest: boiler.heatingFlow,
    });
    return [curve, below];
  }
  const curve = worked(weatherFlowRecord, {
    outside: of('outside'),
    room: heating.roomSetPoint,
    designOutside: heating.designOutside,
    designFlow: boiler.heatingFlow,
    exponent: heating.radiatorExponent,
    spread: DESIGN_SPREAD,
  });
  return [curve, below];
}
