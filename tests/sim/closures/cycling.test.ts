import { expect, test } from 'vitest';
import { duty, type Lump, offTime, onTime } from '../../../sim/closures/cycling.ts';

/** 200 kg of water at 4180 J/(kg K), losing 2 W/K to 20 °C. */
const store: Lump = { capacity: 836_000, conductance: 2, around: 20 };

test('3 kW between 55 and 60 °C: 1429.061 s on, 55 816.122 s off, duty 0.0249639', () => {
  const on = onTime(store, 55, 60, 3000);
  const off = offTime(store, 55, 60);
  expect(on).toBeCloseTo(1429.061, 3); // closed form, to 1 ms
  expect(off).toBeCloseTo(55_816.122, 3);
  expect(on + off).toBeCloseTo(57_245.183, 3);
  expect(duty(on, off)).toBeCloseTo(0.0249639, 7);
});

test('over a cycle 3 kW times the duty is the mean loss, between 70 W at 55 °C and 80 W at 60 °C', () => {
  const mean = 3000 * duty(onTime(store, 55, 60, 3000), offTime(store, 55, 60));
  expect(mean).toBeGreaterThan(2 * 35);
  expect(mean).toBeLessThan(2 * 40);
  // the logarithmic mean of 70 and 80 W is 74.89 W; heating is so quick that cooling decides
  expect(mean).toBeCloseTo(74.89, 1);
});

test('marched second by second the lump takes as long to heat and to cool', () => {
  // a boiler of 15 kJ/K giving 6 kW into a coil that takes 200 W/K at 50 °C, 70 to 78 °C
  const boiler: Lump = { capacity: 15_000, conductance: 200, around: 50 };
  const march = (from: number, power: number, until: (T: number) => boolean): number => {
    const dt = 1e-3;
    let T = from;
    let t = 0;
    while (!until(T)) {
      const rate = (at: number): number => (power - 200 * (at - 50)) / 15_000;
      T += dt * rate(T + (dt / 2) * rate(T));
      t += dt;
    }
    return t;
  };
  // to one step of the march
  expect(
    Math.abs(onTime(boiler, 70, 78, 6000) - march(70, 6000, (T) => T >= 78)),
  ).toBeLessThanOrEqual(1.1e-3);
  expect(Math.abs(offTime(boiler, 70, 78) - march(78, 0, (T) => T <= 70))).toBeLessThanOrEqual(
    1.1e-3,
  );
});

test('80 W just holds 60 °C and never gets there: on without end, duty 1', () => {
  expect(onTime(store, 55, 60, 80)).toBe(Number.POSITIVE_INFINITY);
  expect(onTime(store, 55, 60, 81)).toBeLessThan(Number.POSITIVE_INFINITY);
  expect(duty(onTime(store, 55, 60, 80), offTime(store, 55, 60))).toBe(1);
});

test('in surroundings of 55 °C it never calls again: off without end, duty 0', () => {
  const warm = { ...store, around: 55 };
  expect(offTime(warm, 55, 60)).toBe(Number.POSITIVE_INFINITY);
  expect(duty(onTime(warm, 55, 60, 3000), offTime(warm, 55, 60))).toBe(0);
});

test('twice the capacity makes both times twice as long and leaves the duty', () => {
  const double = { ...store, capacity: 2 * store.capacity };
  expect(onTime(double, 55, 60, 3000)).toBeCloseTo(2 * onTime(store, 55, 60, 3000), 9);
  expect(offTime(double, 55, 60)).toBeCloseTo(2 * offTime(store, 55, 60), 9);
});
