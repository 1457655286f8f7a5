import { expect, inject, test } from 'vitest';
import { comparedPresets, runBits } from '../make/runBits.ts';

test.each(comparedPresets)('%s gives in Chromium every bit that Node gave', (key) => {
  expect(runBits(key)).toBe(inject('nodeBits')[key]);
});

test('3 presets give 3 fingerprints', () => {
  expect(new Set(Object.values(inject('nodeBits'))).size).toBe(3);
});
