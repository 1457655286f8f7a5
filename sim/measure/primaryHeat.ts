import type { Joules } from '../../shared/units.ts';
import type { Loop } from '../plant/loop.ts';
import type { Slots } from '../solve/slots.ts';

/**
 * Heat held by the water of boiler, pipes and coil, J.
 * @param above  kelvins of one slot above whatever it is counted from
 */
export function heldByPrimary(loop: Loop, slots: Slots, above: (slot: number) => number): Joules {
  if (slots.loop === null) return 0;
  const { boilerWater, out, back, coilIn, coilOut } = slots.loop;
  const { pipe, coil, boilerCapacity } = loop;
  let sum = boilerCapacity * above(boilerWater);
  for (let cell = 0; cell < pipe.cells; cell++) {
    sum += (pipe.capacity / pipe.cells) * (above(out + cell) + above(back + cell));
  }
  if (coilIn >= 0) sum += coil.halfCapacity * (above(coilIn) + above(coilOut));
  return sum;
}
