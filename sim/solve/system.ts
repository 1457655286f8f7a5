import { arrangementOf, type Calls, modeFor } from '../../shared/arrangements.ts';
import type { Limit, Mark } from '../../shared/result.ts';
import type { Celsius, Seconds } from '../../shared/units.ts';
import { type Mounting, mountingOf } from '../../shared/mounting.ts';
import { makeSensorChain, type SensorChain } from '../control/sensorChain.ts';
import { offScale, shownReading } from '../control/shownReading.ts';
import { callsAtStart, roomStat, type Stat, statCrossing } from '../control/stat.ts';
import { isAllowed, nextEdge } from '../../shared/programme.ts';
import type { Plant } from '../plant/plant.ts';
import { closed, flows as waterFlows, serviceFor } from '../plant/service.ts';
import { BurnerSource } from './burnerSource.ts';
import { beforeRun, type Control, type Memory, noTimers } from './control.ts';
import { Derivative } from './derivative.ts';
import { answeredCalls, dispatch, mayFire } from './dispatch.ts';
import { type HeatSource, NEVER, type Switch } from './heatSource.ts';
import { IdealSource } from './idealSource.ts';
import { largestInversion, largestSinking, makePools, regroup } from './pools.ts';
import { type Slots, slotsOf } from './slots.ts';
import { startState } from './startState.ts';

export type { Switch } from './heatSource.ts';

/** State and memory at one moment: all that a run needs to go on from there. */
export interface Snapshot {
  readonly state: readonly number[];
  readonly memory: Memory;
}

/** What is worth a mark, in the order in which one thing led to the other. */
export type Happened = readonly Mark['kind'][];

/** A plant with its controls: crossing functions that say when something switches, and what happens then. */
export class System {
  readonly plant: Plant;
  readonly slots: Slots;
  readonly derivative: Derivative;
  readonly control: Control;
  readonly switches: readonly Switch[];
  readonly mounting: Mounting;
  readonly chain: SensorChain;

