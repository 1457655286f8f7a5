import { PRIMARY_TEMPERATURE } from '../../shared/conventions.ts';
import { arrangementOf } from '../../shared/arrangements.ts';
import type { Variant } from '../../shared/variant.ts';
import { constantWater, tabulatedWater, volumetricHeat, type Water } from '../closures/water.ts';
import { type Burner, makeBurner } from './burner.ts';
import { type CoilRun, enlarged, makeCoilRun, unlimitedCoil } from './coil.ts';
import { withRatedAreas } from './coilTube.ts';
import { type Cylinder, makeCylinder } from './cylinder.ts';
import { type Inlet, makeInlet } from './drawOff.ts';
import { type House, makeHouse } from './house.ts';
import { type Immersion, makeImmersion } from './immersion.ts';
import { type Loop, makeLoop } from './loop.ts';
import type { PipeCells } from './pipeCells.ts';
import { makePrimary, type Primary } from './primary.ts';
import { type PrimaryFlows, primaryFlows } from './primaryFlows.ts';
import { makeRadiators, type Radiators } from './radiators.ts';
import { makeRestingCoil } from './restingCoil.ts';
import { atHeight, meanAboveFoot, type Sensed } from './sensed.ts';
import { makeTapPipe } from './tapPipe.ts';

/** A boiler as built: its burner, and the water it heats on its way round. */
export interface BuiltBoiler {
  readonly burner: Burner;
  readonly loop: Loop;
}

/** Everything about an installation that stays fixed during a run, ready for the derivative. */
export interface Plant {
  readonly variant: Variant;
  readonly cylinder: Cylinder;
  readonly flows: PrimaryFlows;
  /** The coil with the whole primary flow. */
  readonly coilAlone: CoilRun;
  /** The coil with its share of the flow while the radiators run too. */
  readonly coilShared: CoilRun;
  /** Primary flow times specific heat through the radiators, alone and shared, W/K. */
  readonly radiatorsAlone: number;
  readonly radiatorsShared: number;
  readonly primary: Primary;
  /** Null for the ideal boiler. */
  readonly built: BuiltBoiler | null;
  readonly radiators: Radiators;
  readonly house: House;
  readonly inlet: Inlet;
  /** Null where the tap is at the store, or nearly. */
  readonly tapPipe: PipeCells | null;
  readonly immersion: Immersion | null;
  /** What the sensor is in. */
  readonly sensed: Sensed;
}

/** What is other than the settings say, to ask what one thing costs or how much an unknown matters. */
export interface Altered {
  /** In place of the flows that follow from the settings. */
  readonly flows?: PrimaryFlows;
  /** Times what the coils conduct; `unlimited`: all the surface one could wish for, at their foot. */
  readonly coil?: number | 'unlimited';
  /** The sensor has the mean temperature of all that the coils can heat, wherever it sits. */
  readonly sensesMean?: boolean;
}

/** Makes an installation ready for a run. @param altered  nothing, for the installation as it is set */
export function makePlant(variant: Variant, altered: Altered = {}): Plant {
  const water = waterOf(variant);
  const cylinder = makeCylinder(variant, water);
  const sized = withRatedAreas(variant, water);
  const flows = altered.flows ?? primaryFlows(sized, water);
  const density = water.density(PRIMARY_TEMPERATURE);
  const coilAt = (flow: number): CoilRun => {
    const { coil = 1 } = altered;
    if (coil === 'unlimited') return unlimitedCoil(sized, cylinder, water, flow * density);
    const run = makeCoilRun(sized, cylinder, water, flow * density);
    return coil === 1 ? run : enlarged(run, coil);
  };
  const coilAlone = coilAt(flows.coilAlone);
  const perFlow = volumetricHeat(water, PRIMARY_TEMPERATURE); // J/(m³ K)
  const primary = makePrimary(variant, water, flows.coilAlone);
  const { both } = arrangementOf(variant.heating.arrangement);
  return {
    variant,
    cylinder,
    flows,
    coilAlone,
    coilShared: both.coilRuns && both.radiatorsRun ? coilAt(flows.coilShared) : coilAlone,
    radiatorsAlone: flows.radiatorsAlone * perFlow,
    radiatorsShared: flows.radiatorsShared * perFlow,
    primary,
    built:
      variant.boiler.model === 'ideal'
        ? null
        : {
            burner: makeBurner(variant),
            loop: makeLoop(
              variant,
              water,
              primary,
              makeRestingCoil(sized, coilAlone, water),
              coilAlone.heatRate,
            ),
          },
    radiators: makeRadiators(variant, water),
    house: makeHouse(variant),
    // a jet in water that does not expand would stir the whole store
    inlet: makeInlet(variant, cylinder, waters.measured),
    tapPipe: makeTapPipe(variant, water),
    immersion: makeImmersion(variant, cylinder),
    sensed:
      altered.sensesMean === true ? meanAboveFoot(cylinder, variant) : atHeight(cylinder, variant),
  };
}

/** The water an installation runs on. */
export function waterOf({ run }: Variant): Water {
  return waters[run.water];
}

// Made once: their tables never change
const waters: Readonly<Record<Variant['run']['water'], Water>> = {
  measured: tabulatedWater(),
  constant: constantWater(),
};
