import type { Metal } from '../../shared/variant.ts';
import { coilInside, reynolds } from '../../sim/closures/coilInside.ts';
import { WALL_METALS } from '../../sim/closures/conduction.ts';
import {
  type CoilTube,
  overallCoefficient,
  prepareCoil,
} from '../../sim/closures/overallCoefficient.ts';
import { rayleigh } from '../../sim/closures/rayleigh.ts';
import { scaleResistance } from '../../sim/closures/scale.ts';
import { TUBE_METALS, tubeWall } from '../../sim/closures/tubeWall.ts';
import { prandtl } from '../../sim/closures/water.ts';
import { type Reading, type Sampled, waterOf } from './reading.ts';

/** What the coil's conductance is made of at one moment, at the mean of the primary. SI, per outside area. */
export interface CoilParts {
  readonly tube: CoilTube;
  readonly U: number;
  readonly ho: number;
  readonly hi: number;
  readonly ratio: number;
  readonly Rw: number;
  readonly Rs: number;
  /** Outside film: its temperature, °C, and how far the tube is above the water, K. */
  readonly film: number;
  readonly difference: number;
  readonly Ra: number;
  readonly Pr: number;
  readonly Re: number;
  /** Of the water in the bore, at its mean: temperature, °C, and Prandtl number. */
  readonly primary: number;
  readonly primaryPr: number;
  /** Bore over diameter of the turns. */
  readonly curvature: number;
}

/** The parts of the coil's conductance, or null where it is given as a whole or the coil does not run. */
export function coilParts(result: Sampled, reading: Reading): CoilParts | null {
  const { coil } = result.variant;
  const primary = (reading.of('coilInlet') + reading.of('coilOutlet')) / 2;
  const tank = reading.of('coilWater');
  if (coil.given === 'conductance' || !(reading.heatRate > 0) || !Number.isFinite(tank))
    return null;
  const water = waterOf(result);
  const tube: CoilTube = {
    outsideDiameter: coil.tubeOutside,
    insideDiameter: coil.tubeOutside - 2 * coil.tubeWall,
    coilDiameter: coil.coilDiameter,
    insideEnhancement: 1,
    outsideEnhancement: coil.enhancement,
    wallConductivity: tubeConductivity[coil.tubeMaterial],
    scaleThickness: coil.scaleThickness,
    scaleConductivity: coil.scaleConductivity,
    foulingResistance: 0,
  };
  const massFlow = reading.heatRate / water.specificHeat(primary);
  const U = overallCoefficient(prepareCoil(tube, massFlow, water, water), primary, tank);
  const hi = coilInside(water, tube, massFlow, primary);
  const ratio = tube.outsideDiameter / tube.insideDiameter;
  const Rw = tubeWall(tube.outsideDiameter, tube.insideDiameter, tube.wallConductivity);
  const Rs = scaleResistance(tube.scaleThickness, tube.scaleConductivity);
  const ho = 1 / (1 / U - Rw - Rs - ratio / hi);
  // the heat that crosses the film is the heat that crosses the whole
  const difference = Math.abs((U * (primary - tank)) / ho);
  const film = tank + (Math.sign(primary - tank) * difference) / 2;
  return {
    tube,
    U,
    ho,
    hi,
    ratio,
    Rw,
    Rs,
    film,
    difference,
    Ra: rayleigh(water, tube.outsideDiameter, film, difference),
    Pr: prandtl(water, film),
    Re: reynolds(water, tube.insideDiameter, massFlow, primary),
    primary,
    primaryPr: prandtl(water, primary),
    curvature: tube.insideDiameter / tube.coilDiameter,
  };
}

const tubeConductivity: Readonly<Record<Metal, number>> = {
  copper: TUBE_METALS.copper,
  stainless: TUBE_METALS.stainlessSteel,
  steel: WALL_METALS.carbonSteel,
};
