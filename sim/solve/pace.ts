import { type Constraint, type Gaining, usualStep } from '../../shared/pace.ts';
import type { Limit } from '../../shared/result.ts';
import type { Celsius, Watts } from '../../shared/units.ts';
import {
  type CoilRelaxed,
  coilSlopes,
  type CoilTake,
  coilTake,
  relaxed,
} from '../plant/coilTake.ts';
import { meanAboveFoot, type Sensed } from '../plant/sensed.ts';
import { cylinderStat } from './decided.ts';
import { answeredCalls } from './dispatch.ts';
import type { System } from './system.ts';

/** What sets the pace at one moment: something that shuts the cylinder out, or what each relaxation would bring. */
export interface PaceNow {
  /** Null where heat goes through the coil and the gains decide. */
  sole: Constraint | null;
  /** Heat into the cylinder that a usual step would add, going by its first hundredth, W. */
  readonly gain: Record<Gaining, Watts>;
}

/** Finds what sets the pace of a system at its present controls, by the model's own derivatives. */
export class PaceMeter {
  readonly #system: System;
  readonly #mean: Sensed;
  readonly #alone: CoilRelaxed;
  readonly #shared: CoilRelaxed;
  readonly #now: PaceNow = { sole: null, gain: noGain() };

  constructor(system: System) {
    const { plant } = system;
    const { coilAlone, coilShared, coilAt, flows } = plant;
    this.#system = system;
    this.#mean = meanAboveFoot(plant.cylinder, plant.variant);
    this.#alone = relaxed(coilAlone, (times) => coilAt(times * flows.coilAlone));
    this.#shared =
      coilShared === coilAlone
        ? this.#alone
        : relaxed(coilShared, (times) => coilAt(times * flows.coilShared));
  }

  /** @param y  a state at which the derivative has just been evaluated @returns  the same object every time */
  at(y: ArrayLike<number>): PaceNow {
    const now = this.#now;
    Object.assign(now.gain, none);
    now.sole = this.#shutOut(y);
    if (now.sole === null) this.#gains(y);
    return now;
  }

  /** What keeps the boiler from the coil altogether. */
  #shutOut(y: ArrayLike<number>): Constraint | null {
    const { plant, slots, decided: memory, control } = this.#system;
    const { variant } = plant;
    const { setPoint, differential } = cylinderStat(variant, memory);
    const mean = this.#mean(y);
    if (memory.hasFault) return 'sensor';
    if (!memory.calls.hotWater) {
      // satisfied, unless what the coil can heat is as cold as a sensor should call at
      const isCold = mean < setPoint - Math.min(differential, USUAL_DIFFERENTIAL);
      return isCold ? 'sensor' : 'satisfied';
    }
    if (variant.immersion.used === 'insteadOfBoiler') return 'heater';
    // it has what was asked for, and its sensor does not say so
    if (mean >= setPoint) return 'sensor';
    if (!answeredCalls(variant, memory, y[slots.clock]).hotWater) return 'programme';
    if (control.service.coil !== null) return null;
    return memory.nextMode?.coilRuns === true ? 'valve' : 'heating';
  }

  /** Heat passes the coil: how it answers to flow temperature, surface and water, and how the flow answers in turn. */
  #gains(y: ArrayLike<number>): void {
    const { plant, control, derivative, slots } = this.#system;
    const { service, limit } = control;
    const { gain } = this.#now;
    const { target } = derivative.flows;
    const { radiatorRate } = service;
    const radiatorsRun = radiatorRate > 0;
    const coil = radiatorsRun ? this.#shared : this.#alone;
    const water = slots.loop === null ? derivative.flows.flow : y[slots.loop.boilerWater];
    const flow: Celsius = limit === 'idle' ? target : water;
    const { primary } = plant;
    const here = coilTake(coil.run, primary, flow, y);
    const { perKelvin, perSurface, perFlow } = coilSlopes(coil, primary, flow, y, here);

    // a boiler at full output lets its flow answer until all of the output is taken again; else the flow is held
    const isFree = limit === 'output';
    const answers = perKelvin.heat / (perKelvin.taken + radiatorRate);
    const brings = ({ heat, taken }: CoilTake) =>
      atLeastNone(isFree ? heat - answers * taken : heat);

    gain.coil = usualStep.coil * brings(perSurface);
    gain.primaryFlow = usualStep.primaryFlow * brings(perFlow);
    if (isFree) {
      gain.output = usualStep.output * plant.variant.boiler.output * atLeastNone(answers);
    } else if (flow < target && restsWhenCold.has(limit)) {
      gain.resting = (target - flow) * atLeastNone(perKelvin.heat);
    } else {
      gain.flowLimit = usualStep.flowLimit * atLeastNone(perKelvin.heat);
    }
    if (radiatorsRun) {
      const more = this.#alone.run.heatRate / coil.run.heatRate - 1;
      const toRadiators = radiatorRate * (flow - y[slots.radiator]);
      gain.heating = brings({
        heat: more * perFlow.heat,
        taken: more * perFlow.taken - toRadiators,
      });
    }
  }
}

/** A burner that is off or at its least holds the flow down once it is below its target. */
const restsWhenCold: ReadonlySet<Limit> = new Set(['minimum', 'resting', 'lockedOut', 'valve']);

const USUAL_DIFFERENTIAL = 8; // K; common practice, no source: stats of cylinders have 5 to 10

function atLeastNone(gain: Watts): Watts {
  return gain > 0 ? gain : 0;
}

function noGain(): Record<Gaining, Watts> {
  return { heating: 0, output: 0, resting: 0, flowLimit: 0, primaryFlow: 0, coil: 0 };
}

const none = noGain();
