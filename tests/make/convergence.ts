import { defaultVariant } from '../../shared/fields.ts';
import { plainVariant } from './plainVariant.ts';
import type { Variant } from '../../shared/variant.ts';
import { makePlant } from '../../sim/plant/plant.ts';
import { ownDraws } from '../../sim/demand/schedule.ts';
import { marchToEnd } from './marchToEnd.ts';

const base = plainVariant('default');

/** The runs on which the default layers and tolerance are judged. */
export const convergenceVariants: readonly (readonly [string, Variant])[] = [
  ['from cold', base],
  ['from cold, with the boiler as built', defaultVariant('as built')],
  ['from a thermocline', { ...base, start: { hotShare: 0.4, hotTemperature: 60, boundary: 0.33 } }],
  [
    'from a thermocline with 40 l drawn at 10 l/min from the tenth minute',
    {
      ...base,
      start: { hotShare: 0.6, hotTemperature: 60, boundary: 0.2 },
      draw: { ...base.draw, volume: 0.04, flow: 10 / 60_000, startsAt: 600 },
    },
  ],
];

/** Time until the stat is first satisfied, s, and calls of the derivative. */
export function recoveryAt(
  variant: Variant,
  layers: number,
  tolerance: number,
): { recovery: number; calls: number } {
  const cut = { ...variant, run: { ...variant.run, layers } };
  const { marks, cost } = marchToEnd(makePlant(cut), {
    draws: ownDraws(cut),
    tolerance,
    until: ({ kind }) => kind === 'statSatisfied',
  });
  const satisfied = marks.find(({ mark }) => mark.kind === 'statSatisfied');
  return { recovery: satisfied?.mark.at ?? Number.NaN, calls: cost.derivativeCalls };
}

/** The finest we ask for: 192 layers and 1e-6 K, s. */
export function referenceRecovery(variant: Variant): number {
  return recoveryAt(variant, 192, 1e-6).recovery;
}
