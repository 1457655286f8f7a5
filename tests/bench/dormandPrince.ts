import type { Variant } from '../../shared/variant.ts';
import { makePlant } from '../../sim/plant/plant.ts';
import { tolerancesOf } from '../../sim/solve/slots.ts';
import { System } from '../../sim/solve/system.ts';
import { Watch } from '../../sim/solve/watch.ts';

/**
 * The same equations, pools and events by another general-purpose method, for comparison only: Dormand and Prince 5(4) with
 * steps by its estimate of the error. Draws are left out.
 * @param tolerance  K
 * @returns time at which the stat is first satisfied, s, and calls of the derivative
 */
export function dormandPrince(
  variant: Variant,
  tolerance: number,
): { recovery: number; calls: number } {
  const system = new System(makePlant(variant));
  const { derivative } = system;
  const { duration } = variant.run;
  const absolute = tolerancesOf(system.slots, tolerance);
  const relative = tolerance / 100;
  const watch = new Watch(system);
  const from = system.start();
  let y = [...from.state];
  system.resume(from.memory, y);
  const origin = y[system.slots.clock];
  let done = origin;
  let recovery = Number.NaN;
  let time = 0;
  let step = 2;
  const stage = y.map(() => 0);
  const k = A.map(() => y.map(() => 0));
  const rateInto = (into: number[], at: readonly number[]) => {
    const rates = derivative.at(at);
    for (let slot = 0; slot < into.length; slot++) into[slot] = rates[slot];
  };
  const note = (happened: readonly string[]) => {
    if (Number.isNaN(recovery) && happened.includes('statSatisfied')) recovery = time;
  };

  while (time < duration - 1e-7) {
    for (let next = system.nextTime(done); next - origin <= time + 1e-7;) {
      done = next;
      note(system.tick(done, y));
      next = system.nextTime(done);
    }
    const goal = Math.min(duration, system.nextTime(done) - origin);
    watch.begin(time, y);
    rateInto(k[0], y);
    let event = false;
    while (!event && time < goal - 1e-7) {
      const h = Math.min(step, goal - time);
      for (let s = 1; s < A.length; s++) {
        for (let slot = 0; slot < y.length; slot++) {
          let sum = 0;
          for (let j = 0; j < s; j++) sum += A[s][j] * k[j][slot];
          stage[slot] = y[slot] + h * sum;
        }
        rateInto(k[s], stage);
      }
      let square = 0;
      for (let slot = 0; slot < y.length; slot++) {
        let off = 0;
        for (let s = 0; s < A.length; s++) off += E[s] * k[s][slot];
        const scale =
          absolute[slot] + relative * Math.max(Math.abs(y[slot]), Math.abs(stage[slot]));
        square += ((h * off) / scale) ** 2;
      }
      const error = Math.sqrt(square / y.length);
      const factor = Math.min(5, Math.max(0.2, 0.9 * error ** -0.2));
      if (error > 1) {
        step = h * factor;
        continue;
      }
      const thrown = watch.firstSwitch(time, time + h, stage);
      if (h === step || factor < 1) step = h * factor;
      if (thrown === null) {
        time += h;
        y = [...stage];
        for (let slot = 0; slot < y.length; slot++) k[0][slot] = k[A.length - 1][slot];
      } else {
        time = thrown.at;
        y = [...watch.inside.stateAt(time)];
        note(system.throwSwitch(thrown.what, y));
        event = true;
        step = Math.max(h / 2, 2);
      }
    }
  }
  return { recovery, calls: derivative.calls };
}

// source: Dormand and Prince 1980, coefficients of RK5(4)7M, from memory; the last row is the step itself
const A = [
  [],
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
  [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
];
const E = [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40];
