import { incomingCold } from '../../shared/coldWater.ts';
import {
  type DayMeasures,
  dayMeasureRows,
  type DayRun,
  type DrawReport,
} from '../../shared/day.ts';
import { fails } from '../../shared/drawFails.ts';
import { isLit, timeOf } from '../../shared/phaseTime.ts';
import { valueAt } from '../../shared/sampleAt.ts';
import { dayMeasureText } from '../../shared/sentences/dayMeasures.ts';
import { copperTubes, tubeContentRecord } from '../../sim/closures/copperTube.ts';
import { hotShareRecord, outletBlendRecord } from '../../sim/closures/outletBlend.ts';
import { longestScaldRecord, shortestScaldRecord } from '../../sim/closures/scaldTime.ts';
import { storedHeatRecord } from '../../sim/closures/storedHeat.ts';
import { lossPerKelvin } from '../../sim/closures/storeLoss.ts';
import { volumetricHeat } from '../../sim/closures/water.ts';
import { spentOn } from './daySpent.ts';
import { MIDDLE } from './heatUpWorking.ts';
import { inletSteps } from './inletSteps.ts';
import { lossSteps } from './lossSteps.ts';
import { usableSteps } from './momentWorkings.ts';
import { readingAt, waterOf } from './reading.ts';
import { bill, heaterEnergy } from './relations/bills.ts';
import { burnerStarted, partOfWhole } from './relations/burner.ts';
import { callsAt, houseLoses } from './relations/control.ts';
import {
  atTheTaps,
  costOfLoss,
  efficiencyOfDay,
  lostInTime,
  ranFor,
  stillMissing,
} from './relations/day.ts';
import { dayFurther, dayNotes } from './dayFurther.ts';
import { type Step, type Working, worked } from './working.ts';

/** The working of a measure of the days shown. */
export function dayWorking(key: keyof DayMeasures, day: DayRun): Working {
  const value = day.measures[key];
  return {
    title: `${dayMeasureRows[key].label}: ${dayMeasureText(key, value, day.shownDays)}`,
    steps: stepsOf(key, day),
    note:
      value === null
        ? 'It has no value on this day, so the numbers are left open.'
        : (dayNotes[key] ?? ''),
    further: dayFurther(key, day),
  };
}

