import { describe, expect, test } from 'vitest';
import { cautionsOf } from '../../shared/cautions.ts';
import type { DayRun } from '../../shared/day.ts';
import {
  guidanceWords,
  hygieneWords,
  isHeatedThrough,
  reductionBand,
  reductionWords,
  scaldWords,
  warmthRows,
} from '../../shared/sentences/hygiene.ts';
import { withSetting } from '../../shared/variant.ts';
import { scaldTimeBand } from '../../sim/closures/scaldTime.ts';
import { inventedDay, inventedWarmth } from '../make/inventedDay.ts';

const text = (words: string) => words.replaceAll('\u00a0', ' ');
const hour = 3600;
const { variant } = inventedDay();
const through = withSetting(variant, 'day.pasteurise', 'once');
const words = (day: DayRun) => hygieneWords(day).map(text);

describe('how warm the store was kept', () => {
  test('a coldest tenth from 12 to 40 °C never reaches 60 °C and is warm for 20 h of 24 h', () => {
    expect(words(inventedDay())[0]).toBe(
      'The coldest tenth of the store goes from 12.0 °C to 40.0 °C and never reaches 60 °C. For 20 h 00 min of 24 h it is between 20 °C and 45 °C, where Legionella multiplies.',
    );
  });

  test('one that is at 60 °C for 90 min says so, and no growth where there is none', () => {
    const coldestTenth = inventedWarmth({
      least: 50,
      most: 62,
      longestHot: 5400,
      growthTime: 0,
    });
    expect(words(inventedDay({ hygiene: { coldestTenth } }))[0]).toBe(
      'The coldest tenth of the store goes from 50.0 °C to 62.0 °C and is at 60 °C or more for 90.0 min at a stretch.',
    );
  });

  test('26 l that never get hot are the blind spot under the coil; 0 l are none; 210 l are all', () => {
    expect(words(inventedDay())[1]).toBe(
      '26 l never reach 60 °C, the coolest of them no more than 33.0 °C. The lowest part under the coil, which never gets hot, is the usual blind spot.',
    );
    const none = inventedDay({ hygiene: { neverHot: 0, neverHotBest: null } });
    expect(words(none)[1]).toBe('All of the store reaches 60 °C at some time.');
    const all = inventedDay({ hygiene: { neverHot: variant.cylinder.volume } });
    expect(words(all)[1]).toBe(
      'No part of the store ever reaches 60 °C; its coolest part gets to 33.0 °C.',
    );
  });

  test('at the tap 0 or 3 of 11 long draws have less than 50 °C after a minute', () => {
    expect(words(inventedDay())[2]).toBe(
      'In 11 draws of a minute or more the hot water at the tap has 50 °C or more a minute after opening.',
    );
    expect(words(inventedDay({ hygiene: { cooler: 3 } }))[2]).toMatch(/^In 3 of 11 draws/);
    expect(words(inventedDay({ hygiene: { longDraws: 0 } }))).toHaveLength(2);
  });

  test('the two parts of the store stand side by side in 6 rows', () => {
    const rows = warmthRows(inventedDay());
    expect(rows).toHaveLength(6);
    expect(rows[4].map(text)).toEqual(['from 20 to 45 °C', '20 h 00 min', '20 h 00 min']);
    expect(rows[3].map(text)).toEqual(['at a stretch', '0.0 min', '4 h 00 min']);
  });
});

describe('heating through', () => {
  const held = (most: number, longestHot: number) =>
    inventedDay({
      variant: through,
      hygiene: { coldestTenth: inventedWarmth({ most, longestHot }) },
    });

  test('48.5 °C is not 60 °C, and what lies under the coil, below 0.08 m, is why', () => {
    const said = words(held(48.5, 0)).at(-1);
    expect(said).toContain(
      'Heating through from 02:00 for 3 h 00 min, with the set-point at 65 °C:',
    );
    expect(said).toContain(
      'gets to 48.5 °C and does not reach 60 °C. What lies under the coil, below 0.08 m,',
    );
  });

  test('30 min at 60 °C are not an hour; 60 min are', () => {
    expect(words(held(61, 1800)).at(-1)).toContain(
      'holds 60 °C for 30.0 min only, not for an hour',
    );
    expect(isHeatedThrough(held(61, 3599))).toBe(false);
    expect(isHeatedThrough(held(61, 3600))).toBe(true);
    expect(words(held(61, 3600)).at(-1)).toContain('the coldest tenth holds 60 °C for 60.0 min.');
  });
});

