import type { Limit, Mark } from '../../shared/result.ts';
import type { Celsius } from '../../shared/units.ts';
import { type Calls, type Mode, modeFor } from '../control/arrangement.ts';
import { callsAtStart, type Stat, statCrossing } from '../control/stat.ts';
import { heatTaken, type Service } from '../plant/boiler.ts';
import { cylinderStart, temperatureAt } from '../plant/cylinder.ts';
import { fabricStart, houseLoss } from '../plant/house.ts';
import type { Plant } from '../plant/plant.ts';
import { radiatorsStart } from '../plant/radiators.ts';
import { type Control, Derivative } from './derivative.ts';
import { largestInversion, largestSinking, makePools, regroup } from './pools.ts';
import { type Slots, slotsOf } from './slots.ts';

/** State and calls at one moment: all that a run needs to go on from there. */
export interface Snapshot {
  readonly state: readonly number[];
  readonly calls: Calls;
}

/** What can switch. Each has one crossing function; it switches where that rises above zero. */
export const switches = ['stat', 'roomStat', 'limitUp', 'limitDown', 'merge', 'part'] as const;
export type Switch = (typeof switches)[number];

/** A plant with its controls: crossing functions that say when something switches, and what happens then. */
export class System {
  readonly plant: Plant;
  readonly slots: Slots;
  readonly derivative: Derivative;
  readonly control: Control;
  mode: Mode;
  calls: Calls = { hotWater: false, heating: false };

  readonly #cylinderStat: Stat;
  readonly #roomStat: Stat;

  constructor(plant: Plant) {
    const { stat, heating } = plant.variant;
    this.plant = plant;
    this.slots = slotsOf(plant);
    this.#cylinderStat = { setPoint: stat.setPoint, differential: stat.differential };
    this.#roomStat = { setPoint: heating.roomSetPoint, differential: heating.roomDifferential };
    this.mode = modeFor(heating.arrangement, this.calls);
    this.control = {
      service: { coil: null, radiatorRate: 0, flowLimit: 0 },
      limit: 'off',
      drawFlow: 0,
      pools: makePools(plant.cylinder.layers),
    };
    this.derivative = new Derivative(plant, this.slots, this.control);
  }

