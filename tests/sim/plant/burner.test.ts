import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import type { Variant } from '../../../shared/variant.ts';
import {
  burnerHeat,
  condenses,
  inputAtStart,
  inputRate,
  makeBurner,
} from '../../../sim/plant/burner.ts';

const base = defaultVariant('burner'); // 24 kW, 5 kW at least, band 20 K, reset time 60 s
const withBoiler = (boiler: Partial<Variant['boiler']>) =>
  makeBurner({ ...base, boiler: { ...base.boiler, ...boiler } });
const burner = withBoiler({});

describe('rated with 60 °C back, where the curve has 87 % at full load', () => {
  test('24 kW take 27 586.2 W of fuel, by hand 24 000 / 0.87, and give 24 000 W', () => {
    expect(burner.inputMost).toBeCloseTo(27_586.2, 1); // printed digits
    expect(burnerHeat(burner, burner.inputMost, 60)).toBeCloseTo(24_000, 8); // rounding
  });

  test('5 kW at least take 5673.1 W, by hand x = 5000 / (0.87 + 0.01 × (1 − x / 27 586.2) / 0.7), and give 5000 W', () => {
    const x = burner.inputLeast;
    expect(x).toBeCloseTo(5000 / (0.87 + (0.01 * (1 - x / 27_586.2069)) / 0.7), 6); // a few rounds
    expect(x).toBeCloseTo(5673.1, 1); // printed digits
    expect(burnerHeat(burner, x, 60)).toBeCloseTo(5000, 6);
  });

  test('300 boilers from 1 to 100 kW give what they are rated at, 20 points better or worse', () => {
    const share = fc.double({ min: 0.05, max: 1, noNaN: true });
    const shift = fc.double({ min: -0.3, max: 0.01, noNaN: true });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100 }), share, shift, (kilowatts, turn, shifted) => {
        const output = kilowatts * 1000;
        const one = withBoiler({ output, minimumOutput: output * turn, efficiencyShift: shifted });
        expect(burnerHeat(one, one.inputMost, 60) / output).toBeCloseTo(1, 12); // rounding
        // by fuel and not by output: 1 % / 0.7 of load, and load differs by less than 0.25 × 0.025
        const least = burnerHeat(one, one.inputLeast, 60) / (output * turn);
        expect(Math.abs(least - 1)).toBeLessThan(1e-8); // four rounds of a fixed point
        expect(one.inputLeast).toBeLessThanOrEqual(one.inputMost * (1 + 1e-12));
      }),
      { numRuns: 300 },
    );
  });
});

describe('the return', () => {
  test('of 30 °C gives 26 620.7 W at full load, by hand 27 586.2 × 0.965; of 71 °C 23 724.1 W', () => {
    expect(burnerHeat(burner, burner.inputMost, 30)).toBeCloseTo((24_000 / 0.87) * 0.965, 6);
    expect(burnerHeat(burner, burner.inputMost, 71)).toBeCloseTo((24_000 / 0.87) * 0.86, 6);
    expect(burnerHeat(burner, burner.inputMost, 30)).toBeCloseTo(26_620.7, 1); // printed digits
    expect(burnerHeat(burner, burner.inputMost, 71)).toBeCloseTo(23_724.1, 1);
  });

  test('colder by 0 to 50 K never gives less heat from the same fuel, nor condenses less, in 300 pairs', () => {
    const back = fc.double({ min: 10, max: 90, noNaN: true });
    const colder = fc.double({ min: 0, max: 50, noNaN: true });
    const input = fc.double({ min: 1, max: 27_586, noNaN: true });
    fc.assert(
      fc.property(back, colder, input, (one, by, fuel) => {
        const heat = burnerHeat(burner, fuel, one);
        expect(burnerHeat(burner, fuel, one - by)).toBeGreaterThanOrEqual(heat * (1 - 1e-12));
        expect(condenses(fuel, one - by)).toBeGreaterThanOrEqual(condenses(fuel, one));
        expect(heat).toBeLessThan(fuel); // on gross calorific value no boiler passes 1
      }),
      { numRuns: 300 },
    );
  });

  test('condenses wholly at 50 °C, by half at 54 °C, and not at 58 °C or with 0 W of fuel', () => {
    expect([50, 54, 58].map((back) => condenses(10_000, back))).toEqual([1, 0.5, 0]);
    expect(condenses(0, 30)).toBe(0);
  });
});

