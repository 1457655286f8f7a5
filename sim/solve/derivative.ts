import { sensorRate } from '../control/sensor.ts';
import { flowFor, type Service } from '../plant/boiler.ts';
import { passCoil } from '../plant/coil.ts';
import { conductionRates, standingLossRates, temperatureAt } from '../plant/cylinder.ts';
import { drawOffRates } from '../plant/drawOff.ts';
import { heatToFabric, houseLoss } from '../plant/house.ts';
import type { Plant } from '../plant/plant.ts';
import { alongPipe, pipeLoss } from '../plant/primary.ts';
import { radiatorHeat } from '../plant/radiators.ts';
import type { Limit } from '../../shared/result.ts';
import { type Pools, poolRates } from './pools.ts';
import type { Slots } from './slots.ts';

/** What stands still between two events: set outside the derivative, read inside it. */
export interface Control {
  service: Service;
  limit: Limit;
  /** m³/s */
  drawFlow: number;
  pools: Pools;
}

/** Heats and temperatures of the moment last evaluated. Temperatures are NaN where no water flows. */
export interface Flows {
  flow: number; // °C, leaving the boiler
  returnTemperature: number; // °C, back at the boiler, both circuits mixed
  coilInlet: number; // °C
  coilOutlet: number; // °C
  boilerHeat: number; // W
  coilHeat: number; // W, into the store
  radiatorHeat: number; // W, into the room
  standingLoss: number; // W
  pipeLoss: number; // W
  drawnHeat: number; // W
}

/** The whole physics: the sum of its parts, in the order the heat travels, from boiler to tap and room. */
export class Derivative {
  calls = 0;
  readonly flows: Flows = {
    flow: Number.NaN,
    returnTemperature: Number.NaN,
    coilInlet: Number.NaN,
    coilOutlet: Number.NaN,
    boilerHeat: 0,
    coilHeat: 0,
    radiatorHeat: 0,
    standingLoss: 0,
    pipeLoss: 0,
    drawnHeat: 0,
  };
  /** Heat into each layer, [layer], W, at the state last evaluated. */
  readonly net: Float64Array;
  /** Rates of the state, [slot], at the state last evaluated; the solver copies them at once. */
  readonly rates: number[];

  readonly #plant: Plant;
  readonly #slots: Slots;
  readonly #control: Control;

  constructor(plant: Plant, slots: Slots, control: Control) {
    this.#plant = plant;
    this.#slots = slots;
    this.#control = control;
    this.net = new Float64Array(plant.cylinder.layers);
    this.rates = new Array<number>(slots.count).fill(0);
  }

  /**
   * Rates of the state: K/s for temperatures, W for sums. A pure function of the state and what stands still; it allocates
   * nothing and decides nothing.
   * @param y  [slot], owned by the solver, read only
   */
  at(y: ArrayLike<number>): number[] {
    this.calls++;
    const { cylinder, primary, radiators, house, inlet, variant } = this.#plant;
    const { service, drawFlow, pools } = this.#control;
    const { net, rates, flows } = this;
    const slots = this.#slots;
    const radiator = y[slots.radiator];
    const air = y[slots.air];
    const fabric = y[slots.fabric];
    net.fill(0);

    // Boiler: the flow temperature its limit allows, °C
    const flow = this.#flowTemperature(y);
    flows.flow = flow;

    // Primary and coil: heat left in the layers it passes, W
    flows.coilInlet = Number.NaN;
    flows.coilOutlet = Number.NaN;
    flows.coilHeat = 0;
    flows.pipeLoss = 0;
    let coilReturn = 0;
    let coilRate = 0;
    if (service.coil !== null) {
      coilRate = service.coil.heatRate;
      const coilInlet = alongPipe(primary, flow, coilRate);
      const coilOutlet = passCoil(service.coil, coilInlet, y, net);
      coilReturn = alongPipe(primary, coilOutlet, coilRate);
      flows.coilInlet = coilInlet;
      flows.coilOutlet = coilOutlet;
      for (let layer = 0; layer < net.length; layer++) flows.coilHeat += net[layer];
      flows.pipeLoss =
        pipeLoss(flow, coilInlet, coilRate) + pipeLoss(coilOutlet, coilReturn, coilRate);
    }

    // Radiators: water in at the flow temperature, out at their own
    const radiatorsRun = service.radiatorRate > 0;
    const toRadiators = radiatorsRun ? service.radiatorRate * (flow - radiator) : 0;
    const mean = radiatorsRun ? (flow + radiator) / 2 : radiator;
    flows.radiatorHeat = radiatorHeat(radiators, mean, air);
    flows.boilerHeat = flows.coilHeat + flows.pipeLoss + toRadiators;
    const wholeRate = coilRate + service.radiatorRate;
    flows.returnTemperature =
      wholeRate > 0
        ? (coilRate * coilReturn + service.radiatorRate * radiator) / wholeRate
        : Number.NaN;

    // Store: C · dT/dt = from coil + conducted − to surroundings + carried by the draw, W, pooled where it stirs itself
    conductionRates(cylinder, y, net);
    flows.standingLoss = standingLossRates(cylinder, y, net);
    flows.drawnHeat = drawFlow > 0 ? drawOffRates(cylinder, inlet, drawFlow, y, net) : 0;
    poolRates(pools, net, cylinder.layerCapacity, rates);

    // Sensor: follows the water at its height
    const height = variant.stat.sensorHeight;
    rates[slots.sensor] = sensorRate(
      temperatureAt(cylinder, y, height),
      temperatureAt(cylinder, rates, height),
      y[slots.sensor],
      variant.stat.lag,
    );

    // House: C · dT/dt = from radiators − to fabric − to outside, W
    const radiant = house.radiantShare * flows.radiatorHeat;
    const toFabric = heatToFabric(house, air, fabric);
    const lostByHouse = houseLoss(house, air, fabric);
    const fabricLoss = house.fabricToOutside * (fabric - house.outside);
    rates[slots.radiator] = (toRadiators - flows.radiatorHeat) / radiators.capacity;
    rates[slots.air] =
      (flows.radiatorHeat - radiant - toFabric - (lostByHouse - fabricLoss)) / house.airCapacity;
    rates[slots.fabric] = (radiant + toFabric - fabricLoss) / house.fabricCapacity;

    // Sums, W
    rates[slots.fromBoiler] = flows.boilerHeat;
    rates[slots.throughCoil] = flows.coilHeat;
    rates[slots.lostByCylinder] = flows.standingLoss;
    rates[slots.lostByPipes] = flows.pipeLoss;
    rates[slots.lostByHouse] = lostByHouse;
    rates[slots.drawn] = flows.drawnHeat;
    return rates;
  }

  /** Water around the sensor, °C. */
  waterAtSensor(y: ArrayLike<number>): number {
    return temperatureAt(this.#plant.cylinder, y, this.#plant.variant.stat.sensorHeight);
  }

  #flowTemperature(y: ArrayLike<number>): number {
    const { service, limit } = this.#control;
    if (limit === 'off') return Number.NaN;
    if (limit === 'flowLimit') return service.flowLimit;
    const heat = limit === 'output' ? this.#plant.variant.boiler.output : 0;
    return flowFor(service, this.#plant.primary, heat, y, y[this.#slots.radiator]);
  }
}
