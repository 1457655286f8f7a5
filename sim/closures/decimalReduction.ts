import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mo, paren, raised, row, sub } from '../../shared/mathml.ts';
import type { Celsius, Seconds } from '../../shared/units.ts';
import { logLinear, type Point } from './logLinear.ts';

/**
 * Times at a temperature in which published tests found Legionella pneumophila reduced to a tenth.
 * Infinite below 45 °C, where nothing counts as killed and it may multiply; held above 80 °C.
 */
export function decimalReductionBand(temperature: Celsius): {
  readonly shortest: Seconds;
  readonly longest: Seconds;
} {
  if (temperature < LEAST) {
    return { shortest: Number.POSITIVE_INFINITY, longest: Number.POSITIVE_INFINITY };
  }
  return { shortest: logLinear(SHORTEST, temperature), longest: logLinear(LONGEST, temperature) };
}

/**
 * Tenfold reductions per second, to be added up over a temperature history: the sum is a band too.
 * 0 below 45 °C, where growth is not counted either.
 */
export function reductionRate(temperature: Celsius): {
  readonly slowest: number;
  readonly fastest: number;
} {
  const { shortest, longest } = decimalReductionBand(temperature);
  return { slowest: 1 / longest, fastest: 1 / shortest };
}

/**
 * Every published time that the band is made of, s. Only times for one tenfold reduction, or for a
 * printed number of them, divided by it. Pages that print how long until "most die" (32 min at
 * 60 °C, 5 to 6 h at 55 °C) mean many tenfold reductions and say not how many: they are not used.
 */
export const published: readonly Point[] = [
  // source: reductionTests, chlorine-free water
  [45, 2500 * 60],
  [50, 380 * 60],
  [55, 13.93 * 60],
  [60, 0.74 * 60],
  [66, 0.45 * 60],
  // source: reductionPages, 80 to 124 min at 50 °C, 2 min at 60 °C
  [50, 80 * 60],
  [50, 124 * 60],
  [60, 2 * 60],
  // source: reductionPages, eight tenfold reductions in 25, 10 and 5 min: an eighth of each
  [60, (25 * 60) / 8],
  [70, (10 * 60) / 8],
  [80, (5 * 60) / 8],
  // source: reductionStrains, from memory
  [50, 111 * 60],
  [54, 27 * 60],
  [58, 6 * 60],
];

/** No kill is claimed below, °C. */
const LEAST = 45; // source: reductionTests, its lowest temperature

// Each edge bends only at printed times, and all of the others lie between the two
const SHORTEST: readonly Point[] = [
  [45, 2500 * 60],
  [50, 80 * 60],
  [55, 13.93 * 60],
  [60, 0.74 * 60],
  [66, 0.45 * 60],
];
const LONGEST: readonly Point[] = [
  [45, 2500 * 60],
  [50, 380 * 60],
  [54, 27 * 60],
  [58, 6 * 60],
  [60, (25 * 60) / 8],
  [70, (10 * 60) / 8],
  [80, (5 * 60) / 8],
];

const edge = (
  which: 'shortest' | 'longest',
): Omit<ClosureRecord, 'key' | 'title' | 'where' | 'example'> => ({
  result: {
    key: 'result',
    symbol: mi('D'),
    name: `${which} time for a tenfold reduction`,
    unit: 'min',
    factor: 1 / 60,
  },
  terms: [{ key: 'temperature', symbol: mi('T'), name: 'temperature of the water', unit: '°C' }],
  formula: equals(
    '{result}',
    sub('D', '1'),
    mo('·'),
    raised(
      paren(frac(sub('D', '2'), sub('D', '1'))),
      row(
        paren('{temperature}', mo('−'), sub('T', '1')),
        mo('/'),
        paren(sub('T', '2'), mo('−'), sub('T', '1')),
      ),
    ),
  ),
  sentence:
    'Published times differ by several times, so this is one edge of a band and never a verdict: no figure here says that water is safe, and bacteria that no longer grow in a culture, even after 70 °C, can recover.',
  source: 'reductionTests',
  range:
    '45 to 80 °C, free Legionella pneumophila in water; in biofilm, scale, sludge or amoebae it lasts longer. At 45 °C a single test: the band closes there for want of a second, not for certainty. It may still grow up to about 46 °C',
  outside:
    'below 45 °C infinite: nothing is counted as killed, and from 20 °C it may multiply; beyond the last printed time held, so that no faster kill is claimed',
  changes:
    'A hotter store: between 50 and 60 °C each kelvin takes a quarter to a half off the time.',
  compute: ({ temperature }) => decimalReductionBand(temperature)[which],
});

export const shortestReductionRecord: ClosureRecord = {
  .../* @__PURE__ */ edge('shortest'),
  key: 'shortestReduction',
  title: 'Shortest published time for a tenfold reduction of Legionella',
  where:
    'the times of that work at 45, 55, 60 and 66 °C and a shorter one of others at 50 °C; straight on a logarithmic scale between them',
  example: {
    given: { temperature: 55 },
    gives: 835.8,
    digits: 6,
    note: 'Printed: 13.93 min at 55 °C.',
  },
};

export const longestReductionRecord: ClosureRecord = {
  .../* @__PURE__ */ edge('longest'),
  key: 'longestReduction',
  title: 'Longest published time for a tenfold reduction of Legionella',
  where:
    'the times of that work at 45 and 50 °C, of other strains at 54 and 58 °C (from memory), and an eighth of the printed times for eight tenfold reductions at 60, 70 and 80 °C; straight on a logarithmic scale between them',
  example: {
    given: { temperature: 50 },
    gives: 22_800,
    digits: 6,
    note: 'Printed: 380 min at 50 °C.',
  },
};