test('0 W of fuel give 0 W, and more fuel more heat, in 300 pairs', () => {
  expect(burnerHeat(burner, 0, 40)).toBe(0);
  const input = fc.double({ min: 0, max: 27_586, noNaN: true });
  fc.assert(
    fc.property(input, input, fc.double({ min: 10, max: 90, noNaN: true }), (a, b, back) => {
      const [less, more] = [Math.min(a, b), Math.max(a, b)];
      expect(burnerHeat(burner, more, back)).toBeGreaterThanOrEqual(burnerHeat(burner, less, back));
    }),
    { numRuns: 300 },
  );
});

describe('the controller of 1000 W/K and 60 s', () => {
  // by hand: 24 000 W of fuel over 24 K
  const pi = { ...burner, inputMost: 24_000, inputLeast: 4000, gain: 1000, resetTime: 60 };

  test('has its gain from the band: 27 586.2 W over 20 K are 1379.3 W/K', () => {
    expect(burner.gain).toBeCloseTo(1379.3, 1); // printed digits
    expect(withBoiler({ proportionalBand: 40 }).gain).toBeCloseTo(689.7, 1);
  });

  test('starts with 8000 W at 8 K below, 24 000 W at 30 K, and its least of 4000 W at 2 K or above the target', () => {
    expect([8, 30, 2, -5].map((below) => inputAtStart(pi, below))).toEqual([
      8000, 24_000, 4000, 4000,
    ]);
  });

  test('after 100 s of an error that dies away as 8 exp(−t / 50 s) asks for 6847.1 W, the textbook’s K e + K / Ti ∫ e dt', () => {
    const error = (t: number) => 8 * Math.exp(-t / 50);
    // target constant, so the flow rises as fast as the error falls
    const flowRate = (t: number) => (8 / 50) * Math.exp(-t / 50);
    const input = integrated(error, flowRate, 100);
    // by hand: 1000 × 8 exp(−2) + 1000 / 60 × 400 (1 − exp(−2)) = 1082.7 + 5764.4
    const textbook = 1000 * error(100) + (1000 / 60) * 400 * (1 - Math.exp(-2));
    expect(textbook).toBeCloseTo(6847.1, 1); // printed digits
    expect(input).toBeCloseTo(textbook, 4); // Simpson with 1000 steps is far closer
  });

  test('after 90 s of an error that swings as 5 + 3 sin(t / 15 s) asks for 11 691.6 W, the same sum', () => {
    const error = (t: number) => 5 + 3 * Math.sin(t / 15);
    const flowRate = (t: number) => (-3 / 15) * Math.cos(t / 15);
    // by hand: ∫ e dt = 5 × 90 + 45 (1 − cos 6) = 451.79 K s; 1000 × 4.16175 + 16.6667 × 451.79
    const sum = 5 * 90 + 45 * (1 - Math.cos(6));
    const textbook = 1000 * error(90) + (1000 / 60) * sum;
    expect(integrated(error, flowRate, 90)).toBeCloseTo(textbook, 4);
    expect(textbook).toBeCloseTo(11_691.6, 1);
  });

  test('without an error and with a flow that stands still moves by 0 W/s', () => {
    expect(inputRate(pi, 0, 0)).toBe(0);
  });

  /** Input after a time, by Simpson’s rule on the rate, from what it starts with, W. */
  function integrated(
    error: (t: number) => number,
    flowRate: (t: number) => number,
    until: number,
  ): number {
    const steps = 1000;
    const h = until / steps;
    let sum = 0;
    for (let step = 0; step <= steps; step++) {
      const weight = step === 0 || step === steps ? 1 : step % 2 === 1 ? 4 : 2;
      sum += weight * inputRate(pi, error(step * h), flowRate(step * h));
    }
    return inputAtStart(pi, error(0)) + (sum * h) / 3;
  }
});
