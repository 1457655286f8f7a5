import { expect, test } from 'vitest';
import { primaryFlows } from '../../../sim/plant/primaryFlows.ts';
import { tabulatedWater } from '../../../sim/closures/water.ts';
import { passCoil } from '../../../sim/plant/coil.ts';
import { makePlant } from '../../../sim/plant/plant.ts';
import { defaultVariant } from '../../../shared/fields.ts';
import { withSetting } from '../../../shared/variant.ts';

const variant = defaultVariant('healthy');
const store = (plant: ReturnType<typeof makePlant>) =>
  Float64Array.from({ length: plant.cylinder.layers }, (_, layer) => 10 + layer);

test('a coil that conducts 2 times as much is one of 2 times the length, at the same flow', () => {
  const flows = primaryFlows(variant, tabulatedWater());
  const twice = makePlant(variant, { flows, coil: 2 });
  const long = makePlant(withSetting(variant, 'coil.length', 2 * variant.coil.length), { flows });
  const T = store(twice);
  expect(passCoil(twice.coilAlone, 80, T, null)).toBeCloseTo(
    passCoil(long.coilAlone, 80, T, null),
    9,
  );
});

test('an unlimited coil leaves its water as warm as the layer of its foot, and all its heat there', () => {
  const plant = makePlant(variant, { coil: 'unlimited' });
  const T = store(plant);
  const net = new Float64Array(T.length);
  const [foot] = plant.coilAlone.layer;
  expect(passCoil(plant.coilAlone, 80, T, net)).toBeCloseTo(T[foot], 9);
  expect([...net].filter((heat) => heat !== 0)).toHaveLength(1);
  expect(net[foot]).toBeCloseTo(plant.coilAlone.heatRate * (80 - T[foot]), 6);
  expect(foot * plant.cylinder.layerHeight).toBeLessThanOrEqual(variant.coil.bottom);
  expect((foot + 1) * plant.cylinder.layerHeight).toBeGreaterThan(variant.coil.bottom);
});

test('the mean that is sensed is that of the layers from the foot of the coil up, and follows 1 kelvin by 1', () => {
  const plant = makePlant(variant, { sensesMean: true });
  const T = store(plant);
  const [foot] = makePlant(variant, { coil: 'unlimited' }).coilAlone.layer;
  expect(plant.sensed(T)).toBeCloseTo((T[foot] + T[T.length - 1]) / 2, 9); // they rise evenly
  const warmer = T.map((each) => each + 1);
  expect(plant.sensed(warmer) - plant.sensed(T)).toBeCloseTo(1, 9);
});

test('an unlimited coil under 2 mm of scale passes what that scale alone would', () => {
  const scaled = withSetting(variant, 'coil.scaleThickness', 0.002);
  const plant = makePlant(scaled, { coil: 'unlimited' });
  const { heatRate } = plant.coilAlone;
  const { tubeOutside, length, scaleConductivity } = variant.coil;
  const conductance = (Math.PI * tubeOutside * length * scaleConductivity) / 0.002; // k A / thickness
  const T = store(plant);
  const [foot] = plant.coilAlone.layer;
  const left = Math.exp(-conductance / heatRate);
  expect(passCoil(plant.coilAlone, 80, T, null)).toBeCloseTo(T[foot] + (80 - T[foot]) * left, 9);
});
