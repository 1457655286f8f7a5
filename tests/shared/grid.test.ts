import { describe, expect, test } from 'vitest';
import {
  askedFileKey,
  askedFileValue,
  askedFirst,
  askedInFile,
  askedRow,
  askedRows,
} from '../../shared/asked.ts';
import { dayMeasureRows } from '../../shared/day.ts';
import { defaultVariant, fieldAt } from '../../shared/fields.ts';
import {
  choiceAxis,
  evenAxis,
  evenly,
  type Grid,
  overridesAt,
  pointCount,
  variantAt,
} from '../../shared/grid.ts';
import { gapSentences, type Point, valueAsked } from '../../shared/point.ts';
import { measureRows } from '../../shared/result.ts';
import { toSI } from '../../shared/units.ts';
import { settingOf } from '../../shared/variant.ts';

describe('what may be asked of a point', () => {
  test('every measure of the run and of the day, 3 more, each key once in code and in files', () => {
    const run = Object.keys(measureRows);
    const day = Object.keys(dayMeasureRows).map(
      (key) => `day${key[0].toUpperCase()}${key.slice(1)}`,
    );
    const keys: string[] = askedRows.map(({ key }) => key);
    expect(keys).toEqual([...run, ...day, 'callsPerDay', 'fuelPerDay', 'usableWhenCalled']);
    const inFile = askedRows.map(({ key }) => askedFileKey(key));
    expect(new Set([...keys, ...inFile.filter((key) => !keys.includes(key))]).size).toBe(
      keys.length + inFile.filter((key) => !keys.includes(key)).length,
    );
    for (const { key } of askedRows) expect(askedInFile(askedFileKey(key))).toBe(key);
  });

  test('the unit stands in the key, and nothing is rounded: 2000 s are 33.333333333333336 min', () => {
    expect(askedFileKey('recovery')).toBe('recoveryMinutes');
    expect(askedFileKey('dayLowestRoom')).toBe('dayLowestRoomCelsius');
    expect(askedFileKey('hotWaterCalls')).toBe('hotWaterCalls');
    expect(askedFileValue('recovery', 2000)).toBe(33.333333333333336);
    expect(askedFileValue('recovery', null)).toBeNull();
    expect(askedInFile('recovery')).toBeUndefined();
  });

  test('8 are offered first, of all 3 kinds of run', () => {
    expect(askedFirst).toHaveLength(8);
    expect(new Set(askedFirst.map((key) => askedRow(key).of))).toEqual(
      new Set(['run', 'day', 'draw']),
    );
  });
});

describe('values of an axis', () => {
  test('from 0.1 to 0.7 in 7 are the numbers that a person would type', () => {
    expect(evenly(0.1, 0.7, 7)).toEqual([0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7]);
    expect(evenly(24, 8, 3)).toEqual([24, 16, 8]);
    expect(evenly(5, 9, 1)).toEqual([5]);
  });

  test('are in SI, each as the same number typed: 0.3 m², 24 kW', () => {
    const area = evenAxis('coil.area', 0.1, 0.7, 7);
    expect(area.values[2]).toBe(toSI(0.3, 'squareMetre'));
    expect(evenAxis('boiler.output', 12, 36, 3).values).toEqual([12_000, 24_000, 36_000]);
  });

  test('of what is counted are whole: 24 to 48 layers in 4 are 24, 32, 40, 48', () => {
    expect(evenAxis('run.layers', 24, 48, 4).values).toEqual([24, 32, 40, 48]);
    expect(evenAxis('run.layers', 24, 25, 3).values).toEqual([24, 25, 25]);
  });

  test('of a choice are its choices', () => {
    const field = fieldAt('heating.arrangement');
    const choices = field.kind === 'choice' ? field.choices.map(({ value }) => value) : [];
    expect(choiceAxis('heating.arrangement').values).toEqual(choices);
    expect(() => choiceAxis('boiler.output')).toThrow(/expected a choice/);
    expect(() => evenAxis('heating.arrangement', 0, 1, 2)).toThrow(/expected a number/);
  });
});

describe('a grid of 2 by 3 points', () => {
  const grid: Grid = {
    base: defaultVariant('base'),
    axes: [
      { path: 'heating.arrangement', values: ['priority', 'simultaneous'] },
      evenAxis('boiler.output', 12, 36, 3),
    ],
    measures: ['recovery'],
  };

  test('has 6, the last axis changing first', () => {
    expect(pointCount(grid)).toBe(6);
    const all = Array.from({ length: 6 }, (_, index) =>
      overridesAt(grid, index).map(([, value]) => value),
    );
    expect(all).toEqual([
      ['priority', 12_000],
      ['priority', 24_000],
      ['priority', 36_000],
      ['simultaneous', 12_000],
      ['simultaneous', 24_000],
      ['simultaneous', 36_000],
    ]);
  });

  test('the variant of a point differs from the base in the axes alone', () => {
    const variant = variantAt(grid, 5);
    expect(settingOf(variant, 'boiler.output')).toBe(36_000);
    expect(settingOf(variant, 'heating.arrangement')).toBe('simultaneous');
    const { boiler, heating, ...rest } = variant;
    const { boiler: b, heating: h, ...base } = grid.base;
    expect(rest).toEqual(base);
    expect({ ...boiler, output: 0 }).toEqual({ ...b, output: 0 });
    expect({ ...heating, arrangement: '' }).toEqual({ ...h, arrangement: '' });
  });

  test('without axes is 1 point, the base', () => {
    const alone = { ...grid, axes: [] };
    expect(pointCount(alone)).toBe(1);
    expect(variantAt(alone, 0)).toEqual(grid.base);
  });
});

test('a point gives values by their measure, and each reason once', () => {
  const gap = { kind: 'notReached', outcome: null, sentences: ['Not yet.'] } as const;
  const point: Point = { values: [null, 5, null], gaps: [gap, null, gap] };
  expect(valueAsked(point, ['recovery', 'fuel', 'carbon'], 'fuel')).toBe(5);
  expect(valueAsked(point, ['recovery', 'fuel', 'carbon'], 'cost')).toBeNull();
  expect(gapSentences(point)).toEqual(['Not yet.']);
});
