import type { Limit, Mark } from '../../shared/result.ts';
import type { Celsius, Seconds } from '../../shared/units.ts';
import { flowTarget } from '../control/flowTarget.ts';
import { inputAtStart, inputOf, withinEnds } from '../plant/burner.ts';
import { outsideAt } from '../plant/outside.ts';
import type { BuiltBoiler, Plant } from '../plant/plant.ts';
import type { Control, Memory } from './control.ts';
import type { Derivative } from './derivative.ts';
import { type HeatSource, NEVER, type Switch } from './heatSource.ts';
import type { Slots } from './slots.ts';

/** A burner between its least and its most, that rests when the flow gets too hot and is locked out when it gets hotter. */
export class BurnerSource implements HeatSource {
  readonly switches: readonly Switch[] = [
    'burnerHot',
    'burnerCool',
    'limiter',
    'loadUp',
    'loadDown',
  ];
  /** Until when the burner has to rest, s after the midnight before the run. */
  restUntil: Seconds = Number.NEGATIVE_INFINITY;
  isLockedOut = false;
  /** Times it has lit since the run was taken up. */
  starts = 0;

  readonly #plant: Plant;
  readonly #built: BuiltBoiler;
  readonly #boilerWater: number;
  readonly #slots: Slots;
  readonly #control: Control;
  readonly #derivative: Derivative;
  #mayFire = false;
  #hasRested = true;
  /** Whose target the burner has been keeping; null before the first. */
  #limitOf: 'hotWater' | 'heating' | null = null;

  constructor(
    plant: Plant,
    built: BuiltBoiler,
    slots: Slots,
    control: Control,
    derivative: Derivative,
  ) {
    this.#plant = plant;
    this.#built = built;
    this.#slots = slots;
    this.#boilerWater = slots.loop?.boilerWater ?? -1;
    this.#control = control;
    this.#derivative = derivative;
  }

  /** Takes up a run from what the controls remember. */
  resume({ timers, isLockedOut, firing, mode }: Memory): void {
    this.restUntil = timers.rest;
    this.isLockedOut = isLockedOut;
    if (firing !== 'off') this.#limitOf = mode.limitOf;
  }

