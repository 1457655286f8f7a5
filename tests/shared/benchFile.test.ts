import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { benchFromText, benchToText } from '../../shared/codec/bench.ts';
import { toText } from '../../shared/codec.ts';
import { defaultVariant } from '../../shared/fields.ts';
import { anyVariant } from '../make/anyVariant.ts';

/** As much of the file as is spoilt. */
interface BenchFile {
  variants: { boiler: Record<string, number> }[];
}

const one = defaultVariant('one');
const text = benchToText({ variants: [one, { ...one, name: 'two' }], inHand: 1 });
const messages = (file: string) => {
  const read = benchFromText(file);
  return 'problems' in read ? read.problems.map(({ message }) => message) : [];
};

test('100 benches of 1 to 4 variants: save, open and save again gives the same bytes', () => {
  fc.assert(
    fc.property(
      fc.array(anyVariant, { minLength: 1, maxLength: 4 }).chain((variants) =>
        fc.record({
          variants: fc.constant(variants),
          inHand: fc.integer({ min: 0, max: variants.length - 1 }),
        }),
      ),
      (bench) => {
        const read = benchFromText(benchToText(bench));
        expect(read).toEqual(bench);
        if ('variants' in read) expect(benchToText(read)).toBe(benchToText(bench));
      },
    ),
    { numRuns: 100 },
  );
});

test('1 variant alone has the file of a variant, and the file of a variant is a bench of 1', () => {
  expect(benchToText({ variants: [one], inHand: 0 })).toBe(toText(one));
  expect(benchFromText(toText(one))).toEqual({ variants: [one], inHand: 0 });
});

describe('what is wrong with a bench is 1 sentence each', () => {
  test.each([
    [
      '5 variants',
      (file: BenchFile) => ({ ...file, variants: Array(5).fill(file.variants[0]) }),
      /1 to 4 variants; this one has 5/,
    ],
    ['0 variants', (file: BenchFile) => ({ ...file, variants: [] }), /this one has 0/],
    ['no list', (file: BenchFile) => ({ ...file, variants: 'A' }), /variants must hold a list/],
    ['C in hand of 2', (file: BenchFile) => ({ ...file, inHand: 'C' }), /one of A, B; it is "C"/],
    [
      'a newer version',
      (file: BenchFile) => ({ ...file, version: 9 }),
      /version 9; .* reads version 1/,
    ],
    ['a key of another kind', (file: BenchFile) => ({ ...file, extra: 1 }), /no extra/],
    [
      'a boiler of 1e6 kW in B',
      (file: BenchFile) => {
        const changed = structuredClone(file);
        changed.variants[1].boiler.outputKilowatts = 1e6;
        return changed;
      },
      /^Variant B: /,
    ],
  ])('%s', (_what, spoil, message) => {
    const found = messages(JSON.stringify(spoil(JSON.parse(text))));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(message);
  });
});
