import { describe, expect, test } from 'vitest';
import type { Variant } from '../../../shared/variant.ts';
import {
  type Cylinder,
  conductionRates,
  makeCylinder,
  standingLossRates,
  temperatureAt,
} from '../../../sim/plant/cylinder.ts';
import { makePlant } from '../../../sim/plant/plant.ts';
import { constantWater } from '../../../sim/closures/water.ts';
import { idealVariant } from '../../make/idealVariant.ts';
import { marchToEnd } from '../../make/marchToEnd.ts';
import * as exact from '../../reference/exact.ts';

const hour = 3600;
const alpha = 0.15e-6; // m²/s

/** A still column, cold below `b` and hot above, its conduction set to `alpha`, run for some hours. */
function still(height: number, hotShare: number, layers: number, hours: number) {
  const ideal = idealVariant({ height, layers, setPoint: 0, duration: hours * hour });
  const variant: Variant = { ...ideal, start: { hotShare, hotTemperature: 60, boundary: 0 } };
  const plant = makePlant(variant);
  const { layerHeight, layerCapacity } = plant.cylinder;
  // alpha = conductance × spacing² / capacity of a layer
  const cylinder = { ...plant.cylinder, conductance: (alpha * layerCapacity) / layerHeight ** 2 };
  return { cylinder, T: marchToEnd({ ...plant, cylinder }).end.state };
}

describe('conduction agrees with the exact column', () => {
  test.each([6, 24, 240])(
    'after %i h a closed 1.2 m column of 96 layers is within 0.1 %% of the 50 K step at 0, 0.2, 0.4, 0.6 and 1.2 m',
    (hours) => {
      const { cylinder, T } = still(1.2, 2 / 3, 96, hours);
      const column = { height: 1.2, b: 0.4, cold: 10, hot: 60, alpha };
      for (const z of [0, 0.2, 0.4, 0.6, 1.2]) {
        // the ends are read half a layer inside, where the exact column is asked too
        const inside = Math.min(
          Math.max(z, cylinder.layerHeight / 2),
          1.2 - cylinder.layerHeight / 2,
        );
        const want = exact.closedColumn(column, inside, hours * hour);
        expect(Math.abs(temperatureAt(cylinder, T, inside) - want)).toBeLessThan(0.05);
      }
    },
  );

  test('twice the layers leave a quarter of the error at 0.2 m after 24 h', () => {
    const column = { height: 1.2, b: 0.4, cold: 10, hot: 60, alpha };
    const miss = (layers: number) => {
      const { cylinder, T } = still(1.2, 2 / 3, layers, 24);
      return Math.abs(temperatureAt(cylinder, T, 0.2) - exact.closedColumn(column, 0.2, 24 * hour));
    };
    // second order: 4, give or take the next order
    expect(miss(24) / miss(48)).toBeGreaterThan(3.2);
    expect(miss(24) / miss(48)).toBeLessThan(4.8);
  });

  test.each([
    [6, 0.20633],
    [24, 0.41265],
  ])(
    'after %i h a step in a 3 m column is %f m thick from 10 to 90 %%, within 0.3 %%',
    (hours, printed) => {
      const { cylinder, T } = still(3, 0.5, 200, hours);
      const height = (share: number) => heightOf(cylinder, T, 10 + 50 * share);
      // straight lines between centres 15 mm apart cut the curve by 0.1 to 0.3 %
      expect(Math.abs((height(0.9) - height(0.1)) / printed - 1)).toBeLessThan(0.003);
      expect(exact.frontThickness(alpha, hours * hour)).toBeCloseTo(printed, 5);
    },
  );

  test('a steady column that loses 1.6 W/(m K) to its side takes no net heat in any inner layer', () => {
    const column = { k: 0.65, area: 0.16, loss: 1.6, height: 1.2, top: 60, around: 20 };
    const layers = 120;
    const spacing = column.height / layers;
    const cylinder: Cylinder = {
      ...makeCylinder(idealVariant({ layers, height: 1.2 }), constantWater()),
      conductance: (column.k * column.area) / spacing,
      lossConductance: new Float64Array(layers).fill(column.loss * spacing),
      surroundings: column.around,
    };
    const T = Array.from({ length: layers }, (_, i) =>
      exact.steadyColumn(column, (i + 0.5) * spacing),
    );
    const net = new Float64Array(layers);
    conductionRates(cylinder, T, net);
    standingLossRates(cylinder, T, net);
    for (let i = 0; i < layers - 1; i++) {
      const loss = column.loss * spacing * (T[i] - column.around);
      // (m × spacing)² / 12 of the loss: what a layer of finite height leaves out, 1.3e-4
      expect(Math.abs(net[i] / loss)).toBeLessThan(2e-4);
    }
  });
});

/** Height at which a rising profile passes a temperature, m. */
function heightOf(cylinder: Cylinder, T: ArrayLike<number>, wanted: number): number {
  for (let i = 1; i < cylinder.layers; i++) {
    if (T[i] < wanted) continue;
    return (i - 0.5 + (wanted - T[i - 1]) / (T[i] - T[i - 1])) * cylinder.layerHeight;
  }
  return Number.NaN;
}