  settle(mayFire: boolean, clock: Seconds, y: ArrayLike<number>): Mark['kind'] | null {
    const control = this.#control;
    this.#mayFire = mayFire && !this.isLockedOut;
    this.#hasRested = clock >= this.restUntil;
    if (!this.#mayFire) {
      if (control.firing === 'off') return null;
      control.firing = 'off';
      return 'burnerOff';
    }
    const now = (slot: number) => y[slot];
    const before = this.#limitOf;
    this.#limitOf = control.service.limitOf;
    if (control.firing !== 'off') {
      if (before !== null && before !== this.#limitOf) this.#followTarget(before, y);
      // a lower target, as of the rooms after the cylinder, may leave the flow too hot at once
      return this.#excess(now) > 0 ? this.#rest(clock) : null;
    }
    return this.#hasRested && this.#missing(now) > 0 ? this.#light(y) : null;
  }

  crossing(what: Switch, value: (slot: number) => number, evaluate: () => void): number {
    const { firing } = this.#control;
    const { boiler } = this.#plant.variant;
    const { inputLeast, inputMost } = this.#built.burner;
    switch (what) {
      case 'burnerHot':
        return firing === 'off' ? NEVER : this.#excess(value);
      case 'burnerCool':
        if (firing !== 'off' || !this.#mayFire || !this.#hasRested) return NEVER;
        return this.#missing(value);
      case 'limiter':
        return this.isLockedOut ? NEVER : value(this.#boilerWater) - boiler.highLimit;
      case 'loadUp':
        if (firing === 'between') return value(this.#slots.input) - inputMost - INPUT_MARGIN;
        if (firing !== 'least' || !this.#modulates()) return NEVER;
        evaluate();
        return this.#derivative.flows.inputRate - RATE_MARGIN;
      default:
        if (firing === 'between') return inputLeast - value(this.#slots.input) - INPUT_MARGIN;
        if (firing !== 'most' || !this.#modulates()) return NEVER;
        evaluate();
        return -this.#derivative.flows.inputRate - RATE_MARGIN;
    }
  }

  throwSwitch(what: Switch, clock: Seconds, y: number[]): Mark['kind'] | null {
    const control = this.#control;
    const { inputLeast, inputMost } = this.#built.burner;
    switch (what) {
      case 'burnerHot':
        return this.#rest(clock);
      case 'burnerCool':
        return this.#light(y);
      case 'limiter':
        control.firing = 'off';
        this.isLockedOut = true;
        this.#mayFire = false;
        return 'limiterTripped';
      case 'loadUp':
        if (control.firing === 'least') y[this.#slots.input] = inputLeast;
        control.firing = control.firing === 'least' ? 'between' : 'most';
        return 'limitChanged';
      default:
        if (control.firing === 'most') y[this.#slots.input] = inputMost;
        control.firing = control.firing === 'most' ? 'between' : 'least';
        return 'limitChanged';
    }
  }

  limit(): Limit {
    switch (this.#control.firing) {
      case 'most':
        return 'output';
      case 'between':
        return 'flowLimit';
      case 'least':
        return 'minimum';
      default:
        return this.isLockedOut ? 'lockedOut' : this.#mayFire ? 'resting' : 'valve';
    }
  }

  /** Lights the burner at what its controller starts with. */
  #light(y: ArrayLike<number>): 'burnerLit' {
    this.starts++;
    const { burner } = this.#built;
    const below = this.#target((slot) => y[slot]) - y[this.#boilerWater];
    this.#set(inputAtStart(burner, below), y);
    return 'burnerLit';
  }

  /** A target that steps moves the input at once by the gain of the controller: its proportional part. */
  #followTarget(before: 'hotWater' | 'heating', y: ArrayLike<number>): void {
    const { burner } = this.#built;
    const now = (slot: number) => y[slot];
    const step = this.#target(now) - this.#target(now, before);
    const input = inputOf(burner, this.#control.firing, y[this.#slots.input]);
    this.#set(withinEnds(burner, input + burner.gain * step), y);
  }

  /** Fires at an input between the burner's ends, or at one of them. @param y  written */
  #set(input: number, y: ArrayLike<number>): void {
    const { inputLeast, inputMost } = this.#built.burner;
    this.#control.firing = input >= inputMost ? 'most' : input <= inputLeast ? 'least' : 'between';
    (y as number[])[this.#slots.input] = input;
  }

  /** Puts the burner out until it has rested. */
  #rest(clock: Seconds): 'burnerOff' {
    this.#control.firing = 'off';
    this.restUntil = clock + this.#plant.variant.boiler.minimumOff;
    this.#hasRested = clock >= this.restUntil;
    return 'burnerOff';
  }

  /** Above zero once the flow is so far above its target that the burner goes off, K. */
  #excess(value: (slot: number) => number): number {
    return value(this.#boilerWater) - this.#target(value) - this.#plant.variant.boiler.offMargin;
  }

  /** Whether there is anything between its least and its most. */
  #modulates(): boolean {
    const { inputLeast, inputMost } = this.#built.burner;
    return inputMost - inputLeast > FIXED * inputMost;
  }

  /** Above zero once the flow is so far below its target that the burner may light, K. */
  #missing(value: (slot: number) => number): number {
    return this.#target(value) - this.#plant.variant.boiler.restartBelow - value(this.#boilerWater);
  }

  #target(value: (slot: number) => number, limitOf = this.#control.service.limitOf): Celsius {
    const { variant } = this.#plant;
    const outside = outsideAt(variant.house, value(this.#slots.clock));
    return flowTarget(variant, limitOf, value(this.#slots.air), outside);
  }
}

const INPUT_MARGIN = 1e-3; // W
const RATE_MARGIN = 0.01; // W/s
const FIXED = 0.01; // a burner whose ends are this close has only one
