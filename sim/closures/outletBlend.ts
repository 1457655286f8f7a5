import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mo, row, sub } from '../../shared/mathml.ts';
import type { Celsius, Share } from '../../shared/units.ts';
import { mixedShare } from './mixedLitres.ts';

/** What a mixing valve or a hand on the tap makes of hot and cold. */
export interface Blend {
  /** Of the water that comes out, by mass. */
  readonly hotShare: Share;
  /** At the outlet; below the wanted one when the hot water is cooler than that. */
  readonly temperature: Celsius;
}

/**
 * Blends hot and cold to a wanted temperature. Hot that is cooler than that comes out alone, as it
 * is; cold that is warmer than that comes out alone, too. The share has a corner where hot is just
 * the wanted temperature.
 */
export function outletBlend(hot: Celsius, cold: Celsius, wanted: Celsius): Blend {
  const share = hotShare(hot, cold, wanted);
  if (share === 1) return { hotShare: share, temperature: hot };
  return { hotShare: share, temperature: share === 0 ? cold : wanted };
}

/** Share of hot water in the blend. */
function hotShare(hot: Celsius, cold: Celsius, wanted: Celsius): Share {
  if (hot <= wanted) return 1;
  return cold >= wanted ? 0 : 1 / mixedShare(hot, cold, wanted);
}

/**
 * Hot water that an outlet takes: an amount of an amount, or a flow of a flow.
 * @param mixed  out of the outlet, kg or kg/s
 */
export function hotPart(mixed: number, hot: Celsius, cold: Celsius, wanted: Celsius): number {
  return mixed * outletBlend(hot, cold, wanted).hotShare;
}

export const outletBlendRecord: ClosureRecord = {
  key: 'outletBlend',
  title: 'Hot water in what comes out of the tap',
  result: { key: 'result', symbol: sub('m', 'h'), name: 'hot water', unit: 'kg' },
  terms: [
    { key: 'amount', symbol: sub('m', 'm'), name: 'mixed water', unit: 'kg' },
    { key: 'wanted', symbol: sub('T', 'm'), name: 'wanted at the outlet', unit: '°C' },
    { key: 'cold', symbol: sub('T', 'c'), name: 'cold water', unit: '°C' },
    { key: 'hot', symbol: sub('T', 'h'), name: 'hot water', unit: '°C' },
  ],
  formula: equals(
    '{result}',
    '{amount}',
    mo('·'),
    frac(row('{wanted}', mo('−'), '{cold}'), row('{hot}', mo('−'), '{cold}')),
  ),
  sentence:
    'The cooler the store, the more of it every shower takes, until hot alone is not warm enough and the draw runs cold.',
  source: 'lumpedHeat',
  where: 'energy balance of the tap, one specific heat for hot and cold',
  range: 'hot above the wanted temperature, cold below it; litres come within 2 % of kilograms',
  outside:
    'hot below the wanted temperature comes out alone and cooler; cold above it comes out alone',
  changes:
    'A hotter store, warmer incoming water or a cooler shower. A tap mixed by hand does not guard against scalding; a thermostatic mixing valve does.',
  example: {
    given: { amount: 191, wanted: 36, cold: 13, hot: 49 },
    gives: 122,
    digits: 0,
    note: 'Printed in a worked example (textbookExamples): 191 kg at 36 °C are 122 kg at 49 °C and 69 kg at 13 °C.',
  },
  compute: ({ amount, hot, cold, wanted }) => hotPart(amount, hot, cold, wanted),
};

/** Share of hot water in the mixed, for a display beside it. */
export const hotShareRecord: ClosureRecord = {
  ...outletBlendRecord,
  key: 'hotShare',
  title: 'Share of hot water at the tap',
  result: { key: 'result', symbol: mi('x'), name: 'hot share', unit: '' },
  terms: outletBlendRecord.terms.filter(({ key }) => key !== 'amount'),
  formula: equals(
    '{result}',
    frac(row('{wanted}', mo('−'), '{cold}'), row('{hot}', mo('−'), '{cold}')),
  ),
  example: {
    given: { wanted: 40, cold: 10, hot: 60 },
    gives: 0.6,
    digits: 9,
    note: 'A bath of 100 l at 40 °C is 60 l at 60 °C and 40 l at 10 °C (bs6700, from memory).',
  },
  compute: ({ hot, cold, wanted }) => outletBlend(hot, cold, wanted).hotShare,
};
