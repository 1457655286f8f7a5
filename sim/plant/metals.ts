import type { Metal } from '../../shared/variant.ts';

/** What a metal conducts and holds. */
export interface MetalProperties {
  /** W/(m K) as a cylinder wall or tube. */
  readonly conductivity: number;
  /** W/(m K) as phosphorus-deoxidised or austenitic tube. */
  readonly tubeConductivity: number;
  /** J/(m³ K) */
  readonly volumetricHeat: number;
}

/** Handbook values at room temperature. */
// source: from memory: conductivity copper 385 to 400, deoxidised tube 305 to 340, austenitic about 15, carbon steel about
// 50 W/(m K); density × specific heat 8960 × 385, 7900 × 500, 7850 × 470 J/(m³ K)
export const metals: Readonly<Record<Metal, MetalProperties>> = {
  copper: { conductivity: 390, tubeConductivity: 320, volumetricHeat: 3.45e6 },
  stainless: { conductivity: 16, tubeConductivity: 15, volumetricHeat: 3.95e6 },
  steel: { conductivity: 50, tubeConductivity: 50, volumetricHeat: 3.69e6 },
};
