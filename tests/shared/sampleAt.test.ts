import { describe, expect, test } from 'vitest';
import type { Trace } from '../../shared/result.ts';
import { profileAt, sampleAt, valueAt } from '../../shared/sampleAt.ts';

// two samples share 60 s, as where something switched
const time = Float64Array.from([0, 30, 60, 60, 90]);
const heat = Float64Array.from([10, 20, 30, 0, 0]);

describe('the sample of a moment', () => {
  test.each([
    [-5, 0],
    [0, 0],
    [29.9, 0],
    [30, 1],
    [60, 3],
    [75, 3],
    [90, 4],
    [1e9, 4],
  ])('the last sample at or before %f s is number %i', (seconds, sample) => {
    expect(sampleAt(time, seconds)).toBe(sample);
  });
});

describe('a value at a moment', () => {
  test('half way from 10 at 0 s to 20 at 30 s is 15', () => {
    expect(valueAt(time, heat, 15)).toBe(15);
  });

  test('at a switch at 60 s the value is the one after it, 0', () => {
    expect(valueAt(time, heat, 60)).toBe(0);
    expect(valueAt(time, heat, 59.999)).toBeCloseTo(30, 2); // 0.001 s from 30, at 1 in 3 s
  });

  test('before 0 s and after 90 s it is the first and the last value', () => {
    expect(valueAt(time, heat, -10)).toBe(10);
    expect(valueAt(time, heat, 500)).toBe(0);
  });

  test('beside a sample without a value it is the last one before, 20', () => {
    const flow = Float64Array.from([10, 20, Number.NaN, Number.NaN, 40]);
    expect(valueAt(time, flow, 45)).toBe(20);
    expect(valueAt(time, flow, 75)).toBeNaN();
  });
});

test('the layers half way between two samples are half way between their 2 temperatures', () => {
  const trace = {
    samples: 2,
    layers: 2,
    time: Float64Array.from([0, 10]),
    layerTemperature: Float64Array.from([10, 50, 20, 60]),
  } as unknown as Trace;
  expect(profileAt(trace, 5)).toEqual([15, 55]);
  expect(profileAt(trace, 99)).toEqual([20, 60]);
});
