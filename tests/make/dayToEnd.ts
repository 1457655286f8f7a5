import type { DayRun } from '../../shared/day.ts';
import type { Delivered } from '../../shared/delivery.ts';
import type { Variant } from '../../shared/variant.ts';
import { dayRun } from '../../sim/run/day.ts';
import { delivered } from '../../sim/run/delivery.ts';

/** A day in use, run in one go. */
export function dayToEnd(variant: Variant): DayRun {
  return toEnd(dayRun(variant));
}

/** What the store delivers, run in one go. */
export function deliveredToEnd(variant: Variant): Delivered {
  return toEnd(delivered(variant));
}

function toEnd<T>(run: Generator<number, T>): T {
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
  }
}
