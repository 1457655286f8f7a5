import { expect, test } from 'vitest';
import type { Delivered } from '../../shared/delivery.ts';
import {
  deliveryRows,
  firstHourRule,
  firstHourWords,
  usableRule,
  usableWords,
} from '../../shared/sentences/delivery.ts';

const text = (words: string) => words.replaceAll('\u00a0', ' ');
const found: Delivered = {
  moments: [
    { when: 'start', at: 0, estimate: 0, drawn: 0 },
    { when: 'satisfied', at: 2546, estimate: 0.3323, drawn: 0.3319 },
    { when: 'called', at: 7200, estimate: 0.21, drawn: 0.2051 },
  ],
  firstHour: { volume: 0.3874, draws: 3, mean: 60.7, isSustained: false },
};

test('3 moments are told drawn, estimated and with their difference: −0.4 l, −4.9 l', () => {
  expect(deliveryRows(found)).toEqual([
    ['as the run starts', '0.0', '0.0', '0.0'],
    ['when the stat is satisfied', '331.9', '332.3', '−0.4'],
    ['when it next calls', '205.1', '210.0', '−4.9'],
  ]);
});

test('332 l when satisfied and 205 l at the next call; no call and no satisfaction are said', () => {
  expect(text(usableWords(found))).toBe(
    'When the stat is satisfied, after 42.4 min, the store gives 332 l of mixed water at 40 °C. When it next calls, after 2 h 00 min, 205 l are left.',
  );
  const [start, satisfied] = found.moments;
  expect(usableWords({ ...found, moments: [start, satisfied] })).toContain('does not call again');
  expect(text(usableWords({ ...found, moments: [start] }))).toContain(
    'not satisfied in this run; as it starts the store gives 0 l',
  );
});

test('the first hour gives 387 l in 3 draws; a boiler that keeps up has no end to it', () => {
  expect(text(firstHourWords(found.firstHour))).toBe(
    'In its first hour the store gives 387 l in 3 draws, at 60.7 °C in the mean.',
  );
  const endless = { volume: 1.36, draws: 1, mean: 55, isSustained: true };
  expect(text(firstHourWords(endless))).toBe(
    'The boiler keeps up: a draw of 11.4 l/min goes on for two hours without falling by 8.3 K.',
  );
  expect(text(firstHourWords({ ...endless, volume: 0, isSustained: false }))).toContain(
    'gives 0 l',
  );
  expect(firstHourWords(null)).toContain('no first hour');
});

test('both measures say by which rule: 10 l/min to 40 °C; 11.4 l/min, 14.4 °C, 8.3 K, from memory', () => {
  expect(text(usableRule)).toMatch(/10 l\/min .* falls to 40 °C.*EN 16147, from memory/);
  // 3.0 US gal/min, 58 °F and 15 °F
  expect(text(firstHourRule)).toMatch(/from memory.*14\.4 °C.*11\.4 l\/min.*8\.3 K/);
});
