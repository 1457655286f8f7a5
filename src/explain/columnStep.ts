import { conductionRecord } from '../../sim/closures/conduction.ts';
import { metals } from '../../sim/closures/metals.ts';
import { type Reading, type Sampled, waterOf } from './reading.ts';
import { type Step, worked } from './working.ts';

/** Conduction down the water and the wall of the cylinder, at the mean of the store. */
export function columnStep(result: Sampled, reading: Reading): Step {
  const { cylinder } = result.variant;
  return worked(conductionRecord, {
    water: waterOf(result).conductivity(reading.mean) * cylinder.stirring,
    wall: metals[cylinder.wallMaterial].conductivity,
    thickness: cylinder.wallThickness,
    diameter: Math.sqrt((4 * cylinder.volume) / (Math.PI * cylinder.height)),
  });
}
