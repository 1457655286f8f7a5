import type { Balance, Cost, Mark, Outcome, Phase, Trace } from './result.ts';
import type { Celsius, CubicMetres, Joules, Kelvins, Seconds, Share, UnitName } from './units.ts';
import type { Variant } from './variant.ts';

/** What a day of hot water in use, or several, came to. Times from the midnight that begins the first day shown. */
export interface DayRun {
  readonly variant: Variant;
  readonly outcome: Outcome;
  /** In all, the ones before those shown included. */
  readonly simulatedDays: number;
  readonly shownDays: number;
  /** Largest difference in the store between the start and the end of the last day. */
  readonly difference: Kelvins;
  readonly isSteady: boolean;
  readonly trace: Trace;
  readonly marks: readonly Mark[];
  readonly phases: readonly Phase[];
  readonly draws: readonly DrawReport[];
  readonly measures: DayMeasures;
  readonly hygiene: Hygiene;
  readonly balance: Balance;
  readonly cost: Cost;
}

/** What one draw got. Volumes are out of the tap, hot and cold together, but for `fromStore`. */
export interface DrawReport {
  readonly name: string;
  readonly from: Seconds;
  readonly to: Seconds;
  readonly asked: CubicMetres;
  readonly volume: CubicMetres;
  readonly fromStore: CubicMetres;
  /** Above the incoming cold water. */
  readonly heat: Joules;
  /** Of it, while the tap was at or above what was wanted. */
  readonly useful: Joules;
  /** By a load profile; else null. */
  readonly usefulAsked: Joules | null;
  /** At the tap: to be mixed to, or from which on heat counts; null when nothing is. */
  readonly wanted: Celsius | null;
  /** Tp of a load profile; null where nothing has to be reached. */
  readonly peak: Celsius | null;
  readonly hasPeaked: boolean;
  /** Mean at the tap. */
  readonly mean: Celsius;
  /** The hottest at the tap; null for a draw between two samples. */
  readonly hottest: Celsius | null;
  /** Hot water at the tap a minute after it was opened; null for a shorter draw. */
  readonly afterMinute: Celsius | null;
  /** Until the water first came as warm as it was wanted; null when it never did. */
  readonly waitTime: Seconds | null;
  /** After that, below what was wanted: the store has run cold. All of the draw when it never came warm. */
  readonly coldTime: Seconds;
  readonly coldVolume: CubicMetres;
  /** Still open when the last day ended. */
  readonly isCut: boolean;
}

/** The numbers of the days shown. */
export interface DayMeasures {
  readonly drawn: CubicMetres;
  readonly fromStore: CubicMetres;
  readonly heatDrawn: Joules;
  readonly useful: Joules;
  /** By a load profile: asked in all, and not got. */
  readonly usefulAsked: Joules | null;
  readonly shortfall: Joules | null;
  /** Draws that ran cold or never came warm, and of a load profile those that fell short. */
  readonly failedDraws: number;
  readonly coldTime: Seconds;
  readonly coldVolume: CubicMetres;
  /** Run off while waiting for hot water. */
  readonly waitVolume: CubicMetres;
  readonly leastUsable: CubicMetres;
  readonly leastUsableAt: Seconds;
  readonly hottestAtTap: Celsius | null;
  readonly hotWaterCalls: number;
  readonly burnerStarts: number | null;
  readonly fuelForHotWater: Joules | null;
  readonly electricity: Joules;
  /** Useful heat over fuel for hot water and 2.5 times the electricity. */
  readonly efficiency: Share | null;
  readonly standingLoss: Joules;
  /** Of the fuel, or electricity, that makes up for it. */
  readonly standingLossCost: number | null;
  readonly cost: number | null;
  readonly lowestRoom: Celsius | null;
}

/** Names, units and printed digits, for screen, CSV and command line. */
export const dayMeasureRows: Readonly<
  Record<
    keyof DayMeasures,
    { readonly label: string; readonly unit: UnitName; readonly digits: number }
  >
> = {
  drawn: { label: 'drawn at the tap', unit: 'litre', digits: 0 },
  fromStore: { label: 'hot water out of the store', unit: 'litre', digits: 0 },
  heatDrawn: { label: 'heat drawn', unit: 'kilowattHour', digits: 2 },
  useful: { label: 'useful heat', unit: 'kilowattHour', digits: 3 },
  usefulAsked: { label: 'useful heat asked by the profile', unit: 'kilowattHour', digits: 3 },
  shortfall: { label: 'useful heat not got', unit: 'kilowattHour', digits: 3 },
  failedDraws: { label: 'draws that ran cold or fell short', unit: 'number', digits: 0 },
  coldTime: { label: 'too cold at the tap', unit: 'minute', digits: 1 },
  coldVolume: { label: 'drawn too cold', unit: 'litre', digits: 0 },
  waitVolume: { label: 'run off waiting for hot water', unit: 'litre', digits: 1 },
  leastUsable: { label: 'least usable at 40 °C', unit: 'litre', digits: 0 },
  leastUsableAt: { label: 'least usable at', unit: 'hour', digits: 2 },
  hottestAtTap: { label: 'hottest at the tap', unit: 'celsius', digits: 1 },
  hotWaterCalls: { label: 'calls for hot water', unit: 'number', digits: 0 },
  burnerStarts: { label: 'burner starts', unit: 'number', digits: 0 },
  fuelForHotWater: { label: 'fuel for hot water, gross', unit: 'kilowattHour', digits: 2 },
  electricity: { label: 'electricity of the immersion heater', unit: 'kilowattHour', digits: 2 },
  efficiency: { label: 'useful heat over fuel and electricity', unit: 'percent', digits: 0 },
  standingLoss: { label: 'lost by the cylinder', unit: 'kilowattHour', digits: 2 },
  standingLossCost: { label: 'cost of that loss', unit: 'money', digits: 2 },
  cost: { label: 'cost of all fuel and electricity, rooms included', unit: 'money', digits: 2 },
  lowestRoom: { label: 'lowest room temperature', unit: 'celsius', digits: 1 },
};

/** How warm the store was kept, against the guidance on Legionella. */
export interface Hygiene {
  readonly coldestTenth: Warmth;
  readonly top: Warmth;
  /** Store water that never reached 60 °C. */
  readonly neverHot: CubicMetres;
  /** Its temperature at its hottest, the coldest layer of it. */
  readonly neverHotBest: Celsius | null;
  /** Draws of a minute and more, and those of them with less than 50 °C at the tap after it. */
  readonly longDraws: number;
  readonly cooler: number;
}

/** One part of the store over the days shown. */
export interface Warmth {
  readonly least: Celsius;
  readonly most: Celsius;
  /** At 60 °C or above in all, and at a stretch. */
  readonly hotTime: Seconds;
  readonly longestHot: Seconds;
  /** Between 20 and 45 °C. */
  readonly growthTime: Seconds;
  /** Tenfold reductions of Legionella by published times, as a band. */
  readonly fewestReductions: number;
  readonly mostReductions: number;
}
