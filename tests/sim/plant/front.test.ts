import { describe, expect, test } from 'vitest';
import { apparentDiffusivity, drawnFront, type Front, upwindFront } from '../../make/drawnFront.ts';
import { erfc, scaledErfc } from '../../reference/specialFunctions.ts';

const LITRE_PER_MINUTE = 1 / 60_000;

describe('a step front drawn through 60 % of a 210 l store', () => {
  test.each([
    [6, 48, 4],
    [2, 48, 4],
    [6, 40, 6],
    [6, 96, 4],
  ])(
    'at %i l/min and %i layers is as thick as if water conducted at most %i times as well',
    (flow, layers, bar) => {
      const ratio = apparentDiffusivity(drawnFront({ flow: flow * LITRE_PER_MINUTE, layers }));
      console.log(
        `front at ${flow} l/min, ${layers} layers: ${ratio.toFixed(2)} × molecular in all`,
      );
      expect(ratio).toBeLessThan(bar);
      expect(ratio).toBeGreaterThan(0.9); // not thinner than conduction makes it, but for what a layer can resolve
    },
  );

  // A front can be no thinner than a layer or two: the faster the draw, the less time for conduction to make it thicker
  // than that, and the larger the same front is against conduction alone. So the bar of each flow is in layers.
  test.each([2, 4, 6, 8, 10, 12, 14, 16, 18, 20])(
    'at %i l/min adds at most 3 of 48 layers to what conduction does, and in 96 layers is as if water conducted at most 4 times as well',
    (flow) => {
      const front = drawnFront({ flow: flow * LITRE_PER_MINUTE, layers: 48 });
      const ratio = apparentDiffusivity(front);
      // diffusivities add up, so what the model adds is what is left of the square of the thickness
      const added = (front.thickness / front.layerHeight) * Math.sqrt(1 - 1 / ratio);
      const fine = apparentDiffusivity(drawnFront({ flow: flow * LITRE_PER_MINUTE, layers: 96 }));
      console.log(
        `front at ${flow} l/min, 48 layers: ${ratio.toFixed(2)} × molecular in all, ${added.toFixed(2)} layers added; ` +
          `96 layers: ${fine.toFixed(2)} ×`,
      );
      expect(added).toBeLessThan(3);
      expect(fine).toBeLessThan(4);
      expect(fine).toBeLessThan(ratio);
    },
  );

  test('plain upwind at 40 layers and 6 l/min makes it 60 to 75 times, more than 10 times ours', () => {
    const plain = apparentDiffusivity(upwindFront({ flow: 6 * LITRE_PER_MINUTE, layers: 40 }));
    const ours = apparentDiffusivity(drawnFront({ flow: 6 * LITRE_PER_MINUTE, layers: 40 }));
    console.log(
      `plain upwind at 40 layers: ${plain.toFixed(1)} × molecular; ours ${ours.toFixed(2)} ×`,
    );
    // v Δz / 2 over molecular diffusivity, half a layer of motion each step: 67 for these figures
    expect(plain).toBeGreaterThan(60);
    expect(plain).toBeLessThan(75);
    expect(plain / ours).toBeGreaterThan(10);
  });

  test('a front stays between 10 and 60 °C and rises from base to top', () => {
    const { T } = drawnFront({ flow: 6 * LITRE_PER_MINUTE, layers: 48 });
    for (let i = 0; i < 48; i++) {
      expect(T[i]).toBeGreaterThan(10 - 2e-3); // 1e-4 K of the run, summed over some twenty steps
      expect(T[i]).toBeLessThan(60 + 2e-3);
      if (i > 0) expect(T[i]).toBeGreaterThan(T[i - 1] - 2e-3);
    }
  });

  test('its middle has come 60 % of the height, within a quarter of a layer', () => {
    const { T, layerHeight } = drawnFront({ flow: 6 * LITRE_PER_MINUTE, layers: 48 });
    const heat = Array.from(T).reduce((sum, t) => sum + (60 - t) / 50, 0) * layerHeight;
    expect(heat / 1.32).toBeCloseTo(0.6, 4); // plug flow: nothing has left but hot water
    const middle = Array.from(T).findIndex((t) => t > 35);
    const at = middle - 0.5 + (35 - T[middle - 1]) / (T[middle] - T[middle - 1]);
    expect(Math.abs(at * layerHeight - 0.6 * 1.32)).toBeLessThan(layerHeight / 4);
  });

  test('with 20 times the conduction it lies on the exact front within 0.3 % of the step', () => {
    const front = drawnFront({ flow: 6 * LITRE_PER_MINUTE, layers: 96, stirring: 20 });
    const { T, layerHeight } = front;
    for (let i = 0; i < 96; i++) {
      // 14 mm layers against a front 0.3 m thick: second order leaves less than 0.003
      expect(Math.abs((60 - T[i]) / 50 - fedFront(front, (i + 0.5) * layerHeight))).toBeLessThan(
        0.003,
      );
    }
  });
});

describe('a front that is smooth already', () => {
  test.each([0.1, 0.2, 0.3, 0.5])(
    'of %f m is carried 0.53 m and is never thinner than conduction alone would leave it',
    (boundary) => {
      const carried = drawnFront({ flow: 6 * LITRE_PER_MINUTE, layers: 48, boundary, share: 0.4 });
      const resting = drawnFront({ flow: 0, layers: 48, boundary, time: carried.time });
      // by standard deviation, which a straight ramp with corners has too; 1e-5: tolerance of the run
      expect(carried.deviation / resting.deviation).toBeGreaterThan(1 - 1e-5);
      expect(carried.deviation / resting.deviation).toBeLessThan(1.06); // 1.054 at 0.1 m, less than 4 layers
    },
  );
});

/**
 * Share of the cold at height z when cold is let in at its own rate: the base conducts nothing out.
 * source: flux inlet, van Genuchten and Alves 1982, from memory; written with exp × erfc joined
 */
function fedFront({ time, speed, alpha }: Front, z: number): number {
  const spread = 2 * Math.sqrt(alpha * time);
  const behind = (z - speed * time) / spread;
  const far = (z + speed * time) / spread;
  const bell = Math.exp(-behind * behind);
  const swell = (speed * z) / alpha + (speed * speed * time) / alpha;
  return (
    0.5 * erfc(behind) +
    speed * Math.sqrt(time / (Math.PI * alpha)) * bell -
    0.5 * (1 + swell) * bell * scaledErfc(far) // exp(v z / alpha) × exp(-far²) is the bell
  );
}
