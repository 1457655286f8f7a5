import { describe, expect, test } from 'vitest';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { idealVariant } from '../../make/idealVariant.ts';
import * as exact from '../../reference/exact.ts';

const tank = { C: 836_000, UA: 2, around: 20 };

describe('a 3 kW source that holds a store between 55 and 60 °C against 2 W/K', () => {
  const run = simulateToEnd(
    idealVariant({ output: 3000, flowLimit: 500, loss: 2, duration: 200_000 }),
  );
  const times = (kind: string) =>
    run.marks.filter((mark) => mark.kind === kind).map(({ at }) => at);
  const calls = times('hotWaterCalled');
  const satisfied = times('statSatisfied');

  test('is on for 1429.061 s and off for 55 816.122 s, again and again', () => {
    const { on, off } = exact.cycleTimes(tank, 3000, 55, 60);
    expect(calls).toHaveLength(4);
    for (let cycle = 1; cycle < calls.length; cycle++) {
      // 1e-4 K at 3 kW are 0.03 s, at 75 W of loss 1.1 s: 0.002 % of either time
      expect(Math.abs(calls[cycle] - satisfied[cycle - 1] - off)).toBeLessThan(1.1);
      if (satisfied[cycle])
        expect(Math.abs(satisfied[cycle] - calls[cycle] - on)).toBeLessThan(0.1);
    }
  });

  test('runs 2.49639 % of the time from one call to the next', () => {
    const duty = (satisfied[1] - calls[1]) / (calls[2] - calls[1]);
    expect(Math.abs(duty / 0.0249639 - 1)).toBeLessThan(1e-4); // 0.1 s of 1429 s
  });
});
