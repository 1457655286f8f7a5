import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../shared/fields.ts';
import { drawColumns } from '../../shared/fields/ownDraw.ts';
import { exampleDraws, newDraw } from '../../shared/ownDraws.ts';
import { problemsOf } from '../../shared/problems.ts';
import { readDraw } from '../../shared/problems/ownDraws.ts';
import type { OwnDraw, Variant } from '../../shared/variant.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('the problems of the own draws', () => {
  const draws = (own: Partial<OwnDraw>, sets: Partial<Variant> = {}): Variant => ({
    ...defaultVariant('Case'),
    ...sets,
    ownDraws: [...exampleDraws, { ...newDraw, ...own }],
  });
  const found = (variant: Variant) =>
    problemsOf(variant).map(({ field, path, message }) => [field, path, plain(message)]);
  const { day, draw } = defaultVariant('Case');
  const own = { day: { ...day, pattern: 'own' as const }, draw: { ...draw, incomingCold: 25 } };

  test('the example and a row as it is added have 0 problems', () => {
    expect(found(draws({}))).toEqual([]);
    expect(found(draws({}, { day: own.day }))).toEqual([]);
  });

  test.each([
    ['at', 0, 86_340, -1, 86_341],
    ['volume', 0.1e-3, 1, 0.09e-3, 1.001],
    ['flow', 0.5 / 60_000, 60 / 60_000, 0.49 / 60_000, 60.1 / 60_000],
    ['mixedTo', 20, 60, 19.9, 60.1],
  ] as const)(
    '%s is taken at %d and %d, refused at %d and %d',
    (key, least, most, below, above) => {
      for (const value of [least, most]) expect(found(draws({ [key]: value }))).toEqual([]);
      for (const value of [below, above, Number.NaN, Number.POSITIVE_INFINITY]) {
        const problems = found(draws({ [key]: value }));
        expect(problems).toHaveLength(1);
        expect(problems[0]).toEqual([
          expect.stringMatching(`^ownDraws\\[3\\]\\.${key}[A-Z]`),
          null,
          expect.stringMatching(
            /^(Time|Volume|Flow|Temperature at the tap) of draw 4 (must|needs)/,
          ),
        ]);
      }
    },
  );

  test('a name has 40 characters at most, a table 60 rows', () => {
    expect(found(draws({ name: 'x'.repeat(40) }))).toEqual([]);
    expect(found(draws({ name: 'x'.repeat(41) }))).toEqual([
      ['ownDraws[3].name', null, 'Name of draw 4 must have at most 40 characters; it has 41.'],
    ]);
    const rows = (count: number) => ({
      ...draws({}),
      ownDraws: Array.from({ length: count }, () => newDraw),
    });
    expect(found(rows(60))).toEqual([]);
    expect(found(rows(61))).toEqual([
      ['ownDraws', null, 'There may be at most 60 draws in an own table; there are 61.'],
    ]);
  });

  test('24 °C at the tap with 25 °C incoming is a problem only where the day goes by the own table', () => {
    expect(found(draws({ mixedTo: 24 }, own))).toEqual([
      [
        'ownDraws[3].mixedToCelsius',
        null,
        'Temperature at the tap of draw 4 must be at least 25 °C, the incoming cold; it is 24 °C.',
      ],
    ]);
    expect(found(draws({ mixedTo: 25 }, own))).toEqual([]);
    expect(found(draws({ mixedTo: 24 }, { draw: own.draw }))).toEqual([]);
  });

  test('21 °C at the tap is colder than the 21.3 °C of a cistern in July, and warmer than the 18.4 °C of the main', () => {
    const july = (coldFrom: 'mains' | 'cistern') =>
      found(draws({ mixedTo: 21 }, { ...own, draw: { ...draw, coldFrom, month: '7' } }));
    expect(july('cistern').map(([, , message]) => message)).toEqual([
      'Temperature at the tap of draw 4 must be at least 21.3 °C, the incoming cold; it is 21 °C.',
    ]);
    expect(july('mains')).toEqual([]);
  });

  test('with the incoming cold beyond its own limits only that 1 problem is told', () => {
    const wild = { ...own, draw: { ...draw, incomingCold: 50 } };
    expect(found(draws({}, wild)).map(([field]) => field)).toEqual(['draw.incomingColdCelsius']);
  });
});

describe('a cell as it is typed', () => {
  const columnOf = (key: keyof OwnDraw) => {
    const column = drawColumns.find((each) => each.key === key);
    if (!column) throw new Error(`no column ${key}`);
    return column;
  };

  test.each([
    ['volume', '1,5', 1.5e-3],
    ['volume', ' 1.5 ', 1.5e-3],
    ['volume', '1.5 l', 1.5e-3],
    ['flow', '6 l/min', 1e-4],
    ['mixedTo', '41,5°C', 41.5],
    ['at', '7:30', 27_000],
    ['at', '07:30', 27_000],
    ['at', '7.5', 27_000],
    ['at', '7,5 h', 27_000],
    ['at', '7.25 hours', 26_100],
    ['at', '0', 0],
    ['at', ' 23:59 ', 86_340],
  ] as const)('%s: “%s” is %d in SI', (key, text, value) => {
    const read = readDraw(text, 0, columnOf(key));
    expect('value' in read && read.value).toBeCloseTo(value, 12); // rounding
  });

  test.each([
    ['at', '', 'Time of draw 3 needs a time of day, such as 07:30.'],
    ['at', 'noon', 'Time of draw 3 needs a time of day, such as 07:30; “noon” is not one.'],
    ['at', '7:5', 'Time of draw 3 needs a time of day, such as 07:30; “7:5” is not one.'],
    ['at', '7:30 am', 'Time of draw 3 needs a time of day, such as 07:30; “7:30 am” is not one.'],
    ['at', '7.30', 'Time of draw 3 can be read two ways in “7.30”: write 7:30 or 7.3 h.'],
    ['at', '7,25', 'Time of draw 3 can be read two ways in “7,25”: write 7:25 or 7.25 h.'],
    ['at', '7 pm', 'Time of draw 3 is given in hours (h); “pm” is not read.'],
    ['at', '24:00', 'Time of draw 3 must be between 00:00 and 23:59; it is 24:00.'],
    ['at', '-1', 'Time of draw 3 must be between 00:00 and 23:59; it is −1 h.'],
    ['volume', '', 'Volume of draw 3 needs a number, such as 20 l.'],
    ['volume', 'lots', 'Volume of draw 3 needs a number, such as 20 l; “lots” is not one.'],
    ['flow', '0', 'Flow of draw 3 must be between 0.5 l/min and 60 l/min; it is 0 l/min.'],
  ] as const)('%s: “%s” gets: %s', (key, text, sentence) => {
    const read = readDraw(text, 2, columnOf(key));
    expect('problem' in read && plain(read.problem.message)).toBe(sentence);
  });
});
