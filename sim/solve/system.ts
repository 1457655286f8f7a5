import { arrangementOf } from '../../shared/arrangements.ts';
import type { PatternDraw } from '../../shared/drawPattern.ts';
import type { Limit, Mark } from '../../shared/result.ts';
import type { Celsius, Seconds } from '../../shared/units.ts';
import { type Mounting, mountingOf } from '../../shared/mounting.ts';
import { nextEdge } from '../../shared/programme.ts';
import { makeSensorChain, type SensorChain } from '../control/sensorChain.ts';
import { offScale, shownReading } from '../control/shownReading.ts';
import { roomStat, type Stat, statCrossing } from '../control/stat.ts';
import { mixAtCoil } from '../plant/loop.ts';
import type { Plant } from '../plant/plant.ts';
import { closed, flows as waterFlows, serviceFor } from '../plant/service.ts';
import { BurnerSource } from './burnerSource.ts';
import {
  beforeRun,
  type Control,
  type Memory,
  noTimers,
  shutTap,
  type Snapshot,
  soonest,
  type Tap,
} from './control.ts';
import {
  cylinderStat,
  type Decided,
  type Happened,
  withFault,
  withSetPointTurned,
  withTap,
} from './decided.ts';
import { Derivative } from './derivative.ts';
import { answeredCalls, dispatch, mayFire } from './dispatch.ts';
import { type HeatSource, NEVER, type Switch } from './heatSource.ts';
import { IdealSource } from './idealSource.ts';
import { largestInversion, largestSinking, makePools, regroup } from './pools.ts';
import { type Slots, slotsOf } from './slots.ts';
import { startMemory } from './startMemory.ts';
import { startState } from './startState.ts';
import { openedTap, tapCrossing, tapSwitches, thrownTap } from './tap.ts';

export type { Snapshot } from './control.ts';
export type { Happened } from './decided.ts';
export type { Switch } from './heatSource.ts';

/** A plant with its controls: crossing functions that say when something switches, and what happens then. */
export class System {
  readonly plant: Plant;
  readonly slots: Slots;
  readonly derivative: Derivative;
  readonly control: Control;
  readonly switches: readonly Switch[];
  readonly mounting: Mounting;
  readonly chain: SensorChain;

  readonly #roomStat: Stat;
  readonly #immersionStat: Stat;
  readonly #source: HeatSource;
  readonly #burner: BurnerSource | null;
  #memory: Memory = beforeRun;
  /** When the programme next changes, as `nextTime` found it. */
  #edge: Seconds = Number.POSITIVE_INFINITY;

  constructor(plant: Plant) {
    const { stat, sensor, heating, immersion } = plant.variant;
    this.plant = plant;
    this.slots = slotsOf(plant);
    this.mounting = mountingOf(stat);
    this.chain = makeSensorChain(sensor);
    this.#roomStat = roomStat(heating);
    this.#immersionStat = immersion;
    this.control = {
      service: closed,
      limit: 'off',
      firing: 'off',
      immersionIsOn: false,
      tap: shutTap,
      pools: makePools(plant.cylinder.layers),
    };
    const { control, slots } = this;
    const { built } = plant;
    this.derivative = new Derivative(plant, slots, control, this.mounting);
    this.#burner =
      built === null ? null : new BurnerSource(plant, built, slots, control, this.derivative);
    this.#source = this.#burner ?? new IdealSource(plant, slots, control, this.derivative);
    this.switches = [
      'stat',
      'offScale',
      'roomStat',
      'immersionStat',
      ...tapSwitches,
      'merge',
      'part',
      ...this.#source.switches,
    ];
  }

  /** The start of a run: the store as set, the sensor at rest, house and radiators in balance, valves where heating needs them. */
  start(): Snapshot {
    const state = startState(this.plant, this.slots, this.mounting);
    const memory = startMemory(this.plant, this.chain, state, this.slots);
    return { state, memory };
  }

  /** What the controller shows for a sensor at a temperature, °C, as far as its scale goes. */
  reading(bead: Celsius): Celsius {
    return shownReading(this.chain.reading(bead));
  }

