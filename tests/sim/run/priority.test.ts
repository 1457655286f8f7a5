import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Arrangement, Variant } from '../../../shared/variant.ts';
import { makePlant } from '../../../sim/plant/plant.ts';
import { System } from '../../../sim/solve/system.ts';
import { anyReheat, recoveryOf } from '../../make/anyReheat.ts';

const share = fc.double({ min: 0, max: 1, noNaN: true });

/** An invented reheat in a house whose radiators start no hotter than the water around the coil may get. */
const anyHouse = fc
  .record({ one: anyReheat, split: share, loss: share, outside: share })
  .map(({ one, split, loss, outside }) => (arrangement: Arrangement): Variant => ({
    ...one,
    primary: { ...one.primary, coilShare: 0.2 + 0.6 * split },
    heating: { ...one.heating, arrangement, radiatorOutput: 12_000, waterContent: 0.04 },
    house: { ...one.house, heatLoss: 80 + 220 * loss, outside: -5 + 15 * outside },
  }));

test('in 200 houses priority is never slower than both at once', () => {
  fc.assert(
    fc.property(anyHouse, (house) => {
      const [alone, shared] = [house('priority'), house('simultaneous')].map(recoveryOf);
      if (shared === Number.POSITIVE_INFINITY) return;
      // radiators that start hotter than the flow lend their heat to the coil, and that is no breach
      const lent = warmRadiators(house('simultaneous')) / house('priority').boiler.output;
      expect(alone).toBeLessThan(shared * (1 + 1e-3) + lent + 0.1); // 1e-3: ten times the tolerance of the runs
    }),
    { numRuns: 200, endOnFailure: true },
  );
}, 180_000);

/** Heat that radiators at the start hold above the coldest water of the store, J. */
function warmRadiators(variant: Variant): number {
  const plant = makePlant(variant);
  const system = new System(plant);
  const { state } = system.start();
  return plant.radiators.capacity * Math.max(0, state[system.slots.radiator] - state[0]);
}
