import { expect, inject, test } from 'vitest';
import { comparedRuns, runBits, spreadBits } from '../make/runBits.ts';

test.each(comparedRuns)('%s gives in Chromium every bit that Node gave', (key) => {
  expect(runBits(key)).toBe(inject('nodeBits')[key]);
});

test('4 runs give 4 fingerprints', () => {
  expect(new Set(Object.values(inject('nodeBits'))).size).toBe(4);
});

test('16 runs of a spread give in Chromium every bit that Node gave', () => {
  expect(spreadBits()).toBe(inject('nodeSpreadBits'));
  expect(spreadBits()).toMatch(/^16 of 16 runs [0-9a-f]+$/);
});
