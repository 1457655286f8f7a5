import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { numberedBands, paintedBands } from '../../../src/drawing/waterBands.ts';

const repeat = (temperature: number, count: number) => new Array<number>(count).fill(temperature);

describe('bands that are painted', () => {
  test('4 layers at 11 °C under 16 at 54 °C are 2 bands', () => {
    expect(paintedBands([...repeat(11, 4), ...repeat(54, 16)])).toEqual([
      { from: 0, to: 4, mean: 11 },
      { from: 4, to: 20, mean: 54 },
    ]);
  });
});

describe('bands that carry a number', () => {
  test('a store at one temperature of 60 °C carries 1 number', () => {
    expect(numberedBands(repeat(60, 20), 2)).toEqual([{ from: 0, to: 20, mean: 60 }]);
  });

  test('cold, warm and hot water 40 K and 9 K apart carry 3 numbers', () => {
    const bands = numberedBands([...repeat(11, 4), ...repeat(51, 8), ...repeat(60, 8)], 2);
    expect(bands.map(({ mean }) => mean)).toEqual([11, 51, 60]);
  });

  test('one cold layer of 11 °C under 60 °C keeps to itself, one of 57 °C joins', () => {
    const means = (first: number) =>
      numberedBands([first, ...repeat(60, 19)], 2).map(({ mean }) => mean);
    expect(means(11)).toEqual([11, 60]);
    expect(means(57)).toHaveLength(1);
  });

  test('200 random profiles: at most 5 bands, without gaps, of the same mean temperature', () => {
    const profile = fc.array(fc.double({ min: 5, max: 95, noNaN: true }), {
      minLength: 1,
      maxLength: 48,
    });
    fc.assert(
      fc.property(profile, (layers) => {
        const bands = numberedBands(layers, 2);
        expect(bands.length).toBeLessThanOrEqual(5);
        expect(bands[0].from).toBe(0);
        expect(bands[bands.length - 1].to).toBe(layers.length);
        bands.slice(1).forEach((band, index) => {
          expect(band.from).toBe(bands[index].to);
        });
        const sum = (values: readonly number[]) => values.reduce((all, each) => all + each, 0);
        const held = sum(bands.map(({ from, to, mean }) => (to - from) * mean));
        expect(held).toBeCloseTo(sum(layers), 6); // sums of up to 48 doubles
      }),
      { numRuns: 200 },
    );
  });
});