  /** The start of a run: the store as set, the sensor at its water, house and radiators in balance. */
  start(): Snapshot {
    const { cylinder, radiators, house, variant } = this.plant;
    const { slots } = this;
    const state = new Array<number>(slots.count).fill(0);
    cylinderStart(cylinder, variant).forEach((temperature, layer) => {
      state[layer] = temperature;
    });
    const reading = temperatureAt(cylinder, state, variant.stat.sensorHeight);
    const heated = variant.heating.arrangement !== 'hotWaterOnly';
    const air: Celsius = variant.heating.roomSetPoint - variant.heating.roomDifferential / 2;
    const fabric = fabricStart(house, air);
    state[slots.sensor] = reading;
    state[slots.air] = air;
    state[slots.fabric] = fabric;
    state[slots.radiator] = heated
      ? radiatorsStart(radiators, air, houseLoss(house, air, fabric))
      : air;
    const calls = { hotWater: callsAtStart(this.#cylinderStat, reading), heating: heated };
    return { state, calls };
  }

  /** Takes up a run from a snapshot: valves, boiler limit and pools follow from it. @param y  written */
  resume(calls: Calls, y: number[]): void {
    this.calls = calls;
    this.settle(y);
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
    const { slots, calls, control, plant, derivative } = this;
    const { limit, service } = control;
    if (what === 'stat') {
      return statCrossing(this.#cylinderStat, calls.hotWater, value(slots.sensor));
    }
    if (what === 'merge') return largestInversion(control.pools, value, borders) - POOL_MARGIN;
    if (what === 'roomStat') {
      if (plant.variant.heating.arrangement === 'hotWaterOnly') return NEVER;
      return statCrossing(this.#roomStat, calls.heating, value(slots.air));
    }
    evaluate();
    const { flows, net, rates } = derivative;
    if (what === 'part') {
      const { layerCapacity } = plant.cylinder;
      return largestSinking(control.pools, net, rates, layerCapacity) - HEAT_MARGIN;
    }
    if (what === 'limitUp') {
      if (limit === 'flowLimit') {
        return flows.boilerHeat - plant.variant.boiler.output - LIMIT_MARGIN;
      }
      return limit === 'idle' ? service.flowLimit - flows.flow - TEMPERATURE_MARGIN : NEVER;
    }
    if (limit === 'flowLimit') return -flows.boilerHeat - LIMIT_MARGIN;
    return limit === 'output' ? flows.flow - service.flowLimit - TEMPERATURE_MARGIN : NEVER;
  }

  /** Throws a switch and puts everything that follows from it in order. @param y  the state there, written */
  throwSwitch(what: Switch, y: number[]): Mark['kind'] | null {
    const { calls, control } = this;
    switch (what) {
      case 'stat':
        this.calls = { ...calls, hotWater: !calls.hotWater };
        this.settle(y);
        return calls.hotWater ? 'statSatisfied' : 'hotWaterCalled';
      case 'roomStat':
        this.calls = { ...calls, heating: !calls.heating };
        this.settle(y);
        return calls.heating ? 'roomSatisfied' : 'heatingCalled';
      case 'limitUp':
        control.limit = control.limit === 'idle' ? 'flowLimit' : 'output';
        this.#regroup(y);
        return 'limitChanged';
      case 'limitDown':
        control.limit = control.limit === 'output' ? 'flowLimit' : 'idle';
        this.#regroup(y);
        return 'limitChanged';
      default:
        this.#regroup(y);
        return null;
    }
  }

  /** Opens or shuts a draw, m³/s. @param y  the state there, written */
  setDraw(flow: number, y: number[]): void {
    this.control.drawFlow = flow;
    this.settle(y);
  }

  /** Valves from calls, boiler limit from what is taken, pools from where heat goes. */
  settle(y: number[]): void {
    const { control, plant } = this;
    this.mode = modeFor(plant.variant.heating.arrangement, this.calls);
    control.service = serviceFor(plant, this.mode);
    control.limit = this.#limitAt(y);
    this.#regroup(y);
  }

  #regroup(y: number[]): void {
    const net = () => {
      this.derivative.at(y);
      return this.derivative.net;
    };
    regroup(this.control.pools, y, net, this.plant.cylinder.layers);
  }

  #limitAt(y: ArrayLike<number>): Limit {
    const { service } = this.control;
    const { primary, variant } = this.plant;
    if (service.coil === null && service.radiatorRate === 0) return 'off';
    const taken = heatTaken(service, primary, service.flowLimit, y, y[this.slots.radiator]);
    if (taken > variant.boiler.output) return 'output';
    return taken < 0 ? 'idle' : 'flowLimit';
  }
}

/** Which circuits are open in a mode, at which flow. */
function serviceFor(plant: Plant, mode: Mode): Service {
  const both = mode.coilRuns && mode.radiatorsRun;
  const { boiler } = plant.variant;
  return {
    coil: mode.coilRuns ? (both ? plant.coilShared : plant.coilAlone) : null,
    radiatorRate: mode.radiatorsRun ? (both ? plant.radiatorsShared : plant.radiatorsAlone) : 0,
    flowLimit: mode.limitOf === 'hotWater' ? boiler.hotWaterFlow : boiler.heatingFlow,
  };
}

const NEVER = Number.NEGATIVE_INFINITY;
const HEAT_MARGIN = 1e-3; // W
const LIMIT_MARGIN = 2; // W; the flow temperature of a boiler at full output is found to a tenth of it
const TEMPERATURE_MARGIN = 1e-6; // K
const POOL_MARGIN = 1e-7; // K
