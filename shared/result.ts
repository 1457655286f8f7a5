import type { Pace } from './pace.ts';
import type {
  Celsius,
  CubicMetres,
  CubicMetresPerSecond,
  Joules,
  MetresPerSecond,
  Seconds,
  Share,
  UnitName,
  Watts,
} from './units.ts';
import type { Variant } from './variant.ts';

/** What one run found. SI inside; null where something was not reached during the run. */
export interface Result {
  readonly variant: Variant;
  readonly outcome: Outcome;
  readonly trace: Trace;
  /** What was thrown, opened or reached, in order of time. */
  readonly marks: readonly Mark[];
  /** Who had the boiler and what held it, one after the other without gaps. */
  readonly phases: readonly Phase[];
  /** What set the pace: the constraint whose relaxation would bring most heat. */
  readonly pace: Pace;
  readonly measures: Measures;
  readonly balance: Balance;
  readonly cost: Cost;
}

/** How a run ended, and the time it reached. */
export interface Outcome {
  readonly kind: 'finished' | 'stopped' | 'tooManySteps' | 'outOfRange';
  readonly at: Seconds;
}

/** The run, sampled: at equal steps, and just before and after every change of control. */
export interface Trace {
  readonly samples: number;
  readonly layers: number;
  /** [sample], s, never falling; two samples may share a time where something switched. */
  readonly time: Float64Array;
  /** [sample * layers + layer], °C, layer 0 at the bottom. */
  readonly layerTemperature: Float64Array;
  /** One array for each quantity, [sample], SI; NaN where it has no value (no flow, no coil). */
  readonly of: Readonly<Record<Quantity, Float64Array>>;
}

/** What is sampled besides the layers. One row each, for charts, read-outs, CSV and JSON alike. */
export const quantities = {
  sensor: { label: 'sensor reads', unit: 'celsius', digits: 1 },
  bead: { label: 'sensor is at', unit: 'celsius', digits: 1 },
  top: { label: 'top', unit: 'celsius', digits: 1 },
  bottom: { label: 'bottom', unit: 'celsius', digits: 1 },
  flow: { label: 'flow', unit: 'celsius', digits: 1 },
  flowTarget: { label: 'flow target', unit: 'celsius', digits: 1 },
  returnTemperature: { label: 'return', unit: 'celsius', digits: 1 },
  coilInlet: { label: 'flow at the coil', unit: 'celsius', digits: 1 },
  coilOutlet: { label: 'return at the coil', unit: 'celsius', digits: 1 },
  coilWater: { label: 'water around the coil', unit: 'celsius', digits: 1 },
  boilerHeat: { label: 'boiler gives', unit: 'kilowatt', digits: 1 },
  fuel: { label: 'fuel burnt', unit: 'kilowatt', digits: 1 },
  coilHeat: { label: 'coil passes', unit: 'kilowatt', digits: 1 },
  radiatorHeat: { label: 'radiators give', unit: 'kilowatt', digits: 1 },
  immersionHeat: { label: 'immersion heater gives', unit: 'kilowatt', digits: 1 },
  coilFlow: { label: 'flow through the coil', unit: 'litrePerMinute', digits: 1 },
  radiatorFlow: { label: 'flow through the radiators', unit: 'litrePerMinute', digits: 1 },
  standingLoss: { label: 'cylinder loses', unit: 'kilowatt', digits: 3 },
  pipeLoss: { label: 'primary loses', unit: 'kilowatt', digits: 3 },
  radiator: { label: 'radiators', unit: 'celsius', digits: 1 },
  air: { label: 'room air', unit: 'celsius', digits: 2 },
  fabric: { label: 'fabric', unit: 'celsius', digits: 2 },
  outside: { label: 'outside', unit: 'celsius', digits: 1 },
  arriving: { label: 'hot water at the tap', unit: 'celsius', digits: 1 },
  outlet: { label: 'out of the tap', unit: 'celsius', digits: 1 },
  drawFlow: { label: 'drawn', unit: 'litrePerMinute', digits: 1 },
  usable: { label: 'usable at 40 °C', unit: 'litre', digits: 0 },
} as const satisfies Record<
  string,
  { readonly label: string; readonly unit: UnitName; readonly digits: number }
>;

export type Quantity = keyof typeof quantities;

