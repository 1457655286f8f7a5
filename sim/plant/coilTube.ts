import type { Metres, SquareMetres } from '../../shared/units.ts';
import type { Coil, Variant } from '../../shared/variant.ts';
import { metals } from '../closures/metals.ts';
import type { CoilTube } from '../closures/overallCoefficient.ts';
import type { Water } from '../closures/water.ts';
import { ratedArea } from './ratedCoil.ts';

/** Outside area of a coil, m²: from its tube, as given, or what reproduces its rating. */
export function coilArea(coil: Coil, water: Water): SquareMetres {
  if (coil.given === 'area') return coil.area;
  if (coil.given === 'rating') return ratedArea(coil, tubeOf, water);
  return Math.PI * coil.tubeOutside * coil.length;
}

/** Length of the tube that has the area of a coil, m. */
export function tubeLength(coil: Coil, water: Water): Metres {
  return coilArea(coil, water) / (Math.PI * coil.tubeOutside);
}

/** Inside diameter of the tube, m. */
export function tubeBore({ tubeOutside, tubeWall }: Coil): Metres {
  return tubeOutside - 2 * tubeWall;
}

/** The tube of a coil as the closures want it. */
export function tubeOf(coil: Coil): CoilTube {
  return {
    outsideDiameter: coil.tubeOutside,
    insideDiameter: tubeBore(coil),
    coilDiameter: coil.coilDiameter,
    insideEnhancement: 1,
    outsideEnhancement: coil.enhancement,
    wallConductivity: metals[coil.tubeMaterial].tubeConductivity,
    scaleThickness: coil.scaleThickness,
    scaleConductivity: coil.scaleConductivity,
    foulingResistance: 0,
  };
}

/** The same installation with each rated coil known by its area, which takes milliseconds to find. */
export function withRatedAreas(variant: Variant, water: Water): Variant {
  const { coil, secondCoil } = variant;
  const sized = <Either extends Coil>(rated: Either): Either =>
    rated.given === 'rating' ? { ...rated, given: 'area', area: coilArea(rated, water) } : rated;
  return {
    ...variant,
    coil: sized(coil),
    secondCoil: secondCoil.fitted === 'no' ? secondCoil : sized(secondCoil),
  };
}
