import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadFlow, weatherFlow } from '../../../sim/closures/heatingCurve.ts';
import { radiatorOutput } from '../../../sim/closures/radiator.ts';

/** A house at 20 °C, design day −5 °C, 55/45 °C radiators of exponent 1.3. */
const curve = (outside: number): number => weatherFlow(outside, 20, -5, 55, 1.3, 10);

describe('weather compensation', () => {
  test('55 °C on the design day of −5 °C, 36.83 °C at 10 °C, room temperature at 20 °C', () => {
    expect(curve(-5)).toBe(55);
    expect(curve(10)).toBeCloseTo(36.826, 3); // 20 + 30 × 0.49419 + 2
    expect(curve(20)).toBe(20);
    expect(curve(20 - 1e-6)).toBeCloseTo(20, 3);
    expect(curve(27)).toBe(20);
  });

  test('a colder day than the design day asks for more than 55 °C', () => {
    expect(curve(-10)).toBeGreaterThan(55);
  });

  test('radiators at the mean of flow and return give the share of the heat that is lost, 300 days', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -15, max: 19, noNaN: true }),
        fc.double({ min: 1.1, max: 1.5, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 45, max: 80, noNaN: true }),
        (outside, n, spread, designFlow) => {
          const share = (20 - outside) / 25;
          const flow = weatherFlow(outside, 20, -5, designFlow, n, spread);
          const given = radiatorOutput(1000, flow - (share * spread) / 2 - 20, n);
          const design = radiatorOutput(1000, designFlow - spread / 2 - 20, n);
          expect(given / design / share).toBeCloseTo(1, 10); // rounding
        },
      ),
      { numRuns: 300 },
    );
  });

  test('each kelvin milder lowers the flow, by more the milder it is, and without a corner', () => {
    const d = 1e-4;
    for (let outside = -15; outside < 18; outside++) {
      const first = curve(outside) - curve(outside + 1);
      const second = curve(outside + 1) - curve(outside + 2);
      expect(first).toBeGreaterThan(0);
      expect(second).toBeGreaterThan(first);
      const left = (curve(outside) - curve(outside - d)) / d;
      const right = (curve(outside + d) - curve(outside)) / d;
      // 1e-4 K of a curvature below 0.2
      expect(Math.abs(left - right)).toBeLessThan(2e-5);
    }
  });
});

describe('load compensation', () => {
  const flow = (air: number): number => loadFlow(air, 20, 2, 30, 60);

  test('60 °C at 19 °C and below, 45 °C at the set point of 20 °C, 30 °C from 21 °C', () => {
    expect([0, 19, 20, 21, 35].map(flow)).toEqual([60, 60, 45, 30, 30]);
    expect(flow(20.5)).toBeCloseTo(34.6875, 12); // 30 + 30 × 0.15625
  });

  test('the slope is nothing at both ends of the band and −22.5 K per kelvin in its middle', () => {
    const slope = (air: number, d: number): number => (flow(air + d) - flow(air)) / d;
    for (const d of [1e-4, -1e-4]) {
      // 1e-4 K of a curvature of 45
      expect(Math.abs(slope(19, d))).toBeLessThan(5e-3);
      expect(Math.abs(slope(21, d))).toBeLessThan(5e-3);
      expect(slope(20, d)).toBeCloseTo(-22.5, 4); // 1.5 × 30 / 2
    }
  });

  test('a warmer room never gets a hotter flow, nor one outside 30 to 60 °C, 300 pairs', () => {
    const anyAir = fc.double({ min: 10, max: 30, noNaN: true });
    fc.assert(
      fc.property(anyAir, anyAir, fc.double({ min: 0.1, max: 6, noNaN: true }), (a, b, band) => {
        const cool = loadFlow(Math.min(a, b), 20, band, 30, 60);
        const warm = loadFlow(Math.max(a, b), 20, band, 30, 60);
        expect(warm).toBeLessThanOrEqual(cool + 1e-12); // rounding
        expect(warm).toBeGreaterThanOrEqual(30);
        expect(cool).toBeLessThanOrEqual(60);
      }),
      { numRuns: 300 },
    );
  });
});
