import fc from 'fast-check';
import { expect, test } from 'vitest';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { anyRun } from '../../make/anyRun.ts';

test('600 runs over all settings finish: none out of steps or out of range', () => {
  const ended = fc
    .sample(anyRun, { numRuns: 600, seed: 1 })
    .map((variant, index) => ({ index, outcome: simulateToEnd(variant).outcome }))
    .filter(({ outcome }) => outcome.kind !== 'finished');
  expect(ended).toEqual([]);
}, 180_000);