function stepsOf(key: keyof DayMeasures, day: DayRun): Step[] {
  const { measures, variant, trace, phases } = day;
  const { stat, draw, immersion, house, prices, cylinder } = variant;
  const cold = incomingCold(draw);
  const perLitre = volumetricHeat(waterOf(day), MIDDLE);
  const { fromStore, drawn, heatDrawn } = measures;
  switch (key) {
    case 'drawn':
      return [worked(atTheTaps, { hot: fromStore, cold: drawn - fromStore })];
    case 'fromStore': {
      // the means over the day: what all draws came to, and what the store gave for them
      const hot = cold + heatDrawn / (fromStore * perLitre);
      const wanted = cold + heatDrawn / (drawn * perLitre);
      const amount = drawn * waterOf(day).density(wanted);
      return [worked(outletBlendRecord, { amount, wanted, cold, hot }), ...jetSteps(day)];
    }
    case 'heatDrawn':
      return [
        worked(storedHeatRecord, {
          volume: fromStore,
          heatCapacity: perLitre,
          rise: heatDrawn / (fromStore * perLitre),
        }),
      ];
    case 'useful':
      return [worked(partOfWhole, { part: measures.useful, whole: whole(heatDrawn) })];
    case 'usefulAsked':
    case 'shortfall': {
      const asked = measures.usefulAsked ?? Number.NaN;
      return [worked(stillMissing, { asked, got: asked - (measures.shortfall ?? Number.NaN) })];
    }
    case 'failedDraws':
      return [blendStep(day)];
    case 'coldTime':
    case 'coldVolume': {
      const { coldVolume: ran, coldTime: time } = measures;
      return [worked(ranFor, { flow: ran / whole(time), time }), blendStep(day)];
    }
    case 'waitVolume': {
      const time = day.draws.reduce((sum, { waitTime }) => sum + (waitTime ?? 0), 0);
      return [
        worked(ranFor, { flow: measures.waitVolume / whole(time), time }),
        worked(tubeContentRecord, { bore: copperTubes[draw.pipeSize].bore }),
      ];
    }
    case 'leastUsable':
    case 'leastUsableAt':
      return usableSteps(day, readingAt(day, measures.leastUsableAt));
    case 'hottestAtTap':
      return scaldSteps(measures.hottestAtTap ?? Number.NaN);
    case 'hotWaterCalls':
      return [worked(callsAt, { setPoint: stat.setPoint, differential: stat.differential })];
    case 'burnerStarts': {
      const lit = timeOf(phases, isLit);
      return [worked(burnerStarted, { lit, burst: lit / whole(measures.burnerStarts ?? 0) })];
    }
    case 'fuelForHotWater':
      return [
        worked(partOfWhole, {
          part: measures.fuelForHotWater ?? Number.NaN,
          whole: whole(spentOn(day).fuel),
        }),
      ];
    case 'electricity': {
      const { output: power } = immersion;
      return [worked(heaterEnergy, { power, time: measures.electricity / power })];
    }
    case 'efficiency':
      return [
        worked(efficiencyOfDay, {
          useful: measures.efficiency === null ? Number.NaN : measures.useful,
          fuel: measures.fuelForHotWater ?? 0,
          electricity: measures.electricity,
        }),
      ];
    case 'standingLoss': {
      const UA = lossPerKelvin(cylinder);
      const time = trace.time[trace.samples - 1] - trace.time[0];
      return [
        worked(lostInTime, { UA, difference: measures.standingLoss / (UA * time), time }),
        ...lossSteps(cylinder),
      ];
    }
    case 'standingLossCost': {
      const { cost, heat } = spentOn(day);
      return [worked(costOfLoss, { loss: measures.standingLoss, cost, heat: whole(heat) })];
    }
    case 'cost':
      return [
        worked(bill, {
          fuel: measures.cost === null ? Number.NaN : spentOn(day).fuel,
          electricity: measures.electricity,
          perFuel: prices.fuel,
          perElectricity: prices.electricity,
        }),
      ];
    case 'lowestRoom': {
      const air = measures.lowestRoom ?? Number.NaN;
      const at = trace.time[trace.of.air.indexOf(air)] ?? Number.NaN;
      const outside = Number.isFinite(at) ? valueAt(trace.time, trace.of.outside, at) : at;
      return [worked(houseLoses, { loss: house.heatLoss, air, outside })];
    }
  }
}

/** Times in which published tests burnt skin; none is printed below 44 °C, and the formulas stay open. */
export function scaldSteps(temperature: number): Step[] {
  return [
    worked(shortestScaldRecord, { temperature }),
    worked(longestScaldRecord, { temperature }),
  ];
}

/** The share of hot water in the first draw that failed, in its middle, or in the largest one. */
function blendStep(day: DayRun): Step {
  const told = day.draws.find((draw) => fails(draw)) ?? largest(day.draws);
  const { time, of } = day.trace;
  const hot = told ? valueAt(time, of.arriving, (told.from + told.to) / 2) : Number.NaN;
  const cold = incomingCold(day.variant.draw);
  return worked(hotShareRecord, { hot, cold, wanted: told?.wanted ?? Number.NaN });
}

/** The jet of the draw that took most out of the store in its time, against the water at the top as it began. */
function jetSteps(day: DayRun): Step[] {
  const flowOf = ({ fromStore, from, to }: DrawReport) => (to > from ? fromStore / (to - from) : 0);
  const { draws, trace } = day;
  if (draws.length === 0) return inletSteps(day, Number.NaN, Number.NaN);
  const fastest = draws.reduce((a, b) => (flowOf(b) > flowOf(a) ? b : a));
  return inletSteps(day, flowOf(fastest), valueAt(trace.time, trace.of.top, fastest.from));
}

function largest(draws: readonly DrawReport[]): DrawReport | undefined {
  return [...draws].sort((a, b) => b.volume - a.volume)[0];
}

/** A divisor; nothing is divided by zero. */
const whole = (value: number): number => (value > 0 ? value : Number.NaN);