/** Something that happened at one moment. */
export interface Mark {
  readonly at: Seconds;
  readonly kind:
    | 'hotWaterCalled'
    | 'statSatisfied'
    | 'heatingCalled'
    | 'roomSatisfied'
    | 'drawStarted'
    | 'drawEnded'
    | 'tapWarm'
    | 'tapCold'
    | 'setPointRaised'
    | 'setPointBack'
    | 'limitChanged'
    | 'burnerLit'
    | 'burnerOff'
    | 'limiterTripped'
    | 'valveArrived'
    | 'turnTaken'
    | 'switchThrown'
    | 'overrunEnded'
    | 'programmeChanged'
    | 'faultShown'
    | 'immersionOn'
    | 'immersionOff';
}

/**
 * What holds the boiler: `output` it gives all it can; `flowLimit` its flow is at its target and it
 * gives what is taken; `minimum` it gives its least, and that is too much; `resting` the burner is
 * off until it may light again; `lockedOut` its safety limiter has tripped; `idle` an ideal boiler
 * whose return is hotter than the target; `valve` a valve is on its way and nothing flows;
 * `overrun` nothing calls and the circulator runs on; `off` nothing calls.
 */
export type Limit =
  | 'off'
  | 'output'
  | 'flowLimit'
  | 'minimum'
  | 'resting'
  | 'lockedOut'
  | 'idle'
  | 'valve'
  | 'overrun';

/** A stretch of the run in which nothing switched. */
export interface Phase {
  readonly from: Seconds;
  readonly to: Seconds;
  readonly coilRuns: boolean;
  readonly radiatorsRun: boolean;
  readonly draws: boolean;
  readonly immersionRuns: boolean;
  readonly limit: Limit;
}

/** The numbers that answer the question. `satisfied` is the first moment the stat is satisfied. */
export interface Measures {
  /** From the start of the run until the stat is first satisfied. */
  readonly recovery: Seconds | null;
  /** The same heat at full boiler output: the trade's formula. */
  readonly ruleTime: Seconds | null;
  /** Heat the coil gave until satisfied, or until the end. */
  readonly coilHeat: Joules;
  readonly meanCoilHeat: Watts | null;
  readonly peakCoilHeat: Watts | null;
  /** Time mean of the boiler's return while the coil ran, until satisfied. */
  readonly meanReturn: Celsius | null;
  /** Of the time until satisfied: before the call, at full output, at the flow limit. */
  readonly waitingTime: Seconds;
  readonly outputLimitTime: Seconds;
  readonly flowLimitTime: Seconds;
  /** Of the time until satisfied: burner at its least, and resting or waiting for a valve. */
  readonly minimumTime: Seconds;
  readonly restingTime: Seconds;
  /** Heat in boiler, pipes and coil above their surroundings when satisfied. */
  readonly leftInPrimary: Joules | null;
  /** Through the coil when it has the boiler alone, and in the pipe to it; the ideal boiler with a known flow too. */
  readonly coilFlow: CubicMetresPerSecond;
  readonly radiatorFlow: CubicMetresPerSecond | null;
  readonly primaryVelocity: MetresPerSecond;
  /** Over the whole run. */
  readonly burnerStarts: number | null;
  readonly burnerTime: Seconds | null;
  readonly fuel: Joules | null;
  readonly fuelForHeating: Joules | null;
  readonly efficiency: Share | null;
  /** Part of the burner's heat given with the return below the dew point. */
  readonly condensingShare: Share | null;
  readonly electricity: Joules;
  readonly cost: number | null;
  readonly carbon: number | null;
  /** With the rooms more than a differential below their set-point. */
  readonly coldRoomTime: Seconds | null;
  /** The flow temperature at which these radiators would hold the rooms on such a day. */
  readonly sufficientFlow: Celsius | null;
  /** Mixed water at 40 °C: at the start, when satisfied, when the stat next calls. */
  readonly usableAtStart: CubicMetres;
  readonly usableAtSatisfied: CubicMetres | null;
  readonly usableAtCall: CubicMetres | null;
  /** Store water below 40 °C when satisfied. */
  readonly coldAtSatisfied: CubicMetres | null;
  readonly topAtSatisfied: Celsius | null;
  readonly bottomAtSatisfied: Celsius | null;
  readonly hottest: Celsius;
  readonly lowestRoom: Celsius | null;
  readonly lowestRoomAt: Seconds | null;
  readonly hotWaterCalls: number;
}

/** Names, units and printed digits of the measures, for screen, CSV and command line. */
export const measureRows: Readonly<
  Record<
    keyof Measures,
    { readonly label: string; readonly unit: UnitName; readonly digits: number }
  >