describe('tenfold reductions', () => {
  test.each([
    [0, 0, 'none'],
    [0, 0.04, 'none'],
    [0, 0.2, '0 to 0.2'],
    [0.14, 0.29, '0.1 to 0.3'],
    [4, 64.2, '4.0 to 64'],
    [4, 1900, '4.0 to more than 100'],
    [438, 1755, 'more than 100'],
    [0.42, 0.43, '0.4'],
  ])('%d to %d is said as "%s"', (fewestReductions, mostReductions, band) => {
    expect(reductionBand(inventedWarmth({ fewestReductions, mostReductions }))).toBe(band);
  });

  test('they are called a band and no verdict, and say nothing of biofilm; the guidance has 60 and 50 °C', () => {
    expect(reductionWords).toMatch(/a band, no verdict\. They say nothing of biofilm/);
    expect(text(guidanceWords)).toContain(
      'at 60 °C or more and have 50 °C at the tap within a minute',
    );
  });
});

describe('scalds', () => {
  const at = (hottestAtTap: number | null) =>
    text(scaldWords(inventedDay({ measures: { hottestAtTap } }), scaldTimeBand(hottestAtTap ?? 0)));

  test('60 °C burns within 3 to 8 s by the table and the curve, 44 °C and no draw say nothing', () => {
    expect(at(60)).toContain(
      'up to 60.0 °C. In published tests that burns adult skin within 3 to 8 s, a child’s sooner',
    );
    expect(at(60)).toContain('thermostatic mixing valve at the outlet, not by storing cooler');
    expect(at(44)).toBe('');
    expect(at(null)).toBe('');
  });

  test('45 °C takes hours, said with their unit', () => {
    expect(at(45)).toMatch(/within 54\.0 min to 3 h 00 min,/);
  });
});

describe('cautions of a day', () => {
  const keys = (day: DayRun | null) => cautionsOf(variant, null, day).map(({ key }) => key);

  test('without a day there are none of them, and a cool-tapped day of 1 h growth has none', () => {
    const quiet = inventedDay({ hygiene: { coldestTenth: inventedWarmth({ growthTime: hour }) } });
    const plainKeys = keys(null);
    expect(keys(quiet)).toEqual(plainKeys);
    expect(plainKeys).not.toContain('warmForHours');
  });

  test('2 h between 20 and 45 °C warn, with the hours', () => {
    const day = inventedDay({
      hygiene: { coldestTenth: inventedWarmth({ growthTime: 2 * hour }) },
    });
    const [first] = cautionsOf(variant, null, day);
    expect(first.key).toBe('warmForHours');
    expect(text(first.text)).toContain('between 20 °C and 45 °C for 2 h 00 min');
  });

  test('44.1 °C at the tap warns of scalds, 44 °C does not', () => {
    expect(keys(inventedDay({ measures: { hottestAtTap: 44.1 } }))).toContain('scaldsAtTheTap');
    expect(keys(inventedDay({ measures: { hottestAtTap: 44 } }))).not.toContain('scaldsAtTheTap');
    expect(keys(inventedDay({ measures: { hottestAtTap: null } }))).not.toContain('scaldsAtTheTap');
  });

  test('a store heated through to 45 °C, or for 30 min, is not protected; without heating through nothing is said', () => {
    const said = (most: number, longestHot: number) =>
      cautionsOf(
        variant,
        null,
        inventedDay({
          variant: through,
          hygiene: { coldestTenth: inventedWarmth({ most, longestHot }) },
        }),
      ).find(({ key }) => key === 'notHeatedThrough');
    expect(text(said(45, 0)?.text ?? '')).toContain('gets to 45.0 °C and does not reach 60 °C');
    expect(text(said(61, 1800)?.text ?? '')).toContain(
      'for 30.0 min at a stretch, not for an hour',
    );
    expect(said(61, 3600)).toBeUndefined();
    expect(keys(inventedDay())).not.toContain('notHeatedThrough');
  });

  test('each has a source, and the last caution still defers', () => {
    const wild = inventedDay({ variant: through, measures: { hottestAtTap: 60 } });
    const cautions = cautionsOf(variant, null, wild);
    expect(cautions.slice(0, 3).map(({ key }) => key)).toEqual([
      'notHeatedThrough',
      'warmForHours',
      'scaldsAtTheTap',
    ]);
    for (const { source } of cautions.slice(0, 3)) {
      expect(source).toMatch(/\b(19|20)\d\d\b|common practice/);
    }
    expect(cautions.at(-1)?.key).toBe('deferral');
  });
});
