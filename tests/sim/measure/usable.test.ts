import { describe, expect, test } from 'vitest';
import { belowUsable, usable } from '../../../sim/measure/usable.ts';

describe('mixed water at 40 °C', () => {
  const layer = 0.05; // m³

  test('150 l at 60 °C let down with 10 °C are 250 l', () => {
    expect(usable([60, 60, 60], 0, 3, layer, 10)).toBeCloseTo(0.25, 12); // (60 − 10) / 30 × 150 l
  });

  test.each([
    [39.999, 0],
    [40, 0.05],
    [70, 0.1],
  ])('50 l at %f °C count as %f m³', (temperature, volume) => {
    expect(usable([temperature], 0, 1, layer, 10)).toBeCloseTo(volume, 12);
  });

  test('150 l half hot, stirred from 60 and 10 °C to 35 °C, give 0 l instead of 125', () => {
    expect(usable([10, 60], 0, 2, 0.075, 10)).toBeCloseTo(0.125, 12);
    expect(usable([35, 35], 0, 2, 0.075, 10)).toBe(0);
  });

  test('reads its layers from an offset and counts 100 l of three as below 40 °C', () => {
    const T = [99, 20, 39.9, 60];
    expect(usable(T, 1, 3, layer, 10)).toBeCloseTo((0.05 * 50) / 30, 12);
    expect(belowUsable(T, 1, 3, layer)).toBeCloseTo(0.1, 12);
  });
});
