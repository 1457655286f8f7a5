import type { Coil } from '../../shared/variant.ts';
import { fittedCoils } from '../../shared/fittedCoils.ts';
import type { Sampled } from './reading.ts';

/** Length of the tube of a coil, m; NaN where its rating or its UA says nothing of it. */
export function coilLength({ given, area, length, tubeOutside }: Coil): number {
  if (given === 'rating' || given === 'conductance') return Number.NaN;
  return given === 'area' ? area / (Math.PI * tubeOutside) : length;
}

/** Water in the coils as far as their tube is known, m³; NaN where one is known by its rating. */
export function coilContent({ variant }: Pick<Sampled, 'variant'>): number {
  return fittedCoils(variant).reduce((sum, coil) => sum + contentOf(coil), 0);
}

function contentOf(coil: Coil): number {
  if (coil.given === 'conductance') return 0;
  const bore = coil.tubeOutside - 2 * coil.tubeWall;
  return (Math.PI / 4) * bore * bore * coilLength(coil);
}
