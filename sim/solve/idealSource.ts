import type { Limit, Mark } from '../../shared/result.ts';
import type { Seconds } from '../../shared/units.ts';
import { heatTaken } from '../plant/idealBoiler.ts';
import { flows as waterFlows } from '../plant/service.ts';
import type { Control } from './control.ts';
import type { Derivative } from './derivative.ts';
import { type HeatSource, NEVER, type Switch } from './heatSource.ts';
import type { Plant } from '../plant/plant.ts';
import type { Slots } from './slots.ts';

/** An ideal boiler: at full output, at its flow target, or idle with a return hotter than that. */
export class IdealSource implements HeatSource {
  readonly switches: readonly Switch[] = ['limitUp', 'limitDown'];

  readonly #plant: Plant;
  readonly #slots: Slots;
  readonly #control: Control;
  readonly #derivative: Derivative;

  constructor(plant: Plant, slots: Slots, control: Control, derivative: Derivative) {
    this.#plant = plant;
    this.#slots = slots;
    this.#control = control;
    this.#derivative = derivative;
  }

  settle(_mayFire: boolean, _clock: Seconds, y: ArrayLike<number>): null {
    const control = this.#control;
    const { primary, variant } = this.#plant;
    if (!waterFlows(control.service)) {
      control.limit = 'off';
      return null;
    }
    const { flows } = this.#derivative;
    control.limit = 'off';
    this.#derivative.at(y); // for the target
    const taken = heatTaken(control.service, primary, flows.target, y, y[this.#slots.radiator]);
    if (taken > variant.boiler.output) control.limit = 'output';
    else control.limit = taken < 0 ? 'idle' : 'flowLimit';
    return null;
  }

  crossing(what: Switch, _value: (slot: number) => number, evaluate: () => void): number {
    const { limit } = this.#control;
    const { flows } = this.#derivative;
    evaluate();
    if (what === 'limitUp') {
      if (limit === 'flowLimit') {
        return flows.boilerHeat - this.#plant.variant.boiler.output - HEAT_MARGIN;
      }
      return limit === 'idle' ? flows.target - flows.flow - TEMPERATURE_MARGIN : NEVER;
    }
    if (limit === 'flowLimit') return -flows.boilerHeat - HEAT_MARGIN;
    return limit === 'output' ? flows.flow - flows.target - TEMPERATURE_MARGIN : NEVER;
  }

  throwSwitch(what: Switch): Mark['kind'] {
    const control = this.#control;
    if (what === 'limitUp') control.limit = control.limit === 'idle' ? 'flowLimit' : 'output';
    else control.limit = control.limit === 'output' ? 'flowLimit' : 'idle';
    return 'limitChanged';
  }

  limit(): Limit {
    return this.#control.limit;
  }
}

const HEAT_MARGIN = 2; // W; the flow temperature of a boiler at full output is found to a tenth of it
const TEMPERATURE_MARGIN = 1e-6; // K
