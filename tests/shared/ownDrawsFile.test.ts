import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromText, toFile, toText } from '../../shared/codec.ts';
import { defaultVariant } from '../../shared/fields.ts';
import { drawColumns, mostDraws } from '../../shared/fields/ownDraw.ts';
import { exampleDraws, newDraw } from '../../shared/ownDraws.ts';
import { problemsOf } from '../../shared/problems.ts';
import type { Variant } from '../../shared/variant.ts';
import { anyDraw } from '../make/anyVariant.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const file = (draws: string, version = 3) =>
  `{"format": "reheat-bench variant", "version": ${version}, "ownDraws": ${draws}}`;
const good = '"atHours": 19, "volumeLitres": 110, "flowLitresPerMinute": 12, "mixedToCelsius": 41';

function opened(text: string): Variant {
  const reading = fromText(text);
  if ('problems' in reading) throw new Error(JSON.stringify(reading.problems));
  return reading.variant;
}

function refused(text: string): (readonly [string, string])[] {
  const reading = fromText(text);
  if (!('problems' in reading)) throw new Error('the file was read');
  expect(reading.problems.every(({ path }) => path === null)).toBe(true);
  return reading.problems.map(({ field, message }) => [field, plain(message)]);
}

describe('the file form of the own draws', () => {
  test('110 l at 19 h are saved with the unit in every key, after the day', () => {
    const saved = toFile(defaultVariant('Keys')) as { ownDraws: unknown[] };
    expect(saved.ownDraws[2]).toEqual({
      name: 'Bath',
      atHours: 19,
      volumeLitres: 110,
      flowLitresPerMinute: 12,
      mixedToCelsius: 41,
    });
    const keys = Object.keys(saved);
    expect(keys[keys.indexOf('ownDraws') - 1]).toBe('day');
  });

  test('a file without ownDraws has the 3 draws of the example; one with [] has none, and is saved with []', () => {
    expect(opened('{"format": "reheat-bench variant", "version": 3}').ownDraws).toEqual(
      exampleDraws,
    );
    const none = opened(file('[]'));
    expect(none.ownDraws).toEqual([]);
    expect(toText(none)).toContain('"ownDraws": [],');
    expect(problemsOf({ ...none, day: { ...none.day, pattern: 'own' } })).toEqual([]);
  });

  test('values may be text with their unit and a decimal comma, and 19:00 is 19 h', () => {
    const { ownDraws } = opened(
      file(
        '[{"mixedToCelsius": "41 °C", "flowLitresPerMinute": "7,5", "volumeLitres": " 1.5 l ", "atHours": "19:00"}]',
      ),
    );
    expect(ownDraws).toEqual([
      { name: '', at: 68_400, volume: 1.5 * (1 / 1000), flow: 7.5 / 60_000, mixedTo: 41 },
    ]);
    // written in another order, kept in the order of the columns
    expect(Object.keys(ownDraws[0])).toEqual(drawColumns.map(({ key }) => key));
  });

  test.each([
    ['7.3333333333333', 26_400],
    ['"7:20"', 26_400],
    ['"7:20:15"', 26_415],
    ['"7,25"', 26_100],
    ['"7.25 h"', 26_100],
    ['23.9833333333', 86_340],
  ])('atHours of %s is %d s after midnight, and stays there through 2 saves', (hours, seconds) => {
    const row = `[{${good.replace('"atHours": 19', `"atHours": ${hours}`)}}]`;
    const variant = opened(file(row));
    expect(variant.ownDraws[0].at).toBe(seconds);
    const again = opened(toText(variant));
    expect(again).toEqual(variant);
    expect(toText(again)).toBe(toText(variant));
  });

  test('save, open and save again gives the same bytes and the same rows for 50 tables of up to 60 draws', () => {
    const base = defaultVariant('Rows');
    const tables = fc.array(anyDraw, { maxLength: mostDraws, size: 'max' });
    fc.assert(
      fc.property(tables, (ownDraws) => {
        const text = toText({ ...base, ownDraws });
        const variant = opened(text);
        expect(variant.ownDraws).toEqual(ownDraws);
        expect(toText(variant)).toBe(text);
      }),
      { numRuns: 50 },
    );
  });

  test('a time that is no whole number of milliseconds is saved to the nearest, and stays there', () => {
    const base = defaultVariant('Dragged');
    const text = toText({ ...base, ownDraws: [{ ...newDraw, at: 100 / 3 }] });
    expect(opened(text).ownDraws[0].at).toBe(33.333);
    expect(toText(opened(text))).toBe(text);
  });

  const bad: readonly (readonly [draws: string, ...problems: [string, string][]])[] = [
    ['{}', ['ownDraws', 'ownDraws must hold a list of draws in brackets; it holds an object.']],
    ['null', ['ownDraws', 'ownDraws must hold a list of draws in brackets; it holds null.']],
    [
      `[{${good}}, 5]`,
      ['ownDraws[1]', 'ownDraws[1] must hold a draw in braces; it holds the number 5.'],
    ],
    ['[[]]', ['ownDraws[0]', 'ownDraws[0] must hold a draw in braces; it holds a list.']],
    [
      `[${Array.from({ length: 61 }, () => '0').join(', ')}]`,
      ['ownDraws', 'There may be at most 60 draws in an own table; there are 61.'],
    ],
    [
      `[{${good}}, {${good}}, {${good.replace('volumeLitres', 'volumeGallons')}}]`,
      [
        'ownDraws[2].volumeGallons',
        'ownDraws[2].volumeGallons is not a setting; the nearest is ownDraws[2].volumeLitres.',
      ],
    ],
    [
      `[{${good.replace('atHours', 'at')}}]`,
      ['ownDraws[0].at', 'ownDraws[0].at is not a setting; the nearest is ownDraws[0].atHours.'],
    ],
    [
      `[{${good}, "nam": "x"}]`,
      ['ownDraws[0].nam', 'ownDraws[0].nam is not a setting; the nearest is ownDraws[0].name.'],
    ],
    [
      `[{${good}, "__proto__": {"name": 1}}]`,
      [
        'ownDraws[0].__proto__',
        'ownDraws[0].__proto__ is not a setting; a draw has name, atHours, volumeLitres, flowLitresPerMinute, mixedToCelsius.',
      ],
    ],
    [
      `[{${good.replace('"volumeLitres": 110, ', '')}}]`,
      ['ownDraws[0].volumeLitres', 'Volume of draw 1 is missing: give volumeLitres.'],
    ],
    [
      `[{${good}, "name": 5}]`,
      ['ownDraws[0].name', 'Name of draw 1 must be text in quotes; it holds the number 5.'],
    ],
    [
      `[{${good}, "name": "${'x'.repeat(41)}"}]`,
      ['ownDraws[0].name', 'Name of draw 1 must have at most 40 characters; it has 41.'],
    ],
    [
      `[{${good.replace('110', 'null')}}]`,
      ['ownDraws[0].volumeLitres', 'Volume of draw 1 needs a number; it holds null.'],
    ],
    [
      `[{${good.replace('19', '[19]')}}]`,
      ['ownDraws[0].atHours', 'Time of draw 1 needs a time of day; it holds a list.'],
    ],
    [
      `[{${good.replace('110', '"46 gal"')}}]`,
      ['ownDraws[0].volumeLitres', 'Volume of draw 1 is given in litres (l); “gal” is not read.'],
    ],
    [
      `[{${good.replace('110', '"1,500"')}}]`,
      [
        'ownDraws[0].volumeLitres',
        'Volume of draw 1 can be read two ways in “1,500”: write 1500 or 1.5.',
      ],
    ],
    [
      `[{${good.replace('110', '1e999')}}]`,
      [
        'ownDraws[0].volumeLitres',
        'Volume of draw 1 must be between 0.1 l and 1000 l; it is beyond all measure.',
      ],
    ],
    [
      '[{"atHours": 24, "volumeLitres": 0, "flowLitresPerMinute": 61, "mixedToCelsius": 61}]',
      ['ownDraws[0].atHours', 'Time of draw 1 must be between 00:00 and 23:59; it is 24:00.'],
      ['ownDraws[0].volumeLitres', 'Volume of draw 1 must be between 0.1 l and 1000 l; it is 0 l.'],
      [
        'ownDraws[0].flowLitresPerMinute',
        'Flow of draw 1 must be between 0.5 l/min and 60 l/min; it is 61 l/min.',
      ],
      [
        'ownDraws[0].mixedToCelsius',
        'Temperature at the tap of draw 1 must be between 20 °C and 60 °C; it is 61 °C.',
      ],
    ],
  ];
  test.each(bad.map(([draws, ...expected]) => ({ draws, expected })))(
    '$draws gets 1 sentence for each problem, with its place',
    ({ draws, expected }) => {
      expect(refused(file(draws))).toEqual(expected);
    },
  );

  test('ownDrows is no part of a variant, and the nearest is ownDraws', () => {
    expect(refused(file('[]').replace('ownDraws', 'ownDrows'))).toEqual([
      ['ownDrows', 'ownDrows is not a part of a variant; the nearest is ownDraws.'],
    ]);
  });

  test('100 000 rows that are no draws get 1 problem', () => {
    expect(refused(file(`[${'0,'.repeat(99_999)}0]`))).toHaveLength(1);
  });

  test('files of versions 1 and 2 may hold own draws too, and mean the same by them', () => {
    for (const version of [1, 2]) {
      expect(opened(file(`[{${good}}]`, version)).ownDraws).toEqual([
        { ...exampleDraws[2], name: '' },
      ]);
    }
  });
});
