import type { DayRun } from '../../shared/day.ts';

/** What the days shown have burnt and cost, and the heat that was made with it. */
export interface Spent {
  /** All fuel, rooms included, gross, J. */
  readonly fuel: number;
  /** Of all fuel and electricity. */
  readonly cost: number;
  /** Of the boiler where it burns counted fuel, and of the heater, J. */
  readonly heat: number;
}

/** All fuel is not a measure of a day; it comes out of its bill, or out of the samples where fuel has no price. */
export function spentOn({ measures, variant, trace, balance }: DayRun): Spent {
  const { prices, boiler } = variant;
  const { electricity } = measures;
  const isBuilt = boiler.model === 'asBuilt';
  const priced = ((measures.cost ?? 0) - electricity * prices.electricity) / prices.fuel;
  const fuel = isBuilt ? (prices.fuel > 0 ? priced : sumOf(trace.time, trace.of.fuel)) : 0;
  return {
    fuel,
    cost: measures.cost ?? electricity * prices.electricity,
    heat: (fuel > 0 ? balance.fromBoiler : 0) + electricity,
  };
}

/** The area under a sampled line, straight between its samples. */
function sumOf(time: Float64Array, values: Float64Array): number {
  let sum = 0;
  for (let i = 1; i < time.length; i++) {
    const both = values[i - 1] + values[i];
    if (!Number.isNaN(both)) sum += ((time[i] - time[i - 1]) * both) / 2;
  }
  return sum;
}
