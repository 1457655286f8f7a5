import { describe, expect, test } from 'vitest';
import { type Circulator, circulatorPressure } from '../../../sim/closures/pumpCurve.ts';

const hour = 3600;
const fixed: Circulator = { kind: 'curve', shutOffHead: 6, largestFlow: 3 / hour, setHead: 3 };
const steady: Circulator = { ...fixed, kind: 'constantHead' };

describe('a circulator of 6 m at shut-off and 3 m³/h without head', () => {
  test('adds 58.84 kPa to cold water without flow, 52.30 kPa at 1 m³/h and nothing from 3 m³/h', () => {
    // By hand: 1000 × 9.80665 × 6, and 8/9 of it
    expect(circulatorPressure(fixed, 0, 1000)).toBeCloseTo(58_839.9, 6);
    expect(circulatorPressure(fixed, 1 / hour, 1000)).toBeCloseTo(52_302.13, 2);
    expect(circulatorPressure(fixed, 3 / hour, 1000)).toBe(0);
    expect(circulatorPressure(fixed, 5 / hour, 1000)).toBe(0);
  });

  test('adds 2.5 % less to water at 75 °C, which is that much lighter', () => {
    const ratio = circulatorPressure(fixed, 1e-4, 974.84) / circulatorPressure(fixed, 1e-4, 1000);
    expect(ratio).toBeCloseTo(0.97484, 12); // in proportion to density
  });

  test('set to hold 3 m it adds 29.42 kPa up to 2.12 m³/h and follows its curve from there', () => {
    const corner = (3 / hour) * Math.sqrt(0.5); // 6 (1 − share²) = 3
    expect(circulatorPressure(steady, 0, 1000)).toBeCloseTo(29_419.95, 6);
    expect(circulatorPressure(steady, corner * 0.999, 1000)).toBeCloseTo(29_419.95, 6);
    const beyond = corner * 1.1;
    expect(circulatorPressure(steady, beyond, 1000)).toBe(circulatorPressure(fixed, beyond, 1000));
    // Where the two meet there is no step: 6 m × 2 × 1e-9 apart at most, 1.2e-4 Pa
    const across = [corner * (1 - 1e-9), corner * (1 + 1e-9)].map((flow) =>
      circulatorPressure(steady, flow, 1000),
    );
    expect(Math.abs(across[0] - across[1])).toBeLessThan(1.3e-4);
  });

  test('never adds more for more flow, in 600 steps of 0.5 % of it, on its curve or holding its head', () => {
    for (const circulator of [fixed, steady]) {
      let last = Number.POSITIVE_INFINITY;
      for (let step = 0; step <= 300; step++) {
        const now = circulatorPressure(circulator, (step * 0.005 * 3) / hour, 1000);
        expect(now).toBeLessThanOrEqual(last);
        last = now;
      }
      expect(last).toBe(0);
    }
  });

  test('set to hold more than it can, it is on its curve', () => {
    const ambitious: Circulator = { ...steady, setHead: 8 };
    for (const flow of [0, 2e-4, 5e-4]) {
      expect(circulatorPressure(ambitious, flow, 1000)).toBe(circulatorPressure(fixed, flow, 1000));
    }
  });
});
