import { describe, expect, test } from 'vitest';
import { coldWater } from '../../../shared/coldWater.ts';
import { bathingFactors, otherUseFactors } from '../../../shared/monthlyUse.ts';
import {
  bathsPerDay,
  bathUse,
  otherUse,
  showerFlows,
  showersPerDay,
  showerUse,
} from '../../../sim/closures/householdUse.ts';

const both = { bath: true, shower: true };
const bathOnly = { bath: true, shower: false };
const showerOnly = { bath: false, shower: true };

const JANUARY = 0;
const JULY = 6;

/** The home of the printed example: fed from the mains, with bath and shower. */
const people = 2.1468;
/** The number of people is printed to 0.0001, so it is known to half of that. */
const unknownPeople = 0.00005;
const litres = (volume: number): number => volume * 1000;

describe('worked numbers as printed (source: sap)', () => {
  test('2.1468 people take 35.04 l a day at sinks and basins in the mean of the year', () => {
    expect(Math.abs(litres(otherUse(people)) - 35.04)).toBeLessThanOrEqual(0.005); // half of 0.01
  });

  test('and 38.5426 l a day in January', () => {
    const found = litres(otherUse(people, otherUseFactors[JANUARY]));
    // 9.8 l and 1.10 for each of the people, and half of the last printed digit
    expect(Math.abs(found - 38.5426)).toBeLessThanOrEqual(9.8 * 1.1 * unknownPeople + 0.00005);
  });

  test('their baths take 27.3868 l a day in January, with the cold at 8 °C', () => {
    const baths = bathsPerDay(people, both);
    const found = litres(bathUse(baths, coldWater.mains[JANUARY], bathingFactors[JANUARY]));
    // 0.13 baths, 73 l, 34 / 44 hot, 1.035 for each of the people, and half of the last digit
    const doubt = 0.13 * 73 * (34 / 44) * 1.035 * unknownPeople + 0.00005;
    expect(Math.abs(found - 27.3868)).toBeLessThanOrEqual(doubt);
  });
});

// worked by hand from the counts for 2 people
test.each([
  ['bath and shower', both, 0.45, 1.55],
  ['a bath alone', bathOnly, 1.2, 0],
  ['a shower alone', showerOnly, 0, 1.99],
  ['neither', { bath: false, shower: false }, 0, 0],
])('2 people with %s take %3$d baths and %4$d showers a day', (_, fittings, baths, showers) => {
  expect(bathsPerDay(2, fittings)).toBeCloseTo(baths, 12); // rounding
  expect(showersPerDay(2, fittings)).toBeCloseTo(showers, 12);
});

test('a bath of 73 l at 42 °C takes 55.62 l at 52 °C when the cold is at 10 °C', () => {
  expect(litres(bathUse(1, 10))).toBeCloseTo((73 * 32) / 42, 10); // by hand, rounding
});

test('a shower takes 31.5, 54 or 49.5 l at 52 °C by what feeds it, with the cold at 8 °C', () => {
  const hot = (feed: keyof typeof showerFlows): number =>
    litres(showerUse(1, showerFlows[feed], 8));
  // by hand: 6 min, three quarters hot, of 7, 12 and 11 l/min; rounding
  expect(hot('vented')).toBeCloseTo(31.5, 10);
  expect(hot('pumped')).toBeCloseTo(54, 10);
  expect(hot('unvented')).toBeCloseTo(49.5, 10);
});

test('water at 42 °C from the main would fill a bath and run a shower with 0 l of hot', () => {
  expect(bathUse(1, 42)).toBe(0);
  expect(showerUse(1, showerFlows.vented, 42)).toBe(0);
});

describe('the months', () => {
  test.each([
    ['other use', otherUseFactors],
    ['bathing', bathingFactors],
  ])('the 12 factors of %s have 1 as their mean and mirror the year', (_, factors) => {
    expect(factors).toHaveLength(12);
    expect(factors.reduce((sum, factor) => sum + factor, 0)).toBeCloseTo(12, 12); // rounding
    expect([...factors].reverse()).toEqual([...factors]);
    expect(factors.indexOf(Math.max(...factors))).toBe(JANUARY);
  });

  test('a cistern is 1.6 to 3.1 K warmer than the main, and both are warmest in July', () => {
    const { mains, cistern } = coldWater;
    const warmer = mains.map((temperature, month) => cistern[month] - temperature);
    expect(Math.min(...warmer)).toBeCloseTo(1.6, 12); // May
    expect(Math.max(...warmer)).toBeCloseTo(3.1, 12); // January and February
    for (const supply of [mains, cistern]) {
      expect(supply).toHaveLength(12);
      expect(supply.indexOf(Math.max(...supply))).toBe(JULY);
      expect(supply.indexOf(Math.min(...supply))).toBe(JANUARY);
    }
  });

  test('the same bath takes 8.9 l less hot water in July than in January', () => {
    const [january, july] = [JANUARY, JULY].map((month) =>
      litres(bathUse(1, coldWater.mains[month], bathingFactors[month])),
    );
    // by hand: 73 × 34 / 44 × 1.035 = 58.384; 73 × 23.6 / 33.6 × 0.965 = 49.480
    expect(january - july).toBeCloseTo(58.384 - 49.48, 2); // of figures rounded to 0.001
  });
});
