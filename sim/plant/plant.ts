import type { Variant } from '../../shared/variant.ts';
import { constantWater, tabulatedWater, type Water } from '../closures/water.ts';
import { type CoilRun, makeCoilRun } from './coil.ts';
import { type Cylinder, makeCylinder } from './cylinder.ts';
import { type Inlet, makeInlet } from './drawOff.ts';
import { type House, makeHouse } from './house.ts';
import { makePrimary, type Primary } from './primary.ts';
import { makeRadiators, type Radiators } from './radiators.ts';

/** Everything about an installation that stays fixed during a run, ready for the derivative. */
export interface Plant {
  readonly variant: Variant;
  readonly cylinder: Cylinder;
  /** The coil with the whole primary flow. */
  readonly coilAlone: CoilRun;
  /** The coil with its share of the flow while the radiators run too. */
  readonly coilShared: CoilRun;
  /** Primary flow times specific heat through the radiators, alone and shared, W/K. */
  readonly radiatorsAlone: number;
  readonly radiatorsShared: number;
  readonly primary: Primary;
  readonly radiators: Radiators;
  readonly house: House;
  readonly inlet: Inlet;
}

/** Makes an installation ready for a run. */
export function makePlant(variant: Variant): Plant {
  const water = waters[variant.run.water];
  const cylinder = makeCylinder(variant, water);
  const massFlow = variant.primary.flow * water.density(FLOW_TEMPERATURE);
  const { coilShare } = variant.primary;
  const coilAlone = makeCoilRun(variant, cylinder, water, massFlow);
  return {
    variant,
    cylinder,
    coilAlone,
    coilShared:
      variant.heating.arrangement === 'simultaneous'
        ? makeCoilRun(variant, cylinder, water, massFlow * coilShare)
        : coilAlone,
    radiatorsAlone: coilAlone.heatRate,
    radiatorsShared: coilAlone.heatRate * (1 - coilShare),
    primary: makePrimary(variant),
    radiators: makeRadiators(variant, water),
    house: makeHouse(variant),
    inlet: makeInlet(variant, cylinder),
  };
}

// Made once: their tables never change
const waters: Readonly<Record<Variant['run']['water'], Water>> = {
  measured: tabulatedWater(),
  constant: constantWater(),
};

const FLOW_TEMPERATURE = 65; // °C, where litres of primary water are turned into kilograms
