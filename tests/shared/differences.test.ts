import { describe, expect, test } from 'vitest';
import { differencesOf } from '../../shared/differences.ts';
import { defaultVariant } from '../../shared/fields.ts';
import { newDraw } from '../../shared/ownDraws.ts';
import { compareFinding, differenceText, differsWords } from '../../shared/sentences/compare.ts';
import { withSetting } from '../../shared/variant.ts';

const first = defaultVariant('one');
const words = (text: string) => text.replaceAll('\u00a0', ' ');

describe('what differs between variants', () => {
  test('nothing, where only the names are 2', () => {
    expect(differencesOf([first, { ...first, name: 'two' }])).toEqual([]);
    expect(differsWords([], 1)).toBe('The same settings');
  });

  test('2 settings and the own draws of 3 variants, in the order of the settings', () => {
    const second = withSetting(first, 'stat.setPoint', 55);
    const third = { ...withSetting(first, 'boiler.output', 12_000), ownDraws: [newDraw] };
    const found = differencesOf([first, second, third]);
    expect(found.map(({ path }) => path)).toEqual(['boiler.output', 'stat.setPoint', null]);
    expect(found[1].texts.map(words)).toEqual(['60 °C', '55 °C', '60 °C']);
    expect(words(differsWords(found, 2))).toMatch(/^Boiler output 12(\.0)? kW, own draws 1 draw$/);
  });
});

describe('differences in words', () => {
  test.each([
    ['recovery', 1800, 2460, '11.0 min less'],
    ['recovery', 2460, 1800, '11.0 min more'],
    ['recovery', 1800, 1801, 'the same'],
    ['recovery', null, 1800, ''],
    ['meanReturn', 50, 54.2, '4.2 K less'],
    ['condensingShare', 0.62, 0.5, '12 points more'],
    ['meanReturn', 53.56, 61.54, '7.9 K less'],
    ['condensingShare', 0.746, 0.574, '18 points more'],
    ['callsPerDay', 4, 5, '1.0 less'],
    ['dayLowestRoom', 19.16, 18.88, '0.3 K more'],
    ['fuelPerDay', 50e6, 51.5e6, '0.42 kWh less'],
    ['usableWhenCalled', 0.236, 0.2362, 'the same'],
  ] as const)('%s of %s against %s: %s', (key, value, base, said) => {
    expect(words(differenceText(key, value, base))).toBe(said);
  });
});

describe('the finding has a verb and a number', () => {
  const of = (...recoveries: (number | null)[]) =>
    words(
      compareFinding(
        recoveries.map((recovery, place) => ({ letter: 'ABCD'[place], measures: { recovery } })),
      ),
    );
  test.each([
    [[2460, 1800], 'B recovers in 30.0 min, 11.0 min sooner than A'],
    [[2460, 2000, 1800], 'C recovers in 30.0 min, 11.0 min sooner than A'],
    [[1800, 2460], 'A recovers in 30.0 min, 11.0 min sooner than B'],
    [[2544, 2094], 'B recovers in 34.9 min, 7.5 min sooner than A'],
    [[2547, 2091.2], 'B recovers in 34.9 min, 7.6 min sooner than A'],
    [[1800, 1801], 'B recovers in 30.0 min, as A does'],
    [[null, 1800], 'B recovers in 30.0 min; A does not within its run'],
    [[1800, null], 'A recovers in 30.0 min; no other variant does within its run'],
    [[1800], 'A recovers in 30.0 min'],
  ] as const)('%j: %s', (recoveries, said) => {
    expect(of(...recoveries)).toBe(said);
  });
  test('0 of 2 in time', () => {
    expect(of(null, null)).toBe('No variant is satisfied within its run');
  });
});
