import { describe, expect, test } from 'vitest';
import { plainVariant } from '../../make/plainVariant.ts';
import { flowFor, heatTaken } from '../../../sim/plant/idealBoiler.ts';
import { makePlant } from '../../../sim/plant/plant.ts';
import { alongPipe } from '../../../sim/plant/primary.ts';
import type { Service } from '../../../sim/plant/service.ts';
import { idealVariant } from '../../make/idealVariant.ts';

const plant = makePlant(plainVariant('default'));
const coilOnly: Service = { coil: plant.coilAlone, radiatorRate: 0, limitOf: 'hotWater' };
const both: Service = { coil: plant.coilAlone, radiatorRate: 500, limitOf: 'hotWater' };
const radiatorsOnly: Service = { coil: null, radiatorRate: 1000, limitOf: 'heating' };
const pipe = { lossConductance: 0.25 * 5, surroundings: 20, cells: 0, capacity: 0 };
const cold = new Array<number>(48).fill(10);
const warm = Array.from({ length: 48 }, (_, i) => 20 + i);

describe('the flow temperature at which a given heat is taken', () => {
  test.each([
    ['the coil in cold water', coilOnly, cold],
    ['the coil in stratified water', coilOnly, warm],
    ['coil and radiators', both, warm],
    ['radiators', radiatorsOnly, warm],
  ])('of %s takes back 1, 12 and 30 kW to 0.05 W', (_name, service, T) => {
    for (const heat of [1000, 12_000, 30_000]) {
      const flow = flowFor(service, plant.primary, heat, T, 35);
      // half the 0.1 W past the output at which the limit of the boiler changes over
      expect(Math.abs(heatTaken(service, plant.primary, flow, T, 35) - heat)).toBeLessThan(0.05);
    }
  });

  test('behind a known 800 W/K in 20 °C water 24 kW need 20 + 24 000 / (0.534922 × 1045) °C', () => {
    const ideal = makePlant(idealVariant());
    const service: Service = { coil: ideal.coilAlone, radiatorRate: 0, limitOf: 'hotWater' };
    const flow = flowFor(service, ideal.primary, 24_000, [20], 0);
    expect(flow).toBeCloseTo(20 + 24_000 / (0.534922 * 1045), 4); // the share is printed to 1e-6
  });

  test('is the temperature of the water when no heat is given', () => {
    const flow = flowFor(coilOnly, { ...pipe, lossConductance: 0 }, 0, cold, 0);
    expect(Math.abs(flow - 10)).toBeLessThan(1e-6);
  });
});

describe('a primary pipe', () => {
  test('of 5 m at 0.25 W/(m K) takes 0.0717 K from 80 °C water at 1045 W/K', () => {
    expect(80 - alongPipe(pipe, 80, 1045)).toBeCloseTo(60 * (1 - Math.exp(-1.25 / 1045)), 12);
    expect(80 - alongPipe(pipe, 80, 1045)).toBeCloseTo(0.0717, 4); // 60 K × 1.25 / 1045
  });

  test('warms 10 °C water in a 20 °C room and leaves 20 °C water alone', () => {
    expect(alongPipe(pipe, 10, 100)).toBeGreaterThan(10);
    expect(alongPipe(pipe, 20, 100)).toBe(20);
  });
});
