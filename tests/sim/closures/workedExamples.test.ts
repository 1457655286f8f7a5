import { describe, expect, test } from 'vitest';
import { cylinderVolume } from '../../../sim/closures/cylinderVolume.ts';
import { mixColumn } from '../../../sim/closures/mixing.ts';
import { mixedShare } from '../../../sim/closures/mixedLitres.ts';
import { heatUpTime, storedHeat, tradeHeatUpTime } from '../../../sim/closures/storedHeat.ts';
import {
  heatExamples,
  heatUpMinutes,
  mixtures,
  stirred,
  volumeExample,
} from '../../reference/workedExamples.ts';

const KWH = 3.6e6; // J

describe('heat and time as others print them', () => {
  test.each(heatExamples)('$litres l from $from to $to °C take $kilowattHours kWh', (example) => {
    const { litres, from, to, specificHeat, kilowattHours, rounding, timed } = example;
    // J/(m³ K), 1 kg a litre as in every one of these examples
    const capacity = specificHeat * 1000;
    const heat = storedHeat(litres / 1000, to - from, capacity) / KWH;
    expect(Math.abs(heat - kilowattHours)).toBeLessThanOrEqual(rounding);
    if (!timed) return;
    const hours = heatUpTime(litres / 1000, to - from, timed.kilowatts * 1000, capacity) / 3600;
    expect(Math.abs(hours - timed.hours)).toBeLessThanOrEqual(timed.rounding);
  });

  const cells = heatUpMinutes.rows.flatMap(({ litres, minutes }) =>
    minutes.map((printed, i) => [litres, heatUpMinutes.kilowatts[i], printed] as const),
  );

  test('the printed table has 28 cells', () => {
    expect(cells.length).toBe(28);
  });

  test.each(cells)('%i l from 10 to 50 °C at %i kW take %i min', (litres, kW, printed) => {
    // Its author used 4.2 kJ/(kg K) and either rounded to a minute or multiplied the rounded 50 l
    // row: one of the two, exactly
    const minutes = (volume: number): number =>
      heatUpTime(volume / 1000, 40, kW * 1000, 4.2e6) / 60;
    const multiplied = (Math.round(minutes(50)) * litres) / 50;
    expect([Math.round(minutes(litres)), multiplied]).toContain(printed);
  });

  test('the trade rule is 0.23 % longer than the energy it stands for, at any size', () => {
    for (const [volume, rise, power] of [
      [0.06, 50, 3000],
      [0.21, 45, 24_000],
    ]) {
      const ratio = tradeHeatUpTime(volume, rise, power) / heatUpTime(volume, rise, power);
      expect(ratio).toBeCloseTo(60 / 4.186 / 14.3, 12); // the two constants, rounding only
    }
  });
});

describe('mixtures', () => {
  test.each(mixtures)(
    '$total kg at $mixed °C from $hot and $cold °C take $hotPart kg of hot',
    (example) => {
      const { total, mixed, hot, cold, hotPart, rounding } = example;
      expect(Math.abs(total / mixedShare(hot, cold, mixed) - hotPart)).toBeLessThanOrEqual(
        rounding,
      );
    },
  );

  test('a 1000 l store with 250 l at 80 °C and 750 l at 20 °C is all at 35 °C once stirred', () => {
    // hot below: it mixes by itself
    const T = Float64Array.of(stirred.hot.temperature, stirred.cold.temperature);
    mixColumn(T, [stirred.hot.litres, stirred.cold.litres]);
    expect([...T]).toEqual([stirred.mixed, stirred.mixed]);
  });

  test.each([
    [45, 1.167],
    [50, 1.333],
    [55, 1.5],
    [60, 1.667],
    [65, 1.833],
    [70, 2],
  ])('one litre at %i °C makes %f litres at 40 °C with cold at 10 °C', (hot, share) => {
    expect(mixedShare(hot, 10)).toBeCloseTo(share, 3); // printed to 0.001
  });

  test('water at 39.9 °C counts for nothing and at 40 °C for itself', () => {
    expect(mixedShare(39.9, 10)).toBe(0);
    expect(mixedShare(40, 10)).toBe(1);
  });
});

test('500 mm across and 1000 mm high hold 196.375 l with 3.142 for pi', () => {
  const { millimetres, height, litres, piThousandths } = volumeExample;
  const volume = cylinderVolume(millimetres / 1000, height / 1000) * 1000;
  // exact once the printed pi is put back
  expect((volume * piThousandths) / 1000 / Math.PI).toBeCloseTo(litres, 9);
});
