import { FIRST_HOUR, type FirstHour } from '../../shared/delivery.ts';
import type { Mark } from '../../shared/result.ts';
import type { Celsius, CubicMetres, Seconds } from '../../shared/units.ts';
import { type Variant, withSetting } from '../../shared/variant.ts';
import { makePlant } from '../plant/plant.ts';
import { withoutDraw } from '../solve/decided.ts';
import { type Snapshot, System } from '../solve/system.ts';
import { type Marched, march } from './march.ts';
import { TOLERANCE } from './simulate.ts';

/** One draw of the first hour. */
interface Taken {
  readonly volume: CubicMetres;
  readonly mean: Celsius;
  /** At its end, the coolest. */
  readonly least: Celsius;
  readonly time: Seconds;
  readonly isSustained: boolean;
  readonly end: Snapshot;
}

/**
 * Hot water in the first hour: from a store that is just satisfied, draws that each end when the outlet has fallen by 15 °F,
 * the next when the stat is satisfied again. A draw that is running at the full hour is let end; else a last one begins
 * there, ends at the coolest of the one before, and counts by how warm it was. Null where the stat is never satisfied.
 */
// source: 10 CFR 430 Subpart B Appendix E, from memory; the stat, not a burner, says when heating is over
export function* firstHour(variant: Variant): Generator<number, FirstHour | null> {
  const plant = makePlant(
    withSetting(
      withSetting(
        withSetting(variant, 'draw.coldFrom', 'typed'),
        'draw.incomingCold',
        FIRST_HOUR.cold,
      ),
      'draw.pipeLength',
      0,
    ),
  );
  const system = new System(plant);
  const reheated = yield* until(system, system.start(), 'statSatisfied', variant.run.duration);
  if (!reached(reheated, 'statSatisfied')) return null;

  const taken: Taken[] = [];
  let from = reheated.end;
  let time = 0;
  for (;;) {
    const draw = yield* drawUntil(system, from, outletOf(system, from) - FIRST_HOUR.fall);
    taken.push(draw);
    if (draw.isSustained) {
      const inTheHour = { ...draw, volume: FIRST_HOUR.flow * (HOUR - time) };
      return sumOf([...taken.slice(0, -1), inTheHour]);
    }
    time += draw.time;
    if (time >= HOUR) return sumOf(taken);
    const waited = yield* until(system, draw.end, 'statSatisfied', HOUR - time);
    time += waited.outcome.at;
    from = waited.end;
    if (reached(waited, 'statSatisfied')) continue;
    const last = yield* drawUntil(system, from, draw.least);
    const share = (last.mean - draw.least) / (draw.mean - draw.least);
    const counts = last.volume > 0 && share > 0 ? last.volume * Math.min(1, share) : 0;
    return sumOf([...taken, { ...last, volume: counts }]);
  }
}

function sumOf(taken: readonly Taken[]): FirstHour {
  const volume = taken.reduce((sum, draw) => sum + draw.volume, 0);
  const warmth = taken.reduce((sum, { volume: one, mean }) => sum + (one > 0 ? one * mean : 0), 0);
  return {
    volume,
    draws: taken.length,
    mean: volume > 0 ? warmth / volume : Number.NaN,
    isSustained: taken.some(({ isSustained }) => isSustained),
  };
}

/** Draws until the outlet has fallen to a temperature, or for as long as is worth watching. */
function* drawUntil(system: System, from: Snapshot, least: Celsius): Generator<number, Taken> {
  const { flow } = FIRST_HOUR;
  const { slots, plant } = system;
  const useful = {
    energy: Number.POSITIVE_INFINITY,
    leastTemperature: least,
    peakTemperature: null,
  };
  const marched = yield* march(system, {
    from,
    duration: LONGEST,
    draws: [{ at: 0, volume: 2 * LONGEST * flow, flow, name: 'first hour', useful }],
    tolerance: TOLERANCE,
    until: ({ kind }) => kind === 'tapCold',
  });
  // a store that is cooler from the start gives nothing
  const isWarm = outletOf(system, from) >= least;
  const time = isWarm ? marched.outcome.at : 0;
  const heat = marched.end.state[slots.useful] - from.state[slots.useful];
  const volume = flow * time;
  return {
    volume,
    mean: volume > 0 ? plant.inlet.cold + heat / (volume * plant.cylinder.waterHeat) : Number.NaN,
    least,
    time,
    isSustained: isWarm && !reached(marched, 'tapCold'),
    end: isWarm ? withoutDraw(marched.end) : from,
  };
}

function* until(
  system: System,
  from: Snapshot,
  kind: Mark['kind'],
  duration: Seconds,
): Generator<number, Marched> {
  return yield* march(system, {
    from,
    duration,
    draws: [],
    tolerance: TOLERANCE,
    until: (mark) => mark.kind === kind,
  });
}

function reached({ marks }: Marched, wanted: Mark['kind']): boolean {
  return marks.some(({ mark }) => mark.kind === wanted);
}

function outletOf({ slots }: System, { state }: Snapshot): Celsius {
  return state[slots.layers - 1];
}

const HOUR = 3600; // s
const LONGEST = 7200; // s; a draw that lasts longer has the boiler keep up with it
