import { flowTarget } from '../control/flowTarget.ts';
import { sensorRate } from '../control/sensor.ts';
import type { Mounting } from '../../shared/mounting.ts';
import { burnerHeat, condenses, inputOf, inputRate } from '../plant/burner.ts';
import { heatToFabric, houseLoss } from '../plant/house.ts';
import { idealPath } from '../plant/idealBoiler.ts';
import { immersionRates } from '../plant/immersion.ts';
import { coilPathRates } from '../plant/loop.ts';
import { outsideAt } from '../plant/outside.ts';
import type { BuiltBoiler, Plant } from '../plant/plant.ts';
import { radiatorHeat } from '../plant/radiators.ts';
import { tapRates } from '../plant/tap.ts';
import type { Control } from './control.ts';
import { type Flows, stillFlows } from './flows.ts';
import type { Slots } from './slots.ts';
import { layerHeats, storeRates } from './storeRates.ts';

/** The whole physics: the sum of its parts, in the order the heat travels, from boiler to tap and room. */
export class Derivative {
  calls = 0;
  readonly flows: Flows = stillFlows();
  /** Heat from coil, immersion heater and draw into each layer, [layer], W, at the state last evaluated. */
  readonly net: Float64Array;
  /** Rates of the state, [slot], at the state last evaluated; the solver copies them at once. */
  readonly rates: number[];

  readonly #plant: Plant;
  readonly #slots: Slots;
  readonly #control: Control;
  readonly #mounting: Mounting;
  readonly #heats: Float64Array;

  constructor(plant: Plant, slots: Slots, control: Control, mounting: Mounting) {
    this.#plant = plant;
    this.#slots = slots;
    this.#control = control;
    this.#mounting = mounting;
    this.net = new Float64Array(plant.cylinder.layers);
    this.#heats = new Float64Array(plant.cylinder.layers);
    this.rates = new Array<number>(slots.count).fill(0);
  }

