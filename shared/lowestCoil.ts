import type { Metres } from './units.ts';
import type { Variant } from './variant.ts';

/** Height of the lowest turn of any fitted coil, m; water below it is hardly heated. */
export function lowestCoil({ coil, secondCoil }: Variant): Metres {
  return secondCoil.fitted === 'no' ? coil.bottom : Math.min(coil.bottom, secondCoil.bottom);
}
