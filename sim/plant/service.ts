import type { Mode } from '../../shared/arrangements.ts';
import type { CoilRun } from './coil.ts';
import type { Plant } from './plant.ts';

/** What the boiler serves at the moment: which circuits are open, at which flow, and whose target it keeps. */
export interface Service {
  /** The coil at its present flow, or null when shut. */
  readonly coil: CoilRun | null;
  /** Flow through the radiators times specific heat, W/K; 0 when shut. */
  readonly radiatorRate: number;
  readonly limitOf: 'hotWater' | 'heating';
}

/** Nothing open. */
export const closed: Service = { coil: null, radiatorRate: 0, limitOf: 'heating' };

/** Whether water moves. */
export function flows({ coil, radiatorRate }: Service): boolean {
  return coil !== null || radiatorRate > 0;
}

/** Which circuits are open, at which flow. */
export function serviceFor(plant: Plant, mode: Mode): Service {
  if (!mode.coilRuns && !mode.radiatorsRun) return closed;
  const both = mode.coilRuns && mode.radiatorsRun;
  return {
    coil: mode.coilRuns ? (both ? plant.coilShared : plant.coilAlone) : null,
    radiatorRate: mode.radiatorsRun ? (both ? plant.radiatorsShared : plant.radiatorsAlone) : 0,
    limitOf: mode.limitOf,
  };
}