  /**
   * Rates of the state: K/s for temperatures, W for sums. A pure function of the state and what stands still; it allocates
   * nothing and decides nothing.
   * @param y  [slot], owned by the solver, read only
   */
  at(y: ArrayLike<number>): number[] {
    this.calls++;
    const { cylinder, radiators, house, immersion, variant, built, sensed } = this.#plant;
    const { service, tap, pools, immersionIsOn } = this.#control;
    const { net, rates, flows } = this;
    const slots = this.#slots;
    const radiator = y[slots.radiator];
    const air = y[slots.air];
    const fabric = y[slots.fabric];
    net.fill(0);
    rates[slots.clock] = 1;
    flows.outside = outsideAt(variant.house, y[slots.clock]);
    flows.target = flowTarget(variant, service.limitOf, air, flows.outside);

    // Boiler, pipes and coil: heat left in the layers the coil passes, W
    if (built === null) this.#idealBoiler(y);
    else this.#builtBoiler(built, y);

    // Radiators: water in at the flow temperature, out at their own
    const radiatorsRun = service.radiatorRate > 0;
    const mean = radiatorsRun ? (flows.flow + radiator) / 2 : radiator;
    flows.radiatorHeat = radiatorHeat(radiators, mean, air);

    // Store: C · dT/dt = from coil + from immersion heater + carried by the draw + conducted − to surroundings, W,
    // pooled where it stirs itself
    flows.immersionHeat = immersionRates(immersion, immersionIsOn, net);
    tapRates(tap.draw, tap.isWarm, this.#plant, slots.tapPipe, y, net, rates, flows);
    flows.standingLoss = storeRates(pools, cylinder, y, net, rates);

    // Sensor: follows the water at its height, drawn towards the air by its mounting
    const { lag, airShare } = this.#mounting;
    const water = sensed(y);
    const waterRate = sensed(rates);
    rates[slots.bead] = sensorRate(
      water + airShare * (cylinder.surroundings - water),
      (1 - airShare) * waterRate,
      y[slots.bead],
      lag,
    );

    // House: C · dT/dt = from radiators − to fabric − to outside, W
    const radiant = house.radiantShare * flows.radiatorHeat;
    const toFabric = heatToFabric(house, air, fabric);
    const lostByHouse = houseLoss(house, air, fabric, flows.outside);
    const fabricLoss = house.fabricToOutside * (fabric - flows.outside);
    rates[slots.radiator] = (flows.toRadiators - flows.radiatorHeat) / radiators.capacity;
    rates[slots.air] =
      (flows.radiatorHeat - radiant - toFabric - (lostByHouse - fabricLoss)) / house.airCapacity;
    rates[slots.fabric] = (radiant + toFabric - fabricLoss) / house.fabricCapacity;

    // Sums, W
    rates[slots.fromBoiler] = flows.boilerHeat;
    rates[slots.fuel] = flows.fuel;
    rates[slots.fuelForHeating] = flows.fuel * flows.heatingShare;
    rates[slots.whileCondensing] = flows.boilerHeat * flows.condensing;
    rates[slots.fromImmersion] = flows.immersionHeat;
    rates[slots.throughCoil] = flows.coilHeat;
    rates[slots.lostByCylinder] = flows.standingLoss;
    rates[slots.lostByPipes] = flows.pipeLoss;
    rates[slots.lostByHouse] = lostByHouse;
    rates[slots.lostByTapPipe] = flows.tapPipeLoss;
    rates[slots.drawn] = flows.drawnHeat;
    rates[slots.useful] = tap.isWarm ? flows.drawnHeat : 0;
    rates[slots.fromStore] = flows.hotFlow;
    return rates;
  }

  /** Heat into each layer by itself, [layer], W. @param y  the state last evaluated */
  layerHeats(y: ArrayLike<number>): Float64Array {
    layerHeats(this.#plant.cylinder, y, this.net, this.#heats);
    return this.#heats;
  }

  /** Holds its limit exactly; nothing on the way holds heat. */
  #idealBoiler(y: ArrayLike<number>): void {
    const { primary, variant } = this.#plant;
    const { service, limit } = this.#control;
    const { flows } = this;
    const radiator = y[this.#slots.radiator];
    idealPath(
      service,
      primary,
      limit,
      variant.boiler.output,
      flows.target,
      y,
      radiator,
      this.net,
      flows,
    );
    const { radiatorRate } = service;
    flows.toRadiators = radiatorRate > 0 ? radiatorRate * (flows.flow - radiator) : 0;
    flows.boilerHeat = flows.coilHeat + flows.pipeLoss + flows.toRadiators;
    flows.fuel = 0;
    flows.condensing = 0;
    flows.heatingShare = 0;
    this.#returns(radiator);
  }

  /** Boiler: C · dT/dt = from burner − to coil and its pipes − to radiators − from its case, W. */
  #builtBoiler({ burner, loop }: BuiltBoiler, y: ArrayLike<number>): void {
    const { service, firing } = this.#control;
    const { net, rates, flows } = this;
    const slots = this.#slots;
    const loopSlots = slots.loop;
    if (loopSlots === null) throw new Error('a boiler as built has no slots; expected some');
    const radiator = y[slots.radiator];
    const water = y[loopSlots.boilerWater];
    coilPathRates(loop, loopSlots, service.coil, y, net, rates, flows);

    const coilRate = service.coil === null ? 0 : service.coil.heatRate;
    const { radiatorRate } = service;
    const wholeRate = coilRate + radiatorRate;
    flows.flow = wholeRate > 0 ? water : Number.NaN;
    this.#returns(radiator);
    flows.toRadiators = radiatorRate > 0 ? radiatorRate * (water - radiator) : 0;
    const toCoil = coilRate > 0 ? coilRate * (water - flows.coilReturn) : 0;

    flows.fuel = inputOf(burner, firing, y[slots.input]);
    const back = wholeRate > 0 ? flows.returnTemperature : water;
    flows.boilerHeat = burnerHeat(burner, flows.fuel, back);
    flows.condensing = condenses(flows.fuel, back);
    flows.heatingShare = partOf(flows.toRadiators, toCoil);
    const caseLoss = loop.boilerLoss * (water - loop.pipe.surroundings);
    flows.pipeLoss += caseLoss;
    const rate = (flows.boilerHeat - toCoil - flows.toRadiators - caseLoss) / loop.boilerCapacity;
    rates[loopSlots.boilerWater] = rate;
    flows.inputRate = inputRate(burner, flows.target - water, rate);
    rates[slots.input] = firing === 'between' ? flows.inputRate : 0;
  }

  /** Both circuits mixed on their way back into the boiler. */
  #returns(radiator: number): void {
    const { coil, radiatorRate } = this.#control.service;
    const { flows } = this;
    const coilRate = coil === null ? 0 : coil.heatRate;
    const wholeRate = coilRate + radiatorRate;
    if (wholeRate === 0 || Number.isNaN(flows.flow)) flows.returnTemperature = Number.NaN;
    else if (coilRate === 0) flows.returnTemperature = radiator;
    else {
      flows.returnTemperature = (coilRate * flows.coilReturn + radiatorRate * radiator) / wholeRate;
    }
  }
}

/** Part of two heats that the first is; none of what flows backwards. */
function partOf(one: number, other: number): number {
  if (one <= 0) return 0;
  return other <= 0 ? 1 : one / (one + other);
}