> = {
  recovery: { label: 'recovery time', unit: 'minute', digits: 1 },
  ruleTime: { label: 'the same heat at full boiler output', unit: 'minute', digits: 1 },
  coilHeat: { label: 'heat through the coil', unit: 'kilowattHour', digits: 2 },
  meanCoilHeat: { label: 'mean coil output', unit: 'kilowatt', digits: 1 },
  peakCoilHeat: { label: 'highest coil output', unit: 'kilowatt', digits: 1 },
  meanReturn: { label: 'mean return', unit: 'celsius', digits: 1 },
  waitingTime: { label: 'waiting for the call', unit: 'minute', digits: 1 },
  outputLimitTime: { label: 'boiler at full output', unit: 'minute', digits: 1 },
  flowLimitTime: { label: 'flow at its limit', unit: 'minute', digits: 1 },
  minimumTime: { label: 'boiler at its least output', unit: 'minute', digits: 1 },
  restingTime: { label: 'boiler resting or waiting for a valve', unit: 'minute', digits: 1 },
  leftInPrimary: {
    label: 'heat in boiler, pipes and coil when satisfied',
    unit: 'kilowattHour',
    digits: 2,
  },
  coilFlow: { label: 'flow through the coil alone', unit: 'litrePerMinute', digits: 1 },
  radiatorFlow: { label: 'flow through the radiators alone', unit: 'litrePerMinute', digits: 1 },
  primaryVelocity: { label: 'speed in the primary pipe', unit: 'metrePerSecond', digits: 2 },
  burnerStarts: { label: 'burner starts', unit: 'number', digits: 0 },
  burnerTime: { label: 'burner lit', unit: 'minute', digits: 1 },
  fuel: { label: 'fuel, gross', unit: 'kilowattHour', digits: 2 },
  fuelForHeating: { label: 'of it for the rooms', unit: 'kilowattHour', digits: 2 },
  efficiency: { label: 'efficiency of the burner, gross', unit: 'percent', digits: 1 },
  condensingShare: { label: 'heat given while condensing', unit: 'percent', digits: 0 },
  electricity: { label: 'electricity of the immersion heater', unit: 'kilowattHour', digits: 2 },
  cost: { label: 'cost of fuel and electricity', unit: 'money', digits: 2 },
  carbon: { label: 'carbon dioxide', unit: 'kilogram', digits: 2 },
  coldRoomTime: { label: 'rooms too cold', unit: 'minute', digits: 0 },
  sufficientFlow: {
    label: 'flow that would hold the rooms on such a day',
    unit: 'celsius',
    digits: 1,
  },
  usableAtStart: { label: 'usable at 40 °C at the start', unit: 'litre', digits: 0 },
  usableAtSatisfied: { label: 'usable at 40 °C when satisfied', unit: 'litre', digits: 0 },
  usableAtCall: { label: 'usable at 40 °C at the next call', unit: 'litre', digits: 0 },
  coldAtSatisfied: { label: 'still below 40 °C when satisfied', unit: 'litre', digits: 0 },
  topAtSatisfied: { label: 'top when satisfied', unit: 'celsius', digits: 1 },
  bottomAtSatisfied: { label: 'bottom when satisfied', unit: 'celsius', digits: 1 },
  hottest: { label: 'hottest water', unit: 'celsius', digits: 1 },
  lowestRoom: { label: 'lowest room temperature', unit: 'celsius', digits: 2 },
  lowestRoomAt: { label: 'lowest room temperature after', unit: 'minute', digits: 0 },
  hotWaterCalls: { label: 'calls for hot water', unit: 'number', digits: 0 },
};

/** Where the energy went, over the whole run; `residual` is what does not add up. */
export interface Balance {
  readonly fromBoiler: Joules;
  readonly fromImmersion: Joules;
  readonly gainedByPrimary: Joules;
  readonly gainedByStore: Joules;
  readonly gainedByHouse: Joules;
  readonly lostByCylinder: Joules;
  readonly lostByPipes: Joules;
  readonly lostByHouse: Joules;
  readonly gainedByTapPipe: Joules;
  readonly lostByTapPipe: Joules;
  readonly drawn: Joules;
  readonly residual: Joules;
  /** Residual over the energy moved. */
  readonly relative: number;
}

/** What the run took. */
export interface Cost {
  readonly derivativeCalls: number;
  readonly steps: number;
  readonly restarts: number;
}
