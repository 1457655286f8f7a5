import { describe, expect, test } from 'vitest';
import type { LoadProfileName } from '../../shared/loadProfileNames.ts';
import { type LoadProfile, loadProfiles } from '../../shared/loadProfiles.ts';
import { fromSI } from '../../shared/units.ts';

/** Draws and Qref as printed, the largest draw, and litres of 60 °C water from 10 °C worked by hand. */
interface Printed {
  readonly name: LoadProfileName;
  readonly draws: number;
  readonly reference: number; // kWh
  /** kWh, l/min, °C, °C */
  readonly largest: readonly [number, number, number, number | null];
  readonly litres: number;
}

// source: ecodesignTanks, Annex III Table 1
const table: readonly Printed[] = [
  { name: '3XS', draws: 23, reference: 0.345, largest: [0.015, 2, 25, null], litres: 5.9 },
  { name: 'XXS', draws: 20, reference: 2.1, largest: [0.105, 2, 25, null], litres: 36 },
  { name: 'XS', draws: 3, reference: 2.1, largest: [1.05, 3, 35, null], litres: 36 },
  { name: 'S', draws: 11, reference: 2.1, largest: [0.525, 5, 45, null], litres: 36 },
  { name: 'M', draws: 23, reference: 5.845, largest: [1.4, 6, 40, null], litres: 100.5 },
  { name: 'L', draws: 24, reference: 11.655, largest: [3.605, 10, 10, 40], litres: 200.5 },
  { name: 'XL', draws: 30, reference: 19.07, largest: [4.42, 10, 10, 40], litres: 328 },
  { name: 'XXL', draws: 30, reference: 24.53, largest: [6.24, 16, 10, 40], litres: 422 },
  { name: '3XL', draws: 10, reference: 46.76, largest: [12.04, 48, 40, null], litres: 804 },
  { name: '4XL', draws: 10, reference: 93.52, largest: [24.08, 96, 40, null], litres: 1609 },
];

test('there are the 10 printed profiles, from 3XS to 4XL', () => {
  expect(Object.keys(loadProfiles)).toEqual(table.map(({ name }) => name));
});

describe.each(table)('$name', ({ name, draws, reference, largest, litres }) => {
  const profile: LoadProfile = loadProfiles[name];

  test(`has ${draws} draws that add up to ${reference} kWh`, () => {
    expect(profile.draws).toHaveLength(draws);
    expect(kilowattHours(profile.referenceEnergy)).toBe(reference);
    // the table is printed to 0.001 kWh, so only rounding of the additions is left
    expect(Math.abs(kilowattHours(total(profile)) - reference)).toBeLessThan(1e-9);
  });

  test(`has ${largest[0]} kWh at ${largest[1]} l/min as its largest draw`, () => {
    const most = Math.max(...profile.draws.map(({ energy }) => energy));
    const found = profile.draws.filter(({ energy }) => energy === most);
    for (const draw of found) {
      expect([
        kilowattHours(draw.energy),
        fromSI(draw.leastFlow, 'litrePerMinute'),
        draw.leastTemperature,
        draw.peakTemperature,
      ]).toEqual(largest);
    }
    expect(found.length).toBeGreaterThan(0);
  });

  test('draws one after another, none before 07:00 and none after 21:45', () => {
    const times = profile.draws.map(({ at }) => at);
    expect(times).toEqual([...new Set(times)].sort((a, b) => a - b));
    expect(times[0]).toBe(name === 'XS' ? clock(7, 30) : clock(7, 0));
    expect(times.at(-1)).toBeLessThanOrEqual(clock(21, 45));
    expect(times.every((at) => at % 60 === 0)).toBe(true);
  });

  test(`takes ${litres} l of water at 60 °C from 10 °C`, () => {
    const found = profile.referenceEnergy / (4186 * 50); // 4186 J/(kg K), 1 kg a litre
    // half a litre: the figures are rounded to whole litres in the large profiles
    expect(Math.abs(found - litres)).toBeLessThanOrEqual(0.5);
  });

  test('asks for a flow, and for a peak only above the least temperature', () => {
    for (const { energy, leastFlow, leastTemperature, peakTemperature } of profile.draws) {
      expect(energy).toBeGreaterThan(0);
      expect(leastFlow).toBeGreaterThan(0);
      expect([10, 25, 35, 40, 45]).toContain(leastTemperature);
      // a peak of 40 or 55 °C stands in the table where, and only where, Tm is 10 °C
      expect([40, 55].includes(peakTemperature ?? 0)).toBe(leastTemperature === 10);
    }
  });
});

test('the M profile has 3 draws with a peak: 1 of 40 °C at 10:30 and 2 of 55 °C', () => {
  const peaks = loadProfiles.M.draws.filter(({ peakTemperature }) => peakTemperature !== null);
  expect(peaks.map(({ at, peakTemperature }) => [at, peakTemperature])).toEqual([
    [clock(10, 30), 40],
    [clock(12, 45), 55],
    [clock(20, 30), 55],
  ]);
});

test('4XL is 3XL with twice the heat and twice the flow, in all 10 draws', () => {
  const twice = loadProfiles['3XL'].draws.map((draw) => [
    draw.at,
    kilowattHours(2 * draw.energy),
    fromSI(2 * draw.leastFlow, 'litrePerMinute'),
    draw.leastTemperature,
    draw.peakTemperature,
  ]);
  expect(
    loadProfiles['4XL'].draws.map((draw) => [
      draw.at,
      kilowattHours(draw.energy),
      fromSI(draw.leastFlow, 'litrePerMinute'),
      draw.leastTemperature,
      draw.peakTemperature,
    ]),
  ).toEqual(twice);
});

test('XXL is XL with 6.24 kWh in place of 4.42 kWh in 3 draws, and nothing else changed', () => {
  const changed = loadProfiles.XL.draws.flatMap((draw, i) => {
    const larger = loadProfiles.XXL.draws[i];
    const rest = { energy: larger.energy, leastFlow: larger.leastFlow };
    expect(larger).toEqual({ ...draw, ...rest });
    const same = larger.energy === draw.energy && larger.leastFlow === draw.leastFlow;
    return same ? [] : [[draw.energy, larger.energy].map(kilowattHours)];
  });
  expect(changed).toEqual([
    [4.42, 6.24],
    [4.42, 6.24],
    [4.42, 6.24],
  ]);
});

const total = (profile: LoadProfile): number =>
  profile.draws.reduce((sum, { energy }) => sum + energy, 0);

const kilowattHours = (joules: number): number => fromSI(joules, 'kilowattHour');

const clock = (hours: number, minutes: number): number => (hours * 60 + minutes) * 60;