  /** Whether the controller shows a fault of the sensor. */
  get hasFault(): boolean {
    return this.#memory.hasFault;
  }

  /** What the controls last decided, without what the burner has done since. */
  get decided(): Omit<Memory, 'firing' | 'isLockedOut'> {
    return this.#memory;
  }

  /** All that is to be remembered at a moment. */
  get memory(): Memory {
    const { firing } = this.control;
    const timers = { ...this.#memory.timers, rest: this.#burner?.restUntil ?? noTimers.rest };
    const isLockedOut = this.#burner?.isLockedOut ?? false;
    return { ...this.#memory, firing, timers, isLockedOut };
  }

  /** Times the burner has lit since the run was taken up; null for an ideal boiler. */
  get burnerStarts(): number | null {
    return this.#burner?.starts ?? null;
  }

  /** Takes up a run from a snapshot: valves, burner and pools as they were left. @param y  written */
  resume(memory: Memory, y: number[]): Happened {
    this.#memory = memory;
    this.control.firing = memory.firing;
    this.#burner?.resume(memory);
    return this.settle(y);
  }

  /** When something next happens by the clock, s after the midnight before the run. @param clock  what is done */
  nextTime(clock: Seconds): Seconds {
    this.#edge = nextEdge(this.plant.variant.programme, clock);
    const rest = this.#burner?.restUntil ?? noTimers.rest;
    return Math.min(soonest({ ...this.#memory.timers, rest }, clock), this.#edge);
  }

  /** Does what the clock says. @param clock  the time `nextTime` gave @param y  the state there, written */
  tick(clock: Seconds, y: number[]): Happened {
    const { valve, overrun, turn, fault, tap, heatThrough } = this.#memory.timers;
    if (clock >= fault) this.#memory = withFault(this.#memory);
    const happened: Mark['kind'][] = [];
    if (clock >= fault) happened.push('faultShown');
    if (clock >= turn) happened.push('turnTaken');
    if (clock >= valve) happened.push('valveArrived');
    if (clock >= overrun) happened.push('overrunEnded');
    if (clock >= tap) happened.push(...this.#remember(withTap(this.#memory, shutTap, clock)));
    if (clock >= heatThrough) happened.push(...this.#remember(this.#turned(clock, y)));
    if (clock >= this.#edge) happened.push('programmeChanged');
    return [...happened, ...this.settle(y, clock)];
  }

  /**
   * One crossing function: kelvins or watts past the switching point, less a small threshold so that nothing chatters.
   * @param value      one component of the state
   * @param evaluate   evaluates the derivative at that state, which it hands back; asked only where heats decide
   * @param borders    of pools, where only some can merge
   */
  crossing(
    what: Switch,
    value: (slot: number) => number,
    evaluate: () => ArrayLike<number>,
    borders?: readonly number[],
  ): number {
    const { slots, control, plant, derivative } = this;
    const { calls, immersionCalls, hasFault } = this.#memory;
    switch (what) {
      case 'stat':
        if (hasFault) return NEVER;
        return statCrossing(
          cylinderStat(plant.variant, this.#memory),
          calls.hotWater,
          this.reading(value(slots.bead)),
        );
      case 'offScale':
        if (hasFault || plant.variant.sensor.element === 'true') return NEVER;
        return offScale(this.chain.reading(value(slots.bead)));
      case 'roomStat':
        if (!arrangementOf(plant.variant.heating.arrangement).heated) return NEVER;
        return statCrossing(this.#roomStat, calls.heating, value(slots.air));
      case 'immersionStat':
        if (plant.immersion === null) return NEVER;
        return statCrossing(this.#immersionStat, immersionCalls, value(plant.immersion.layer));
      case 'merge':
        return largestInversion(control.pools, value, borders) - POOL_MARGIN;
      case 'part': {
        const heats = derivative.layerHeats(evaluate());
        const { layerCapacity } = plant.cylinder;
        return largestSinking(control.pools, heats, derivative.rates, layerCapacity) - HEAT_MARGIN;
      }
      case 'tapWarm':
      case 'tapPeak':
      case 'tapDone':
        return tapCrossing(what, control.tap, plant, slots, value);
      default:
        return this.#source.crossing(what, value, evaluate);
    }
  }

  /** Throws a switch and puts everything that follows from it in order. @param y  the state there, written */
  throwSwitch(what: Switch, y: number[]): Happened {
    const { calls, immersionCalls } = this.#memory;
    switch (what) {
      case 'tapWarm':
      case 'tapPeak':
      case 'tapDone':
        return this.#setTap(thrownTap(what, this.control.tap), y);
      case 'stat':
        this.#memory = { ...this.#memory, calls: { ...calls, hotWater: !calls.hotWater } };
        return [calls.hotWater ? 'statSatisfied' : 'hotWaterCalled', ...this.settle(y)];
      case 'roomStat':
        this.#memory = { ...this.#memory, calls: { ...calls, heating: !calls.heating } };
        return [calls.heating ? 'roomSatisfied' : 'heatingCalled', ...this.settle(y)];
      case 'immersionStat':
        this.#memory = { ...this.#memory, immersionCalls: !immersionCalls };
        return [immersionCalls ? 'immersionOff' : 'immersionOn', ...this.settle(y)];
      case 'offScale':
        this.#memory = withFault(this.#memory);
        return ['faultShown', ...this.settle(y)];
      case 'merge':
      case 'part':
        this.#regroup(y);
        return [];
      default: {
        const mark = this.#source.throwSwitch(what, y[this.slots.clock], y);
        this.control.limit = this.#limit();
        this.#regroup(y);
        return mark === null ? [] : [mark];
      }
    }
  }

  /** Opens the tap for a draw; it shuts itself. @param y  the state there, written */
  open(draw: PatternDraw, y: number[]): Happened {
    const tap = openedTap(draw, this.plant, this.slots, (slot) => y[slot]);
    return this.#setTap(tap, y);
  }

  /** Valves from calls, burner from what they ask, pools from where heat goes. */
  settle(y: number[], clock = y[this.slots.clock]): Happened {
    const { control, plant, slots } = this;
    const { variant } = plant;
    this.#memory = dispatch(variant, this.#memory, clock);
    const answered = answeredCalls(variant, this.#memory, clock);
    const fires = mayFire(this.#memory, answered);
    control.service = plant.built !== null || fires ? serviceFor(plant, this.#memory.mode) : closed;
    if (control.service.coil !== null) mixAtCoil(plant.built?.loop, slots.loop, y);
    control.immersionIsOn = this.#memory.immersionCalls;
    control.tap = this.#memory.tap;
    const mark = this.#source.settle(fires, clock, y);
    control.limit = this.#limit();
    this.#regroup(y);
    return mark === null ? [] : [mark];
  }

  #setTap(tap: Tap, y: number[]): Happened {
    const decided = withTap(this.#memory, tap, y[this.slots.clock]);
    return [...this.#remember(decided), ...this.settle(y)];
  }

  #turned(clock: Seconds, y: readonly number[]): Decided {
    const reading = this.reading(y[this.slots.bead]);
    return withSetPointTurned(this.plant.variant, this.#memory, reading, clock);
  }

  /** Takes up what has been decided, and says what is worth a mark. */
  #remember({ memory, happened }: Decided): Happened {
    this.#memory = memory;
    return happened;
  }

  #limit(): Limit {
    const { control } = this;
    if (!waterFlows(control.service)) return this.#memory.nextMode === null ? 'off' : 'valve';
    if (this.#memory.timers.overrun !== Number.POSITIVE_INFINITY) return 'overrun';
    return this.#source.limit();
  }

  #regroup(y: number[]): void {
    const heats = () => {
      this.derivative.at(y);
      return this.derivative.layerHeats(y);
    };
    regroup(this.control.pools, y, heats, this.plant.cylinder.layers);
  }
}

const HEAT_MARGIN = 1e-3; // W
const POOL_MARGIN = 1e-7; // K
