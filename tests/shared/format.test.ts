import { describe, expect, test } from 'vitest';
import {
  celsius,
  duration,
  figure,
  kilowatts,
  litres,
  measureText,
  measureWords,
  percent,
  plainText,
  quantityText,
  settingText,
  shown,
  spoken,
  timeOfDay,
} from '../../shared/format.ts';

/** The no-break space that stands before every unit. */
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('times', () => {
  const cases: readonly (readonly [number, string])[] = [
    [0, '0.0 min'],
    [-0.1, '0.0 min'],
    [1992, '33.2 min'],
    [7196, '119.9 min'],
    [7199, '2 h 00 min'],
    [7200, '2 h 00 min'],
    [7500, '2 h 05 min'],
    [10_799, '3 h 00 min'],
    [-7500, '−2 h 05 min'],
    [259_200, '72 h 00 min'],
  ];
  test.each(cases)('%d s is written %s', (seconds, text) => {
    expect(plain(duration(seconds))).toBe(text);
  });
});

describe('quantities', () => {
  test('24 040 W is 24.0 kW, 60.04 °C is 60.0 °C, 0.2104 m³ is 210 l, 0.276 is 28 %', () => {
    expect(plain(kilowatts(24_040))).toBe('24.0 kW');
    expect(plain(celsius(60.04))).toBe('60.0 °C');
    expect(plain(litres(0.2104))).toBe('210 l');
    expect(plain(percent(0.276))).toBe('28 %');
  });

  test('a no-break space, U+00A0, keeps 24.0 and kW on one line', () => {
    expect(kilowatts(24_000)).toBe('24.0\u00a0kW');
  });

  test('−5.04 °C has the minus sign U+2212, and −0.04 °C is 0.0 °C without one', () => {
    expect(celsius(-5.04)).toBe('\u22125.0\u00a0°C');
    expect(plain(celsius(-0.04))).toBe('0.0 °C');
  });

  test('without digits 3 significant figures are given and no exponent', () => {
    expect([0.012345, 1.5, 24, 1234.5, 0, -0.5].map((value) => figure(value))).toEqual([
      '0.0123',
      '1.5',
      '24',
      '1230',
      '0',
      '−0.5',
    ]);
  });

  test('what is not reached or not a number is a dash, in words “not reached”', () => {
    expect(shown(null, 'minute', 1)).toBe('–');
    expect(shown(Number.NaN, 'celsius', 1)).toBe('–');
    expect(measureText('recovery', null)).toBe('–');
    expect(measureWords('recovery', null)).toBe('not reached');
    expect(plain(measureWords('recovery', 600))).toBe('10.0 min');
  });

  test('a quantity and a measure follow their rows: 3 digits for losses, 2 for rooms', () => {
    expect(plain(quantityText('standingLoss', 75))).toBe('0.075 kW');
    expect(plain(measureText('lowestRoom', 19.456))).toBe('19.46 °C');
    expect(measureText('hotWaterCalls', 3)).toBe('3');
  });

  test('a setting is written as it was typed: 0.44 m, 1.25 ×, 5 %, or the words of a choice', () => {
    expect(plain(settingText('stat.sensorHeight', 0.44))).toBe('0.44 m');
    expect(plain(settingText('coil.enhancement', 1.25))).toBe('1.25 ×');
    expect(plain(settingText('start.hotShare', 0.05))).toBe('5 %');
    expect(settingText('heating.arrangement', 'priority')).toBe('hot water first');
    expect(plain(plainText(-30, 'celsius'))).toBe('−30 °C');
  });

  test('26 400 s after midnight is 07:20, 26 415 s is 07:20:15, 86 340 s is 23:59', () => {
    const times = [0, 26_400, 26_415, 86_340].map(timeOfDay);
    expect(times).toEqual(['00:00', '07:20', '07:20:15', '23:59']);
  });

  test('a screen reader hears 0.42 metres, minus 5.0 degrees Celsius, 48', () => {
    expect(spoken(0.42, 'metre', 2)).toBe('0.42 metres');
    expect(spoken(-5, 'celsius', 1)).toBe('minus 5.0 degrees Celsius');
    expect(spoken(48, 'number', 0)).toBe('48');
    expect(spoken(null, 'litre')).toBe('not reached');
  });
});
