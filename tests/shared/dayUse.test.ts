import { describe, expect, test } from 'vitest';
import { loadProfiles } from '../../shared/loadProfiles.ts';
import { exampleDraws } from '../../shared/ownDraws.ts';
import { ownUseWords, profileWords, usualUseWords } from '../../shared/sentences/dayUse.ts';
import { bathsPerDay, otherUse, showersPerDay } from '../../sim/closures/householdUse.ts';

const flat = (text: string) => text.replace(/\s+/g, ' ');
const both = { bath: true, shower: true };

describe('what is said of how much a day takes', () => {
  test('3 people take 0.58 baths, 2.00 showers and 48 l in January, by hand from the formulas', () => {
    const words = usualUseWords({
      people: 3,
      baths: bathsPerDay(3, both), // 0.13 × 3 + 0.19
      showers: showersPerDay(3, both), // 0.45 × 3 + 0.65
      others: otherUse(3, 1.1), // (9.8 × 3 + 14) × 1.1 = 47.7
      reckoned: 2.74,
    });
    expect(flat(words)).toContain('In the mean 3 people take 0.58 baths and 2.00 showers a day');
    expect(flat(words)).toContain('and 48 l of hot water at sinks (');
    expect(words).toContain('2.7 people are reckoned');
  });

  test('1 person takes, 2.5 people take', () => {
    const of = (people: number) =>
      usualUseWords({ people, baths: 1, showers: 1, others: 0.02, reckoned: 1 });
    expect(of(1)).toContain('1 person takes');
    expect(of(2.5)).toContain('2.5 people take');
  });

  test('profile L asks 11.655 kWh in 24 draws, the largest 3.605 kWh at 10 l/min', () => {
    expect(flat(profileWords('L', loadProfiles.L))).toContain(
      'Profile L asks 11.655 kWh in 24 draws of water as the store gives it; the largest is 3.605 kWh at 10 l/min (',
    );
  });

  test('the own table of the example takes 182 l in 3 draws; an empty one draws nothing', () => {
    expect(flat(ownUseWords(exampleDraws))).toBe(
      'The table takes 182 l at the tap in 3 draws a day.',
    );
    expect(ownUseWords([])).toBe('The table is empty: nothing is drawn.');
  });
});