  readonly #cylinderStat: Stat;
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
    this.#cylinderStat = stat;
    this.#roomStat = roomStat(heating);
    this.#immersionStat = immersion;
    this.control = {
      service: closed,
      limit: 'off',
      firing: 'off',
      immersionIsOn: false,
      drawFlow: 0,
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
      'merge',
      'part',
      ...this.#source.switches,
    ];
  }

  /** The start of a run: the store as set, the sensor at rest, house and radiators in balance, valves where heating needs them. */
  start(): Snapshot {
    const { variant, immersion } = this.plant;
    const { heating, programme, sensor } = variant;
    const state = startState(this.plant, this.slots, this.mounting);
    const clock = state[this.slots.clock];
    const heated = arrangementOf(heating.arrangement).heated;
    const shown = this.reading(state[this.slots.bead]);
    const calls = {
      hotWater: callsAtStart(this.#cylinderStat, shown),
      heating: heated,
    };
    const heats = heated && isAllowed(programme, 'heating', clock);
    const faults = sensor.fault !== 'none' && sensor.element !== 'true';
    const isOffScale = offScale(this.chain.reading(state[this.slots.bead])) > 0;
    const memory: Memory = {
      ...beforeRun,
      calls,
      immersionCalls:
        immersion !== null && callsAtStart(this.#immersionStat, state[immersion.layer]),
      mode: modeFor(heating.arrangement, { hotWater: false, heating: heats }),
      timers: {
        ...noTimers,
        fault: isOffScale ? clock : faults ? clock + sensor.faultAt : noTimers.fault,
      },
    };
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

  /** What the stats say. */
  get calls(): Calls {
    return this.#memory.calls;
  }

  /** Takes up a run from a snapshot: valves, burner and pools as they were left. @param y  written */
  resume(memory: Memory, y: number[]): Happened {
    this.#memory = memory;
    this.control.firing = memory.firing;
    if (this.#burner !== null) {
      this.#burner.restUntil = memory.timers.rest;
      this.#burner.isLockedOut = memory.isLockedOut;
    }
    return this.settle(y);
  }

  /** When something next happens by the clock, s after the midnight before the run. @param clock  what is done */
  nextTime(clock: Seconds): Seconds {
    const { valve, overrun, turn, fault } = this.#memory.timers;
    this.#edge = nextEdge(this.plant.variant.programme, clock);
    const rest = this.#burner?.restUntil ?? Number.NEGATIVE_INFINITY;
    return Math.min(
      valve,
      overrun,
      turn,
      fault,
      rest > clock ? rest : Number.POSITIVE_INFINITY,
      this.#edge,
    );
  }

  /** Does what the clock says. @param clock  the time `nextTime` gave @param y  the state there, written */
  tick(clock: Seconds, y: number[]): Happened {
    const { valve, overrun, turn, fault } = this.#memory.timers;
    if (clock >= fault) {
      this.#memory = {
        ...this.#memory,
        hasFault: true,
        timers: { ...this.#memory.timers, fault: Number.POSITIVE_INFINITY },
      };
    }
    const happened: Mark['kind'][] = [];
    if (clock >= fault) happened.push('faultShown');
    if (clock >= turn) happened.push('turnTaken');
    if (clock >= valve) happened.push('valveArrived');
    if (clock >= overrun) happened.push('overrunEnded');
    if (clock >= this.#edge) happened.push('programmeChanged');
    return [...happened, ...this.settle(y, clock)];
  }

  /**
   * One crossing function: kelvins or watts past the switching point, less a small threshold so that nothing chatters.
   * @param value      one component of the state
   * @param evaluate   evaluates the derivative at that state; asked only where heats decide
   * @param borders    of pools, where only some can merge
   */
  crossing(
    what: Switch,
    value: (slot: number) => number,
    evaluate: () => void,
    borders?: readonly number[],
  ): number {
    const { slots, control, plant, derivative } = this;
    const { calls, immersionCalls, hasFault } = this.#memory;
    switch (what) {
      case 'stat':
        if (hasFault) return NEVER;
        return statCrossing(this.#cylinderStat, calls.hotWater, this.reading(value(slots.bead)));
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
        evaluate();
        const { layerCapacity } = plant.cylinder;
        return (
          largestSinking(control.pools, derivative.net, derivative.rates, layerCapacity) -
          HEAT_MARGIN
        );
      }
      default:
        return this.#source.crossing(what, value, evaluate);
    }
  }

  /** Throws a switch and puts everything that follows from it in order. @param y  the state there, written */
  throwSwitch(what: Switch, y: number[]): Happened {
    const { calls, immersionCalls } = this.#memory;
    switch (what) {
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
        this.#memory = { ...this.#memory, hasFault: true };
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

  /** Opens or shuts a draw, m³/s. @param y  the state there, written */
  setDraw(flow: number, y: number[]): Happened {
    this.control.drawFlow = flow;
    return this.settle(y);
  }

  /** Valves from calls, burner from what they ask, pools from where heat goes. */
  settle(y: number[], clock = y[this.slots.clock]): Happened {
    const { control, plant } = this;
    const { variant } = plant;
    this.#memory = dispatch(variant, this.#memory, clock);
    const answered = answeredCalls(variant, this.#memory, clock);
    const fires = mayFire(this.#memory, answered);
    control.service = plant.built !== null || fires ? serviceFor(plant, this.#memory.mode) : closed;
    control.immersionIsOn = this.#memory.immersionCalls;
    const mark = this.#source.settle(fires, clock, y);
    control.limit = this.#limit();
    this.#regroup(y);
    return mark === null ? [] : [mark];
  }

  #limit(): Limit {
    const { control } = this;
    if (!waterFlows(control.service)) return this.#memory.nextMode === null ? 'off' : 'valve';
    if (this.#memory.timers.overrun !== Number.POSITIVE_INFINITY) return 'overrun';
    return this.#source.limit();
  }

  #regroup(y: number[]): void {
    const net = () => {
      this.derivative.at(y);
      return this.derivative.net;
    };
    regroup(this.control.pools, y, net, this.plant.cylinder.layers);
  }
}

const HEAT_MARGIN = 1e-3; // W
const POOL_MARGIN = 1e-7; // K
