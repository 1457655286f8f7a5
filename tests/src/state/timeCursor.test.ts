import { describe, expect, test } from 'vitest';
import { TimeCursor } from '../../../src/state/TimeCursor.svelte.ts';
import { inventedResult } from '../../make/result.ts';

const { trace } = inventedResult(); // a sample every 30 s

describe('the shared moment', () => {
  test('it starts at 0 s, is put to 90 s and steps back to 30 s', () => {
    const moment = new TimeCursor();
    expect(moment.seconds).toBe(0);
    moment.set(90);
    moment.step(-60);
    expect(moment.seconds).toBe(30);
  });

  test('it does not go before 0 s, and refuses what is no number', () => {
    const moment = new TimeCursor(30);
    moment.step(-60);
    expect(moment.seconds).toBe(0);
    expect(() => moment.set(Number.NaN)).toThrow('expected seconds');
  });

  test('at 45 s it is on sample 1 and reads half way to sample 2', () => {
    const moment = new TimeCursor(45);
    const { sensor } = trace.of;
    expect(moment.sampleOf(trace)).toBe(1);
    expect(moment.valueAt('sensor', trace)).toBeCloseTo((sensor[1] + sensor[2]) / 2, 9); // rounding
    expect(moment.valueAt(sensor, trace)).toBe(moment.valueAt('sensor', trace));
  });
});
