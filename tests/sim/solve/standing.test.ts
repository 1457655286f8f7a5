import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ownDraws } from '../../../sim/demand/schedule.ts';
import { makePlant } from '../../../sim/plant/plant.ts';
import { march } from '../../../sim/run/march.ts';
import { TOLERANCE } from '../../../sim/run/simulate.ts';
import { standingSlots } from '../../../sim/solve/standing.ts';
import { System } from '../../../sim/solve/system.ts';
import { toEnd } from '../../../sim/run/toEnd.ts';
import { anyVariant } from '../../make/anyVariant.ts';

test('100 runs over all settings: at no sample has a slot a rate that is said to stand still', () => {
  let said = 0;
  fc.assert(
    fc.property(anyVariant, (variant) => {
      const duration = Math.min(variant.run.duration, 14_400);
      const system = new System(makePlant(variant));
      const { plant, slots, control, derivative } = system;
      let moving = 0;
      const sample = (_time: number, y: ArrayLike<number>) => {
        derivative.at(y);
        for (const slot of standingSlots(plant, slots, control)) {
          said++;
          if (derivative.rates[slot] !== 0) moving++;
        }
      };
      toEnd(
        march(system, {
          ...{ from: system.start(), duration, draws: ownDraws(variant), tolerance: TOLERANCE },
          ...{ recorder: { sample }, sampleStep: () => 60 },
        }),
      );
      expect(moving).toBe(0);
    }),
    { numRuns: 100, endOnFailure: true },
  );
  expect(said).toBeGreaterThan(10_000);
}, 120_000);
