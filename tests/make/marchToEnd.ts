import type { Plant } from '../../sim/plant/plant.ts';
import { type Marched, type MarchOptions, march } from '../../sim/run/march.ts';
import { TOLERANCE } from '../../sim/run/simulate.ts';
import { System } from '../../sim/solve/system.ts';

/** Marches a plant from its start to the end without samples, at the tolerance of every run. */
export function marchToEnd(plant: Plant, options: Partial<MarchOptions> = {}): Marched {
  const system = new System(plant);
  const run = march(system, {
    from: system.start(),
    duration: plant.variant.run.duration,
    draws: [],
    tolerance: TOLERANCE,
    ...options,
  });
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
  }
}
