import { describe, expect, test } from 'vitest';
import type { CoolDown } from '../../shared/coolDown.ts';
import { defaultVariant } from '../../shared/fields.ts';
import type { LossStanding } from '../../shared/lossStanding.ts';
import { plain, type Sentence } from '../../shared/sentences.ts';
import { coolDownFinding, lossCost, recoveredWords } from '../../shared/sentences/coolDown.ts';
import { lossRows } from '../../shared/sentences/standingLoss.ts';
import { inventedResult } from '../make/result.ts';

const flat = (text: string) => text.replaceAll('\u00a0', ' ');
const text = (sentence: Sentence) => flat(plain(sentence));

/** Invented: three readings from 60 °C in air at 20 °C. */
const study: CoolDown = {
  capacity: 880_000,
  surroundings: 20,
  time: Float64Array.of(0, 86_400, 172_800),
  top: Float64Array.of(60, 55, 51.9),
  mean: Float64Array.of(60, 54, 50),
  bottom: Float64Array.of(60, 50, 45),
  loss: Float64Array.of(66.7, 57, 50),
  lostInDay: 1.7 * 3.6e6,
  readAt: 172_800,
  conductance: 1.65,
  coolAfter: null,
};

describe('a store left alone', () => {
  test('loses 1.70 kWh in 24 h, and its top stays above 40 °C for 48 h', () => {
    const { heading, summary } = coolDownFinding(study);
    expect(text(heading)).toBe(
      'Left alone the store loses 1.70 kWh in the first 24 h, and its top is at 51.9 °C after 48 h.',
    );
    expect(summary.map(text)).toEqual([
      'All of it starts at 60.0 °C in air at 20.0 °C and loses 66.7 W at first; after 48 h its mean is 50.0 °C and its bottom 45.0 °C.',
      'The top stays at 40 °C or more for those 48 h.',
    ]);
  });

  test('that falls below 40 °C after 30 h says so, and so does one that starts at 38 °C', () => {
    const second = (coolAfter: number) => text(coolDownFinding({ ...study, coolAfter }).summary[1]);
    expect(second(30 * 3600)).toBe('The top falls below 40 °C after 30 h 00 min.');
    expect(second(0)).toBe('The top is below 40 °C from the start.');
  });

  test('in warmer air gains 0.18 kWh', () => {
    const warmed = { ...study, lostInDay: -0.18 * 3.6e6, loss: Float64Array.of(-8.3, -7, -6) };
    expect(text(coolDownFinding(warmed).heading)).toContain('the store gains 0.18 kWh');
    expect(text(coolDownFinding(warmed).summary[0])).toContain('gains 8.3 W at first');
  });

  test('costs 1.7 kWh / 0.85 × 0.07 = 0.14 a day; without an efficiency nothing is said of money', () => {
    const base = defaultVariant('priced');
    const variant = { ...base, prices: { ...base.prices, fuel: 0.07 / 3.6e6 } };
    const result = (efficiency: number | null) =>
      inventedResult({ variant, measures: { efficiency } });
    expect(flat(lossCost(study, result(0.85)))).toBe(
      'At your price of fuel and this run’s efficiency of 85 % that day costs 0.14.',
    );
    expect(lossCost(study, result(null))).toBe('');
    expect(lossCost({ ...study, lostInDay: 0 }, result(0.85))).toBe('');
  });

  test('gives back 1.65 of 1.67 W/K, 1.0 % less, or all of it', () => {
    expect(flat(recoveredWords(study, 1.65 / 0.99))).toBe(
      'The log ratio of its mean gives back 1.65 W/K, 1.0 % less: the bottom cools first, so the skin is colder than the mean.',
    );
    expect(flat(recoveredWords(study, 1.65))).toBe(
      'The log ratio of its mean gives back 1.65 W/K.',
    );
    expect(recoveredWords({ ...study, conductance: null }, 1.65)).toBe('');
  });
});

describe('a standing loss in rows', () => {
  const standing: LossStanding = {
    loss: 75,
    perKelvin: 75 / 45,
    energyClass: 'C',
    better: { energyClass: 'B', bound: 62.34 },
    limit: 87.38,
    isAboveLimit: false,
    guide: 2302 * 3600,
  };
  const rows = (change: Partial<LossStanding>) =>
    lossRows({ ...standing, ...change }).map(([label, value]) => `${label}: ${flat(value)}`);

  test('are 5: 75.0 W, 1.67 W/K, class C, the limit of 87.4 W and the guide of 2.30 kWh', () => {
    expect(rows({})).toEqual([
      'with the store 45 K above the air: 75.0 W',
      'for each kelvin: 1.67 W/K',
      'on the energy label: class C (B below 62.3 W)',
      'limit for new cylinders, European Union: 87.4 W',
      'guide of the United Kingdom: 2.30 kWh/24 h',
    ]);
  });

  test('say when 110 W is above the limit, and that 600 l have neither class nor guide', () => {
    expect(rows({ loss: 110, isAboveLimit: true })[3]).toBe(
      'limit for new cylinders, European Union: 87.4 W; this store is above it',
    );
    const large = rows({ energyClass: null, better: null, guide: null });
    expect(large).toHaveLength(4);
    expect(large[2]).toBe('on the energy label: no class above 500 l');
  });
});
