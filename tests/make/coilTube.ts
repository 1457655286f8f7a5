import type { CoilTube } from '../../sim/closures/overallCoefficient.ts';

/**
 * A clean 22 / 20.4 mm copper coil wound at 350 mm, a single tube's outside coefficient; change
 * what a test is about.
 */
export function coilTube(changes: Partial<CoilTube> = {}): CoilTube {
  return {
    outsideDiameter: 0.022,
    insideDiameter: 0.0204,
    coilDiameter: 0.35,
    wallConductivity: 390,
    scaleThickness: 0,
    scaleConductivity: 2.2,
    foulingResistance: 0,
    insideEnhancement: 1,
    outsideEnhancement: 1,
    ...changes,
  };
}
