import { expect, inject, test } from 'vitest';
import { comparedRuns, runBits } from '../make/runBits.ts';

test.each(comparedRuns)('%s gives in Chromium every bit that Node gave', (key) => {
  expect(runBits(key)).toBe(inject('nodeBits')[key]);
});

test('4 runs give 4 fingerprints', () => {
  expect(new Set(Object.values(inject('nodeBits'))).size).toBe(4);
});
