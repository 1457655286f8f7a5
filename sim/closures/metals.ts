import type { Metal } from '../../shared/variant.ts';
import { WALL_METALS } from './conduction.ts';
import { TUBE_METALS } from './tubeWall.ts';

/** What a metal conducts and holds. */
export interface MetalProperties {
  /** W/(m K) as a cylinder wall or tube. */
  readonly conductivity: number;
  /** W/(m K) as phosphorus-deoxidised or austenitic tube. */
  readonly tubeConductivity: number;
  /** J/(m³ K) */
  readonly volumetricHeat: number;
}

/** Handbook values at room temperature; conductivities as the closures have them. */
// source: from memory: density × specific heat 8960 × 385, 7900 × 500, 7850 × 470 J/(m³ K)
export const metals: Readonly<Record<Metal, MetalProperties>> = {
  copper: {
    conductivity: WALL_METALS.copper,
    tubeConductivity: TUBE_METALS.copper,
    volumetricHeat: 3.45e6,
  },
  stainless: {
    conductivity: WALL_METALS.stainlessSteel,
    tubeConductivity: TUBE_METALS.stainlessSteel,
    volumetricHeat: 3.95e6,
  },
  steel: {
    conductivity: WALL_METALS.carbonSteel,
    tubeConductivity: WALL_METALS.carbonSteel,
    volumetricHeat: 3.69e6,
  },
};
