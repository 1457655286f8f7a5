import type { Variant } from '../../shared/variant.ts';
import { mixColumn } from '../../sim/closures/mixing.ts';
import { makePlant } from '../../sim/plant/plant.ts';
import { System } from '../../sim/solve/system.ts';

/**
 * The same equations by another method, for comparison only: classical Runge-Kutta in equal steps, every
 * layer for itself, the column mixed after each step, valves and boiler looked at once a step.
 * @returns time at which the stat is first satisfied, s, by a straight line inside the step, and calls
 */
export function handStepped(variant: Variant, step: number): { recovery: number; calls: number } {
  const system = new System(makePlant(variant));
  const { layers, layerCapacity } = system.plant.cylinder;
  const { slots, derivative } = system;
  const from = system.start();
  let y = [...from.state];
  system.resume(from.memory, y);
  const capacity = new Float64Array(layers).fill(layerCapacity);
  const column = new Float64Array(layers);
  // alone: the pools of the run are not used
  const rate = (at: readonly number[]): number[] => {
    const rates = [...derivative.at(at)];
    const heats = derivative.layerHeats(at);
    for (let i = 0; i < layers; i++) rates[i] = heats[i] / layerCapacity;
    return rates;
  };
  const ahead = (k: readonly number[], h: number) => y.map((value, i) => value + h * k[i]);
  let recovery = Number.NaN;
  for (let t = 0; t < variant.run.duration; t += step) {
    const a = rate(y);
    const b = rate(ahead(a, step / 2));
    const c = rate(ahead(b, step / 2));
    const d = rate(ahead(c, step));
    const before = y[slots.bead];
    y = y.map((value, i) => value + (step / 6) * (a[i] + 2 * b[i] + 2 * c[i] + d[i]));
    for (let i = 0; i < layers; i++) column[i] = y[i];
    mixColumn(column, capacity);
    for (let i = 0; i < layers; i++) y[i] = column[i];
    const { setPoint } = variant.stat;
    if (Number.isNaN(recovery) && system.decided.calls.hotWater && y[slots.bead] >= setPoint) {
      recovery = t + (step * (setPoint - before)) / (y[slots.bead] - before);
      system.throwSwitch('stat', y);
    }
    system.settle(y);
  }
  return { recovery, calls: derivative.calls };
}
