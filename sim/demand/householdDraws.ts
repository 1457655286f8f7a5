import { incomingCold, ofMonth } from '../../shared/coldWater.ts';
import type { PatternDraw } from '../../shared/drawPattern.ts';
import { bathingFactors, otherUseFactors } from '../../shared/monthlyUse.ts';
import { toSI } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import {
  BATH,
  BATH_WARMTH,
  DELIVERED,
  otherUse,
  SHOWER_TIME,
  SHOWER_WARMTH,
} from '../closures/householdUse.ts';

/** A day of a household: its showers and baths, and everything else at sinks and basins. */
export function householdDraws({ day, draw }: Variant): PatternDraw[] {
  const cold = incomingCold(draw);
  const bathing = ofMonth(bathingFactors, draw.month);
  const showers = Array.from({ length: day.showers }, (_, index) => ({
    name: 'shower',
    at: timeOf(SHOWERS, index),
    volume: SHOWER_TIME * day.showerFlow * bathing,
    flow: day.showerFlow,
    mixedTo: SHOWER_WARMTH,
  }));
  const baths = Array.from({ length: day.baths }, (_, index) => ({
    name: 'bath',
    at: timeOf(BATHS, index),
    volume: BATH * bathing,
    flow: BATH_FLOW,
    mixedTo: BATH_WARMTH,
  }));
  // counted as hot water; as much heat in mixed water at the tap
  const hot = otherUse(day.people, ofMonth(otherUseFactors, draw.month));
  const mixed = (hot * (DELIVERED - cold)) / (SINK_WARMTH - cold);
  const sinks = SINKS.map((at) => ({
    name: 'sink',
    at: toSI(at, 'hour'),
    volume: mixed / SINKS.length,
    flow: SINK_FLOW,
    mixedTo: SINK_WARMTH,
  }));
  return [...showers, ...baths, ...sinks];
}

/** When the first, the second… is taken: by turns at two times of the day, one after the other at each. */
function timeOf({ from, every }: Turns, index: number): number {
  const [first, second] = from;
  const round = Math.floor(index / 2);
  return toSI(index % 2 === 0 ? first : second, 'hour') + round * toSI(every, 'minute');
}

/** Hours of the day, and minutes from one to the next. */
interface Turns {
  readonly from: readonly [number, number];
  readonly every: number;
}

// Invented times of a day, no source
const SHOWERS: Turns = { from: [6.75, 21], every: 15 };
const BATHS: Turns = { from: [19.5, 20], every: 60 };
const SINKS = [7.25, 7.75, 8.25, 12.5, 13, 17.5, 18.5, 22];

const BATH_FLOW = toSI(12, 'litrePerMinute'); // common practice, no source: a bath mixer as found
const SINK_FLOW = toSI(6, 'litrePerMinute'); // source: bs6700, 0.10 l/s, least at a sink
const SINK_WARMTH = 41; // °C, common practice, no source: a basin under a mixing valve
