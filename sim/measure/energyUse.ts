import { isLit, timeOf } from '../../shared/phaseTime.ts';
import type { Measures, Phase } from '../../shared/result.ts';
import type { Joules } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import type { Slots } from '../solve/slots.ts';

type EnergyUse = Pick<
  Measures,
  | 'burnerTime'
  | 'fuel'
  | 'fuelForHeating'
  | 'efficiency'
  | 'condensingShare'
  | 'electricity'
  | 'cost'
  | 'carbon'
>;

/** Fuel, electricity, and what they cost and emit, over the whole run; no fuel is counted for an ideal boiler. */
export function energyUse(
  { boiler, prices }: Variant,
  slots: Slots,
  start: readonly number[],
  end: readonly number[],
  phases: readonly Phase[],
): EnergyUse {
  const sum = (slot: number) => end[slot] - start[slot];
  const electricity = sum(slots.fromImmersion);
  if (boiler.model === 'ideal') {
    return {
      burnerTime: null,
      fuel: null,
      fuelForHeating: null,
      efficiency: null,
      condensingShare: null,
      electricity,
      cost: null,
      carbon: null,
    };
  }
  const fuel = sum(slots.fuel);
  const heat = sum(slots.fromBoiler);
  return {
    burnerTime: timeOf(phases, isLit),
    fuel,
    fuelForHeating: sum(slots.fuelForHeating),
    efficiency: fuel > 0 ? heat / fuel : null,
    condensingShare: heat > 0 ? sum(slots.whileCondensing) / heat : null,
    electricity,
    cost: billOf(prices, fuel, electricity),
    carbon: fuel * prices.fuelCarbon + electricity * prices.electricityCarbon,
  };
}

/** What fuel and electricity cost, in the user's currency. */
export function billOf(prices: Variant['prices'], fuel: Joules, electricity: Joules): number {
  return fuel * prices.fuel + electricity * prices.electricity;
}
