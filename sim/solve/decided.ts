import type { Mark } from '../../shared/result.ts';
import type { Celsius, Seconds } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import type { Stat } from '../control/stat.ts';
import { type Memory, type Snapshot, shutTap, type Tap } from './control.ts';

/** What is worth a mark, in the order in which one thing led to the other. */
export type Happened = readonly Mark['kind'][];

/** What the controls remember after something, and what of it is worth a mark. */
export interface Decided {
  readonly memory: Memory;
  readonly happened: Happened;
}

/** The tap in another state; opened, it is shut again when all its water has been taken. @param clock  s */
export function withTap(memory: Memory, tap: Tap, clock: Seconds): Decided {
  const before = memory.tap;
  const opens = before.draw === null && tap.draw !== null;
  const shuts = before.draw !== null && tap.draw === null;
  const turns = !opens && !shuts && tap.isWarm !== before.isWarm;
  const ends = opens ? clock + tap.draw.volume / tap.draw.flow : memory.timers.tap;
  const timers = { ...memory.timers, tap: shuts ? Number.POSITIVE_INFINITY : ends };
  return {
    memory: { ...memory, tap, timers },
    happened: [
      ...(opens ? (['drawStarted'] as const) : []),
      ...(shuts ? (['drawEnded'] as const) : []),
      ...(turns ? [tap.isWarm ? ('tapWarm' as const) : ('tapCold' as const)] : []),
    ],
  };
}

/** The same moment with the tap shut. */
export function withoutDraw({ state, memory }: Snapshot): Snapshot {
  return { state, memory: withTap(memory, shutTap, 0).memory };
}

/** The sensor has gone and the controller shows it. */
export function withFault(memory: Memory): Memory {
  const timers = { ...memory.timers, fault: Number.POSITIVE_INFINITY };
  return { ...memory, hasFault: true, timers };
}

/** The stat of the cylinder as it is set at present. */
export function cylinderStat(
  { stat, day }: Variant,
  { isHeatingThrough }: Pick<Memory, 'isHeatingThrough'>,
): Stat {
  const { differential, setPoint } = stat;
  return { differential, setPoint: isHeatingThrough ? day.pasteuriseTo : setPoint };
}

/** Raises the set-point of the cylinder against Legionella for its time, or puts it back. @param reading  shown, °C */
export function withSetPointTurned(
  variant: Variant,
  memory: Memory,
  reading: Celsius,
  clock: Seconds,
): Decided {
  const isHeatingThrough = !memory.isHeatingThrough;
  const turned: Memory = {
    ...memory,
    isHeatingThrough,
    timers: {
      ...memory.timers,
      heatThrough: isHeatingThrough ? clock + variant.day.pasteuriseFor : Number.POSITIVE_INFINITY,
    },
  };
  const below = reading < cylinderStat(variant, turned).setPoint;
  // a stat turned up calls at once; turned down it may be satisfied
  const hotWater = below && (isHeatingThrough || memory.calls.hotWater);
  const changes = hotWater !== memory.calls.hotWater;
  return {
    memory: { ...turned, calls: { ...memory.calls, hotWater } },
    happened: [
      isHeatingThrough ? 'setPointRaised' : 'setPointBack',
      ...(changes ? [hotWater ? ('hotWaterCalled' as const) : ('statSatisfied' as const)] : []),
    ],
  };
}
