import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mixColumn, mixingRoom } from '../../../sim/closures/mixing.ts';

const layer = fc.record({
  T: fc.double({ min: 5, max: 95, noNaN: true }),
  C: fc.double({ min: 100, max: 50_000, noNaN: true }),
});
const column = fc.array(layer, { minLength: 1, maxLength: 60 });

/** Energy above 0 °C, J. */
function energy(T: ArrayLike<number>, C: readonly number[]): number {
  return C.reduce((sum, c, i) => sum + c * T[i], 0);
}

/** Entropy against 0 °C, J/K. */
function entropy(T: ArrayLike<number>, C: readonly number[]): number {
  return C.reduce((sum, c, i) => sum + c * Math.log((T[i] + 273.15) / 273.15), 0);
}

function mixed(layers: readonly { T: number; C: number }[]): Float64Array {
  const T = Float64Array.from(layers, (l) => l.T);
  mixColumn(
    T,
    layers.map((l) => l.C),
  );
  return T;
}

describe('printed cases, exact in decimals', () => {
  test('50, 20, 40, 30, 60 °C from the bottom mix to four layers at 35 °C under 60 °C', () => {
    const T = Float64Array.of(50, 20, 40, 30, 60);
    mixColumn(T, [1, 1, 1, 1, 1]);
    expect([...T]).toEqual([35, 35, 35, 35, 60]);
  });

  test('70, 10, 10, 60 °C of weights 1, 2, 1, 1 mix to three layers at 25 °C under 60 °C', () => {
    const T = Float64Array.of(70, 10, 10, 60);
    mixColumn(T, [1, 2, 1, 1]);
    expect([...T]).toEqual([25, 25, 25, 60]);
  });
});

describe('any column of up to 60 layers, 500 of them', () => {
  test('keeps its energy to 1e-12, loses no entropy, and ends with no layer warmer than the one above', () => {
    fc.assert(
      fc.property(column, (layers) => {
        const C = layers.map((l) => l.C);
        const before = layers.map((l) => l.T);
        const T = mixed(layers);
        const size = energy(before, C);
        // sums of 60 terms, rounding only
        const kept = Math.abs(energy(T, C) - size) <= 1e-12 * size;
        const grown = entropy(T, C) >= entropy(before, C) - 1e-12 * entropy(T, C);
        return kept && grown && T.every((t, i) => i === 0 || t >= T[i - 1] * (1 - 1e-14));
      }),
      { numRuns: 500 },
    );
  });

  test('is the same after mixing twice, and stays between its coldest and hottest layer', () => {
    fc.assert(
      fc.property(column, (layers) => {
        const once = mixed(layers);
        const twice = mixed(layers.map((l, i) => ({ T: once[i], C: l.C })));
        const low = Math.min(...layers.map((l) => l.T));
        const high = Math.max(...layers.map((l) => l.T));
        return once.every(
          (t, i) =>
            Math.abs(t - twice[i]) <= 1e-12 * t &&
            t >= low * (1 - 1e-12) &&
            t <= high * (1 + 1e-12),
        );
      }),
      { numRuns: 500 },
    );
  });

  test('gives the answer of the min-max formula for isotonic regression', () => {
    fc.assert(
      fc.property(fc.array(layer, { minLength: 1, maxLength: 12 }), (layers) => {
        const T = mixed(layers);
        // °C; sums in another order
        return T.every((t, i) => Math.abs(t - minMax(layers, i)) < 1e-9);
      }),
      { numRuns: 500 },
    );
  });
});

test('a column the right way up keeps every bit, and given scratch is enough for fewer layers', () => {
  const T = Float64Array.of(10.1, 20.2, 20.2, 60.3);
  mixColumn(T, [3, 1, 2, 5], mixingRoom(10));
  expect([...T]).toEqual([10.1, 20.2, 20.2, 60.3]);
});

/**
 * The mixed temperature of one layer, straight from the definition: max over starts of min over
 * ends of the mean.
 */
function minMax(layers: readonly { T: number; C: number }[], i: number): number {
  let highest = -Infinity;
  for (let from = 0; from <= i; from++) {
    let lowest = Infinity;
    for (let to = i; to < layers.length; to++) {
      const part = layers.slice(from, to + 1);
      const C = part.map((l) => l.C);
      const mean = energy(
        part.map((l) => l.T),
        C,
      );
      lowest = Math.min(lowest, mean / C.reduce((a, b) => a + b, 0));
    }
    highest = Math.max(highest, lowest);
  }
  return highest;
}
