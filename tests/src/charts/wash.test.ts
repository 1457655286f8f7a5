import { describe, expect, test } from 'vitest';
import { wash, washSteps } from '../../../src/charts/wash.ts';

describe('the wash of a temperature', () => {
  test.each([
    [10, 'var(--wash-10)'],
    [40, 'var(--wash-40)'],
    [70, 'var(--wash-70)'],
    [4, 'var(--wash-10)'],
    [92, 'var(--wash-70)'],
    [42.5, 'color-mix(in srgb, var(--wash-50) 25%, var(--wash-40))'],
    [69.9, 'var(--wash-70)'],
  ])('%f °C is %s', (temperature, colour) => {
    expect(wash(temperature)).toBe(colour);
  });

  test('the field is painted in 13 steps of 5 °C from 10 to 70 °C', () => {
    expect(washSteps).toEqual([10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70]);
  });
});
