import { describe, expect, test } from 'vitest';
import { houseCooling, houseTimeConstant } from '../../../sim/closures/houseCooling.ts';

// thermal mass kJ/(m² K), heat loss W/(m² K), time constant h, fall in 20, 40 and 60 min at 15 K;
// worked from the two formulas of sap, Table 9b, and the exponential
const table: [number, number, number, number[]][] = [
  [100, 3, 9.3, [0.53, 1.04, 1.54]],
  [250, 3, 23.1, [0.21, 0.43, 0.63]],
  [250, 2, 34.7, [0.14, 0.29, 0.43]],
  [450, 2, 62.5, [0.08, 0.16, 0.24]],
  [250, 1, 69.4, [0.07, 0.14, 0.21]],
];

describe.each(table)('a house of %i kJ/(m² K) and %i W/(m² K)', (mass, loss, hours, falls) => {
  const timeConstant = houseTimeConstant(mass * 1000, loss);

  test(`has a time constant of ${hours} h`, () => {
    expect(timeConstant / 3600).toBeCloseTo(hours, 1); // printed to 0.1 h
  });

  test(`cools ${falls.join(', ')} K in 20, 40 and 60 min, 15 K above outside`, () => {
    [20, 40, 60].forEach((minutes, i) => {
      // printed to 0.01 K
      expect(houseCooling(15, minutes * 60, timeConstant)).toBeCloseTo(falls[i], 2);
    });
  });
});

test('at first it cools at ΔT / τ, in the end by the whole 15 K, and without a difference not at all', () => {
  const timeConstant = houseTimeConstant(250_000, 2);
  const second = houseCooling(15, 1, timeConstant);
  expect((second * timeConstant) / 15).toBeCloseTo(1, 5); // half of 1 s over 125 000 s is 4e-6
  expect(houseCooling(15, 100 * timeConstant, timeConstant)).toBeCloseTo(15, 12);
  expect(houseCooling(0, 3600, timeConstant)).toBeCloseTo(0, 15);
  // a heat wave warms it
  expect(houseCooling(-5, 3600, timeConstant)).toBeLessThan(0);
});

test('two pauses of 30 min one after the other are one of 60 min', () => {
  const timeConstant = houseTimeConstant(100_000, 3);
  const first = houseCooling(15, 1800, timeConstant);
  const second = houseCooling(15 - first, 1800, timeConstant);
  expect(first + second).toBeCloseTo(houseCooling(15, 3600, timeConstant), 12); // rounding
});
