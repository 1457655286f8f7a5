import type { PatternDraw } from '../../shared/drawPattern.ts';
import type { Celsius } from '../../shared/units.ts';
import type { Plant } from '../plant/plant.ts';
import { coldWillDo } from '../plant/tap.ts';
import { shutTap, type Tap } from './control.ts';
import { NEVER, type Switch } from './heatSource.ts';
import type { Slots } from './slots.ts';

/** What can switch at the tap. */
export const tapSwitches = ['tapWarm', 'tapPeak', 'tapDone'] as const satisfies readonly Switch[];

export type TapSwitch = (typeof tapSwitches)[number];

/** Where the state holds the hot water that arrives at the tap. */
export function arrivingSlot({ tapPipe }: Plant, slots: Slots): number {
  return tapPipe === null ? slots.layers - 1 : slots.tapPipe + tapPipe.cells - 1;
}

/** What the draw wants at the tap, °C: to be mixed to, or for heat to count, of which there is none below the cold; else null. */
export function wantedAt({ mixedTo, useful }: PatternDraw, cold: Celsius): Celsius | null {
  if (mixedTo !== undefined) return mixedTo;
  return useful === undefined ? null : Math.max(useful.leastTemperature, cold);
}

/** The tap as a draw opens it. @param value  one component of the state */
export function openedTap(
  draw: PatternDraw,
  plant: Plant,
  slots: Slots,
  value: (slot: number) => number,
): Tap {
  const arriving = value(arrivingSlot(plant, slots));
  const { cold } = plant.inlet;
  const peak = draw.useful?.peakTemperature ?? null;
  return {
    draw,
    isWarm: coldWillDo(draw, cold) || arriving >= (wantedAt(draw, cold) ?? arriving),
    hasPeaked: peak === null || arriving >= peak,
    doneAt: draw.useful ? value(slots.useful) + draw.useful.energy : Number.POSITIVE_INFINITY,
  };
}

/** Crossing function of a switch at the tap: kelvins or joules past the switching point. */
export function tapCrossing(
  what: TapSwitch,
  { draw, isWarm, hasPeaked, doneAt }: Tap,
  plant: Plant,
  slots: Slots,
  value: (slot: number) => number,
): number {
  if (draw === null) return NEVER;
  if (what === 'tapDone') return value(slots.useful) - doneAt;
  const arriving = value(arrivingSlot(plant, slots));
  if (what === 'tapPeak') {
    return hasPeaked ? NEVER : arriving - (draw.useful?.peakTemperature ?? Number.NaN);
  }
  const { cold } = plant.inlet;
  const wanted = wantedAt(draw, cold);
  if (wanted === null || coldWillDo(draw, cold)) return NEVER;
  return (isWarm ? wanted - arriving : arriving - wanted) - MARGIN;
}

/** The tap after one of its switches is thrown. */
export function thrownTap(what: TapSwitch, tap: Tap): Tap {
  switch (what) {
    case 'tapWarm':
      return { ...tap, isWarm: !tap.isWarm };
    case 'tapPeak':
      return { ...tap, hasPeaked: true };
    case 'tapDone':
      return shutTap;
  }
}

const MARGIN = 1e-7; // K, so that nothing chatters
