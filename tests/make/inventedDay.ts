import type { DayRun, DrawReport, Hygiene, Warmth } from '../../shared/day.ts';
import { inventedResult } from './result.ts';

const hour = 3600;

/** An invented draw of 50 l in 5 min that got what it wanted. */
export function inventedDraw(wish: Partial<DrawReport> = {}): DrawReport {
  const from = wish.from ?? 7 * hour;
  return {
    name: 'shower',
    from,
    to: from + 300,
    asked: 0.05,
    volume: 0.05,
    fromStore: 0.03,
    heat: 6.5e6,
    useful: 6.5e6,
    usefulAsked: null,
    wanted: 41,
    peak: null,
    hasPeaked: true,
    mean: 41,
    hottest: 41,
    afterMinute: 58,
    waitTime: 0,
    coldTime: 0,
    coldVolume: 0,
    isCut: false,
    ...wish,
  };
}

const warmth: Warmth = {
  least: 12,
  most: 40,
  hotTime: 0,
  longestHot: 0,
  growthTime: 20 * hour,
  fewestReductions: 0,
  mostReductions: 0,
};

/** One part of the store over a day, invented. */
export function inventedWarmth(wish: Partial<Warmth> = {}): Warmth {
  return { ...warmth, ...wish };
}

interface Wish extends Partial<Omit<DayRun, 'measures' | 'hygiene'>> {
  measures?: Partial<DayRun['measures']>;
  hygiene?: Partial<Hygiene>;
}

/** An invented day that repeats itself, for words and drawings only: no physics. */
export function inventedDay(wish: Wish = {}): DayRun {
  const { measures, hygiene, ...rest } = wish;
  const { variant, outcome, trace, marks, phases, balance, cost } = inventedResult({
    end: 24 * hour,
  });
  return {
    variant,
    outcome,
    simulatedDays: 2,
    shownDays: 1,
    difference: 0.01,
    isSteady: true,
    trace,
    marks,
    phases,
    draws: [inventedDraw()],
    balance,
    cost,
    ...rest,
    measures: {
      drawn: 0.277,
      fromStore: 0.174,
      heatDrawn: 3.6e7,
      useful: 3.6e7,
      usefulAsked: null,
      shortfall: null,
      failedDraws: 0,
      coldTime: 0,
      coldVolume: 0,
      waitVolume: 0,
      leastUsable: 0.241,
      leastUsableAt: 21 * hour + 300,
      hottestAtTap: 41,
      hotWaterCalls: 3,
      burnerStarts: 12,
      fuelForHotWater: 4.5e7,
      electricity: 0,
      efficiency: 0.8,
      standingLoss: 5.4e6,
      standingLossCost: 0.12,
      cost: 3.4,
      lowestRoom: 19.2,
      ...measures,
    },
    hygiene: {
      coldestTenth: warmth,
      top: inventedWarmth({ least: 58, most: 61, hotTime: 12 * hour, longestHot: 4 * hour }),
      neverHot: 0.026,
      neverHotBest: 33,
      longDraws: 11,
      cooler: 0,
      ...hygiene,
    },
  };
}
