import type { Plant } from '../plant/plant.ts';
import type { Switch } from './heatSource.ts';
import type { Slots } from './slots.ts';
import { arrivingSlot } from './tap.ts';

/** The one component of the state that a switch looks at; null where it looks at more. */
export function switchSlot(what: Switch, slots: Slots, plant: Plant): number | null {
  switch (what) {
    case 'stat':
    case 'offScale':
      return slots.bead;
    case 'roomStat':
      return slots.air;
    case 'immersionStat':
      return plant.immersion?.layer ?? null;
    case 'tapWarm':
    case 'tapPeak':
      return arrivingSlot(plant, slots);
    case 'burnerHot':
    case 'burnerCool':
    case 'limiter':
      return slots.loop?.boilerWater ?? null;
    default:
      return null;
  }
}
