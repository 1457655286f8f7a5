import { expect } from 'vitest';

/** Fails unless each value is larger than the one before. */
export function expectRising(values: readonly number[]): void {
  const risen = values.every((value, i) => i === 0 || value > values[i - 1]);
  expect(risen, `${values.join(', ')} should rise from one to the next`).toBe(true);
}

/** Fails unless each value is smaller than the one before. */
export function expectFalling(values: readonly number[]): void {
  const fallen = values.every((value, i) => i === 0 || value < values[i - 1]);
  expect(fallen, `${values.join(', ')} should fall from one to the next`).toBe(true);
}
