import { PRIMARY_TEMPERATURE, REFERENCE_FLOW } from '../../shared/conventions.ts';
import type { CubicMetresPerSecond, MetresPerSecond } from '../../shared/units.ts';
import type { Coil, Variant } from '../../shared/variant.ts';
import { arrangementOf } from '../../shared/arrangements.ts';
import { fittedCoils } from '../../shared/fittedCoils.ts';
import { coilPressureDrop } from '../closures/coilPressureDrop.ts';
import { copperTubes } from '../closures/copperTube.ts';
import { equivalentLength, quadraticDrop } from '../closures/fitting.ts';
import { boreVelocity, COPPER_ROUGHNESS, pipePressureDrop } from '../closures/pipeFriction.ts';
import { circulatorPressure } from '../closures/pumpCurve.ts';
import type { Water } from '../closures/water.ts';
import { tubeBore, tubeLength } from './coilTube.ts';
import { type Drop, networkFlows } from './network.ts';

/** What flows where for each position of the valves, m³/s. */
export interface PrimaryFlows {
  readonly coilAlone: CubicMetresPerSecond;
  readonly radiatorsAlone: CubicMetresPerSecond;
  readonly coilShared: CubicMetresPerSecond;
  readonly radiatorsShared: CubicMetresPerSecond;
}

/** The flows of a variant: as given, or where circulator and resistances meet. */
export function primaryFlows(variant: Variant, water: Water): PrimaryFlows {
  const { flowFrom, flow, coilShare } = variant.primary;
  if (flowFrom === 'given') {
    return {
      coilAlone: flow,
      radiatorsAlone: flow,
      coilShared: flow * coilShare,
      radiatorsShared: flow * (1 - coilShare),
    };
  }
  const { circulator, boiler, heating } = variant;
  const density = water.density(PRIMARY_TEMPERATURE);
  const pump = (q: number) => circulatorPressure(circulator, q, density);
  const common: Drop = (q) => quadraticDrop(boiler.pressureDrop, REFERENCE_FLOW, q);
  const { sharedValve = 1 } = arrangementOf(heating.arrangement);
  const coil = (valve: number) => coilBranch(variant, water, valve);
  const radiators =
    (valve: number): Drop =>
    (q) =>
      quadraticDrop(heating.pressureDrop + valve * variant.primary.valveDrop, REFERENCE_FLOW, q);
  const solve = (branches: readonly Drop[]) =>
    networkFlows(pump, common, branches, circulator.largestFlow);
  const [coilAlone] = solve([coil(1)]);
  const [radiatorsAlone] = solve([radiators(1)]);
  const [coilShared, radiatorsShared] = solve([coil(sharedValve), radiators(sharedValve)]);
  return { coilAlone, radiatorsAlone, coilShared, radiatorsShared };
}

/** Speed of a flow in the primary pipe, m/s. */
export function primaryVelocity({ primary }: Variant, flow: CubicMetresPerSecond): MetresPerSecond {
  return boreVelocity(copperTubes[primary.size].bore, flow);
}

/** Pipes there and back with their bends, the coils, the valve and whatever else is in the way. */
function coilBranch(variant: Variant, water: Water, valve: number): Drop {
  const { primary } = variant;
  const density = water.density(PRIMARY_TEMPERATURE);
  const viscosity = water.viscosity(PRIMARY_TEMPERATURE);
  const { bore } = copperTubes[primary.size];
  const length = 2 * primary.length + primary.bends * equivalentLength('elbow', bore);
  const tubes = fittedCoils(variant)
    .filter(({ given }) => given !== 'conductance')
    .map((coil) => tube(coil, water));
  const fixed = valve * primary.valveDrop + primary.coilBranchDrop;
  return (q) => {
    let drop = quadraticDrop(fixed, REFERENCE_FLOW, q);
    if (length > 0) {
      drop += pipePressureDrop(length, bore, COPPER_ROUGHNESS, q, density, viscosity);
    }
    for (const one of tubes) drop += coilPressureDrop(one, q, density, viscosity);
    return drop;
  };
}

/** The tube of a coil as the friction closures want it; a coil known by area or rating is as long as its area needs. */
function tube(coil: Coil, water: Water) {
  return {
    bore: tubeBore(coil),
    coilDiameter: coil.coilDiameter,
    length: tubeLength(coil, water),
  };
}
