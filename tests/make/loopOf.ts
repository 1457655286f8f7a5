import { defaultVariant } from '../../shared/fields.ts';
import type { Variant } from '../../shared/variant.ts';
import { makePlant, type Plant } from '../../sim/plant/plant.ts';
import { System } from '../../sim/solve/system.ts';

const base = defaultVariant('loop');

/** The default boiler as built at a known flow in l/min through a run in m. */
export function givenFlow(litres: number, length: number): Variant {
  return {
    ...base,
    primary: { ...base.primary, flowFrom: 'given', flow: litres / 60_000, length },
  };
}

/** The water on its way round, where it stands in the state, and how long the state is. */
export function loopOf(plant: Plant) {
  const { slots } = new System(plant);
  if (plant.built === null || slots.loop === null) throw new Error('an ideal boiler');
  const { built } = plant;
  return { plant, built, loop: built.loop, slots: slots.loop, count: slots.count };
}

/** The same of a variant. */
export const loopIn = (variant: Variant) => loopOf(makePlant(variant));
