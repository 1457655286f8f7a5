import type { Pace } from '../../shared/pace.ts';
import { type Quantity, quantities, type Trace } from '../../shared/result.ts';
import type { Seconds } from '../../shared/units.ts';
import { waterAroundCoil } from '../plant/coil.ts';
import type { System } from '../solve/system.ts';
import { arrivingSlot } from '../solve/tap.ts';
import { usableIn } from '../measure/usable.ts';
import { PaceLog } from './paceLog.ts';

const names = Object.keys(quantities) as Quantity[];

/** Collects samples of a run. */
export class Recorder {
  #system: System;
  readonly #time: number[] = [];
  readonly #layers: number[] = [];
  readonly #of: Record<Quantity, number[]>;
  readonly #pace: PaceLog | null;

  /** @param withPace  also what sets the pace, which takes four passes through the coil more */
  constructor(system: System, withPace = false) {
    this.#system = system;
    this.#pace = withPace ? new PaceLog(system) : null;
    this.#of = Object.fromEntries(names.map((name) => [name, [] as number[]])) as Record<
      Quantity,
      number[]
    >;
  }

  /** The run goes on with another system of the same slots. */
  follow(system: System): void {
    this.#system = system;
    this.#pace?.follow(system);
  }

  /** Takes one sample: evaluates the derivative at a state and keeps what it says. */
  sample(time: Seconds, y: ArrayLike<number>): void {
    const { plant, slots, derivative, control } = this.#system;
    const { layers } = plant.cylinder;
    derivative.at(y);
    const { flows } = derivative;
    const { coil, radiatorRate } = control.service;
    const shares = coil !== null && radiatorRate > 0;
    const { hasFault } = this.#system;
    this.#time.push(time);
    for (let layer = 0; layer < layers; layer++) this.#layers.push(y[layer]);
    const of = this.#of;
    of.sensor.push(hasFault ? Number.NaN : this.#system.reading(y[slots.bead]));
    of.bead.push(y[slots.bead]);
    of.top.push(y[layers - 1]);
    of.bottom.push(y[0]);
    of.flow.push(flows.flow);
    of.flowTarget.push(radiatorRate > 0 || coil !== null ? flows.target : Number.NaN);
    of.returnTemperature.push(flows.returnTemperature);
    of.coilInlet.push(flows.coilInlet);
    of.coilOutlet.push(flows.coilOutlet);
    of.coilWater.push(coil === null ? Number.NaN : waterAroundCoil(coil, y));
    of.boilerHeat.push(flows.boilerHeat);
    of.fuel.push(flows.fuel);
    of.coilHeat.push(flows.coilHeat);
    of.radiatorHeat.push(flows.radiatorHeat);
    of.immersionHeat.push(flows.immersionHeat);
    of.coilFlow.push(coil === null ? 0 : shares ? plant.flows.coilShared : plant.flows.coilAlone);
    of.radiatorFlow.push(
      radiatorRate === 0 ? 0 : shares ? plant.flows.radiatorsShared : plant.flows.radiatorsAlone,
    );
    of.standingLoss.push(flows.standingLoss);
    of.pipeLoss.push(flows.pipeLoss);
    of.radiator.push(y[slots.radiator]);
    of.air.push(y[slots.air]);
    of.fabric.push(y[slots.fabric]);
    of.outside.push(flows.outside);
    of.drawFlow.push(control.tap.draw?.flow ?? 0);
    of.arriving.push(y[arrivingSlot(plant, slots)]);
    of.outlet.push(flows.outlet);
    of.usable.push(usableIn(plant, y));
    this.#pace?.sample(y);
  }

  /** What set the pace; of a recorder that was asked for it. */
  pace(): Pace {
    if (this.#pace === null) throw new Error('the pace was not recorded; expected it to be');
    return this.#pace.pace(this.#time);
  }

  /** The samples so far, all in one piece of memory, which is handed from thread to thread at once. */
  trace(): Trace {
    const samples = this.#time.length;
    const { layers } = this.#system.plant.cylinder;
    const memory = new Float64Array(samples * (1 + layers + names.length));
    let used = 0;
    const put = (values: readonly number[]) => {
      const view = memory.subarray(used, used + values.length);
      view.set(values);
      used += values.length;
      return view;
    };
    return {
      samples,
      layers,
      time: put(this.#time),
      layerTemperature: put(this.#layers),
      of: Object.fromEntries(names.map((name) => [name, put(this.#of[name])])) as Record<
        Quantity,
        Float64Array
      >,
    };
  }
}
