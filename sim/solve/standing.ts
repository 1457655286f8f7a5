import type { Plant } from '../plant/plant.ts';
import type { Control } from './control.ts';
import type { Slots } from './slots.ts';

/**
 * Slots that cannot move until the next event, for what moves them is shut or out: the solver need not carry them. Their rates
 * are none at every state, not only at the present one.
 */
export function standingSlots(
  { built, tapPipe }: Plant,
  slots: Slots,
  { firing, immersionIsOn, tap }: Control,
): readonly number[] {
  const standing: number[] = [];
  if (tap.draw === null) standing.push(slots.drawn, slots.useful, slots.fromStore);
  if (tapPipe === null) standing.push(slots.lostByTapPipe);
  if (!immersionIsOn) standing.push(slots.fromImmersion);
  if (firing !== 'between') standing.push(slots.input);
  if (firing === 'off') standing.push(slots.fuel, slots.fuelForHeating, slots.whileCondensing);
  if (firing === 'off' && built !== null) standing.push(slots.fromBoiler);
  return standing;
}
