import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ownDraws } from '../../../sim/demand/schedule.ts';
import { makePlant } from '../../../sim/plant/plant.ts';
import { march } from '../../../sim/run/march.ts';
import { Recorder } from '../../../sim/run/recorder.ts';
import { TOLERANCE } from '../../../sim/run/simulate.ts';
import { standingSlots } from '../../../sim/solve/standing.ts';
import { System } from '../../../sim/solve/system.ts';
import { toEnd } from '../../../sim/run/toEnd.ts';
import { anyVariant } from '../../make/anyVariant.ts';

/** Counts the slots said to stand still, and those of them that move. */
class Onlooker extends Recorder {
  said = 0;
  moving = 0;
  readonly #system: System;

  constructor(system: System) {
    super(system);
    this.#system = system;
  }

  override sample(time: number, y: ArrayLike<number>): void {
    super.sample(time, y);
    const { plant, slots, control, derivative } = this.#system;
    for (const slot of standingSlots(plant, slots, control)) {
      this.said++;
      if (derivative.rates[slot] !== 0) this.moving++;
    }
  }
}

test('100 runs over all settings: at no sample has a slot a rate that is said to stand still', () => {
  let said = 0;
  fc.assert(
    fc.property(anyVariant, (variant) => {
      const duration = Math.min(variant.run.duration, 14_400);
      const system = new System(makePlant(variant));
      const onlooker = new Onlooker(system);
      toEnd(
        march(system, {
          ...{ from: system.start(), duration, draws: ownDraws(variant), tolerance: TOLERANCE },
          ...{ recorder: onlooker, sampleStep: () => 60 },
        }),
      );
      expect(onlooker.moving).toBe(0);
      said += onlooker.said;
    }),
    { numRuns: 100, endOnFailure: true },
  );
  expect(said).toBeGreaterThan(10_000);
}, 120_000);
