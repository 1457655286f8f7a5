import type { Metres } from './units.ts';
import type { Coil, Variant } from './variant.ts';

/** Where a coil stands among the settings. */
export type CoilGroup = 'coil' | 'secondCoil';

/** Which coils are fitted. */
export function coilGroups({ secondCoil }: Variant): readonly CoilGroup[] {
  return secondCoil.fitted === 'no' ? ['coil'] : ['coil', 'secondCoil'];
}

/** The coils that are fitted. */
export function fittedCoils(variant: Variant): readonly Coil[] {
  return coilGroups(variant).map((group) => variant[group]);
}

/** Height of the lowest turn of any fitted coil, m; water below it is hardly heated. */
export function lowestCoil(variant: Variant): Metres {
  return Math.min(...fittedCoils(variant).map(({ bottom }) => bottom));
}
