import { describe, expect, test } from 'vitest';
import {
  copperTubes,
  tubeContent,
  tubeMetalHeat,
  type TubeSize,
} from '../../../sim/closures/copperTube.ts';
import { boreVelocity } from '../../../sim/closures/pipeFriction.ts';
import { metals } from '../../../sim/closures/metals.ts';

// Size, bore in mm, l/m, kg of copper per metre and m/s at 10 l/min, from a trade table
const printed: [TubeSize, number, number, number, number][] = [
  ['8', 6.8, 0.036, 0.124, 4.59],
  ['10', 8.8, 0.061, 0.158, 2.74],
  ['12', 10.8, 0.092, 0.191, 1.82],
  ['15', 13.6, 0.145, 0.28, 1.15],
  ['22', 20.2, 0.32, 0.531, 0.52],
  ['28', 26.2, 0.539, 0.682, 0.31],
  ['35', 32.6, 0.835, 1.134, 0.2],
];

describe.each(printed)('copper tube of %s mm', (size, bore, content, copper, velocity) => {
  test(`has a bore of ${bore} mm and holds ${content} l/m`, () => {
    expect(copperTubes[size].bore * 1000).toBeCloseTo(bore, 9); // rounding
    expect(Math.abs(tubeContent(size) * 1000 - content)).toBeLessThanOrEqual(0.0005); // printed to 0.001
  });

  test(`carries 10 l/min at ${velocity} m/s`, () => {
    const found = boreVelocity(copperTubes[size].bore, 10 / 60_000);
    expect(Math.abs(found - velocity)).toBeLessThanOrEqual(0.005); // printed to 0.01
  });

  test(`takes up the heat of ${copper} kg of copper for each metre`, () => {
    // 385 J/(kg K); the printed masses go with 8900 kg/m³, ours with 8960, 0.7 % more
    expect(Math.abs(tubeMetalHeat(size) / (385 * copper) - 1)).toBeLessThan(0.012); // and 0.124 to 0.4 %
  });
});

test('15 mm tube takes up 108.5 J/(m K), with the copper of the coil', () => {
  // By hand: π / 4 × (15² − 13.6²) = 31.447 mm², × 3.45e6 J/(m³ K)
  expect(tubeMetalHeat('15')).toBeCloseTo(108.49, 2);
  const { outside, bore } = copperTubes['15'];
  const metal = (Math.PI / 4) * (outside ** 2 - bore ** 2);
  expect(tubeMetalHeat('15') / metal).toBeCloseTo(metals.copper.volumetricHeat, 2); // rounding of 3e6
});
