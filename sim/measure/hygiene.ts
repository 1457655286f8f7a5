import { coldestTenth } from '../../shared/coldestTenth.ts';
import type { DrawReport, Hygiene, Warmth } from '../../shared/day.ts';
import type { Trace } from '../../shared/result.ts';
import type { Celsius, CubicMetres } from '../../shared/units.ts';
import { reductionRate } from '../closures/decimalReduction.ts';

/** How warm the store was kept over a run, against the guidance on Legionella. */
export function hygieneOf(
  trace: Trace,
  layerVolume: CubicMetres,
  draws: readonly DrawReport[],
): Hygiene {
  const { samples, layers, layerTemperature } = trace;
  const most = Array.from({ length: layers }, (_, layer) => {
    let hottest = Number.NEGATIVE_INFINITY;
    for (let sample = 0; sample < samples; sample++) {
      hottest = Math.max(hottest, layerTemperature[sample * layers + layer]);
    }
    return hottest;
  });
  const never = most.filter((temperature) => temperature < HOT);
  const tenth = Float64Array.from({ length: samples }, (_, sample) => coldestTenth(trace, sample));
  const long = draws.filter(({ afterMinute }) => afterMinute !== null);
  return {
    coldestTenth: warmthOf(trace.time, tenth),
    top: warmthOf(trace.time, trace.of.top),
    neverHot: never.length * layerVolume,
    neverHotBest: never.length > 0 ? Math.min(...never) : null,
    longDraws: long.length,
    cooler: long.filter(({ afterMinute }) => (afterMinute ?? 0) < AT_TAP).length,
  };
}

/** One temperature over time: samples are joined by straight lines. */
export function warmthOf(time: ArrayLike<number>, T: ArrayLike<number>): Warmth {
  let [least, most] = [T[0], T[0]];
  let [hotTime, growthTime, stretch, longestHot] = [0, 0, 0, 0];
  let [fewest, greatest] = [0, 0];
  for (let sample = 1; sample < T.length; sample++) {
    const span = time[sample] - time[sample - 1];
    const [from, to] = [T[sample - 1], T[sample]];
    least = Math.min(least, to);
    most = Math.max(most, to);
    const hot = span * shareAbove(HOT, from, to);
    hotTime += hot;
    growthTime += span * (shareAbove(GROWTH_FROM, from, to) - shareAbove(GROWTH_TO, from, to));
    // a stretch goes on as long as neither end is below
    stretch = from >= HOT ? stretch + hot : hot;
    longestHot = Math.max(longestHot, stretch);
    if (to < HOT) stretch = 0;
    // between the slower and the faster end; the mean of the two rates, and not the rate of the mean
    const [one, other] = [reductionRate(from), reductionRate(to)];
    fewest += (span * (one.slowest + other.slowest)) / 2;
    greatest += (span * (one.fastest + other.fastest)) / 2;
  }
  return {
    least,
    most,
    hotTime,
    longestHot,
    growthTime,
    fewestReductions: fewest,
    mostReductions: greatest,
  };
}

/** Part of a straight line between two temperatures that lies at or above a third. */
function shareAbove(limit: Celsius, from: Celsius, to: Celsius): number {
  if (from >= limit && to >= limit) return 1;
  if (from < limit && to < limit) return 0;
  return (Math.max(from, to) - limit) / Math.abs(to - from);
}

const HOT = 60; // °C; source: hsg274, stored at 60 °C or more, second-hand
const AT_TAP = 50; // °C; source: hsg274, at the tap within a minute, second-hand
const GROWTH_FROM = 20; // °C; source: legionellaRange
const GROWTH_TO = 45; // °C; source: legionellaRange
