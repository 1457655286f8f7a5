import type { DayMeasures, DrawReport } from '../../shared/day.ts';
import { arrangementOf } from '../../shared/arrangements.ts';
import { fails, missingHeat } from '../../shared/drawFails.ts';
import type { Trace } from '../../shared/result.ts';
import { valueAt } from '../../shared/sampleAt.ts';
import type { Plant } from '../plant/plant.ts';
import type { Slots } from '../solve/slots.ts';
import { billOf } from './energyUse.ts';
import { indexOfLeast } from './least.ts';

/** What a span of days left behind, as far as its measures need it. */
interface Left {
  readonly start: readonly number[];
  readonly end: readonly number[];
  readonly trace: Trace;
  readonly draws: readonly DrawReport[];
  readonly hotWaterCalls: number;
  readonly burnerStarts: number | null;
}

/** The numbers of the days shown. */
export function dayMeasures(plant: Plant, slots: Slots, left: Left): DayMeasures {
  const { draws, trace, start, end } = left;
  const { prices, heating, boiler } = plant.variant;
  const sum = (slot: number) => end[slot] - start[slot];
  const total = (of: (draw: DrawReport) => number) => draws.reduce((all, one) => all + of(one), 0);
  const asked = draws.some(({ usefulAsked }) => usefulAsked !== null);
  const useful = sum(slots.useful);
  const isBuilt = boiler.model === 'asBuilt';
  const fuel = sum(slots.fuel);
  const fuelForHotWater = isBuilt ? fuel - sum(slots.fuelForHeating) : null;
  const electricity = sum(slots.fromImmersion);
  const spent = (fuelForHotWater ?? 0) + CONVERSION * electricity;
  const { air } = trace.of;
  const least = indexOfLeast(trace.of.usable);
  const standingLoss = sum(slots.lostByCylinder);
  const atTap = draws.flatMap(({ hottest }) => (hottest === null ? [] : [hottest]));
  return {
    drawn: total(({ volume }) => volume),
    fromStore: sum(slots.fromStore),
    heatDrawn: sum(slots.drawn),
    useful,
    usefulAsked: asked ? total(({ usefulAsked }) => usefulAsked ?? 0) : null,
    shortfall: asked ? total(missingHeat) : null,
    failedDraws: draws.filter(fails).length,
    coldTime: total(({ coldTime }) => coldTime),
    coldVolume: total(({ coldVolume }) => coldVolume),
    waitVolume: total(({ volume, waitTime, from, to }) =>
      waitTime === null || to <= from ? 0 : (volume * waitTime) / (to - from),
    ),
    leastUsable: trace.of.usable[least],
    leastUsableAt: trace.time[least],
    hottestAtTap: atTap.length > 0 ? Math.max(...atTap) : null,
    hotWaterCalls: left.hotWaterCalls,
    burnerStarts: left.burnerStarts,
    fuelForHotWater,
    electricity,
    efficiency: (isBuilt || electricity > 0) && spent > 0 ? useful / spent : null,
    standingLoss,
    standingLossCost: lossCost(standingLoss, sum(slots.fromBoiler), fuel, electricity, prices),
    cost: isBuilt ? billOf(prices, fuel, electricity) : null,
    lowestRoom: arrangementOf(heating.arrangement).heated ? air[indexOfLeast(air)] : null,
  };
}

/** The loss at what the heat of these days has cost in the mean; null where no fuel is counted and nothing else heats. */
function lossCost(
  loss: number,
  fromBoiler: number,
  fuel: number,
  electricity: number,
  prices: Plant['variant']['prices'],
): number | null {
  const heat = (fuel > 0 ? fromBoiler : 0) + electricity;
  if (heat <= 0) return null;
  return (loss * billOf(prices, fuel, electricity)) / heat;
}

/** Hot water at the tap a minute after each draw was opened, and the hottest at the tap, read off the samples. */
export function atTheTap(draw: DrawReport, { time, of, samples }: Trace): DrawReport {
  let hottest: number | null = null;
  for (let sample = 0; sample < samples; sample++) {
    if (time[sample] < draw.from || time[sample] > draw.to) continue;
    const outlet = of.outlet[sample];
    if (!Number.isNaN(outlet)) hottest = Math.max(hottest ?? outlet, outlet);
  }
  const isLong = draw.to - draw.from >= MINUTE;
  const afterMinute = isLong ? valueAt(time, of.arriving, draw.from + MINUTE) : null;
  return { ...draw, hottest, afterMinute };
}

const MINUTE = 60; // s
// source: ecodesignTanks, Article 2(18), fuel that a unit of electricity stands for
const CONVERSION = 2.5;
