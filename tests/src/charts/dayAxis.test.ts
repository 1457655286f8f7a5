import { expect, test } from 'vitest';
import { dayAxis } from '../../../src/charts/dayAxis.ts';

const texts = (days: number, width: number) => {
  const { ticks, text, unit } = dayAxis(days, width);
  return { texts: ticks.map(text), unit, gap: (ticks[1] * width) / (days * 86_400) };
};

test('one day on 758 pixels has a tick every 2 h, on 236 pixels every 6 h, up to 24', () => {
  expect(texts(1, 758).texts.slice(0, 3)).toEqual(['0', '2', '4']);
  expect(texts(1, 236)).toMatchObject({ texts: ['0', '6', '12', '18', '24'], unit: 'h' });
});

test('7 days on 758 pixels name their midnights with 12 between; the last midnight has no name', () => {
  const { texts: all, unit } = texts(7, 758);
  expect(all.slice(0, 4)).toEqual(['day 1', '12', 'day 2', '12']);
  expect(all).toHaveLength(15);
  expect(all.at(-1)).toBe('');
  expect(unit).toBe('h');
});

test('7 days on 236 pixels are numbers with their unit, on 300 pixels names without hours', () => {
  expect(texts(7, 236)).toMatchObject({
    texts: ['1', '2', '3', '4', '5', '6', '7', ''],
    unit: 'day',
  });
  expect(texts(7, 300).texts.slice(0, 2)).toEqual(['day 1', 'day 2']);
  expect(texts(7, 300).unit).toBe('');
});

test('ticks of 1 to 7 days stand 40 pixels apart or more wherever names or hours are written', () => {
  for (const days of [1, 2, 3, 4, 5, 6, 7]) {
    for (const width of [180, 236, 300, 500, 760, 1000]) {
      const { gap, unit } = texts(days, width);
      expect(gap).toBeGreaterThanOrEqual(unit === 'day' ? 25 : 40);
    }
  }
});
