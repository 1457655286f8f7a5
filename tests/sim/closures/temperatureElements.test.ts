import { describe, expect, test } from 'vitest';
import { LEAD_SECTIONS, leadResistance } from '../../../sim/closures/leadResistance.ts';
import {
  classB,
  PLATINUM_TURN,
  platinumResistance,
  platinumTemperature,
} from '../../../sim/closures/platinum.ts';
import { thermistorResistance, thermistorTemperature } from '../../../sim/closures/thermistor.ts';

const rounding = 1e-9; // K or of the ohms; what is left is the last bits of doubles

describe('a thermistor of 10 kΩ at 25 °C', () => {
  // source: the two-point law, worked out to the ohm for beta 3435 K and 3977 K, with the slope in Ω/K
  const table: readonly (readonly [number, number, number, number, number])[] = [
    [0, 28704, 1322, 33900, 1807],
    [10, 18410, 789, 20272, 1006],
    [20, 12171, 487, 12555, 581],
    [25, 10000, 386, 10000, 447],
    [30, 8269, 309, 8025, 347],
    [40, 5759, 202, 5279, 214],
    [50, 4101, 135, 3563, 136],
    [55, 3488, 111, 2954, 109],
    [60, 2981, 92.3, 2463, 88.2],
    [65, 2559, 76.9, 2064, 71.8],
    [70, 2207, 64.4, 1739, 58.7],
    [80, 1662, 45.8, 1253, 39.9],
    [90, 1272, 33.1, 919, 27.7],
    [100, 987, 24.3, 685, 19.6],
  ];
  test.each(table)(
    'at %d °C has %d Ω and loses %d Ω/K by beta 3435 K, %d Ω and %d Ω/K by beta 3977 K',
    (temperature, mildOhms, mildSlope, steepOhms, steepSlope) => {
      const cases = [
        [3435, mildOhms, mildSlope],
        [3977, steepOhms, steepSlope],
      ];
      for (const [beta, ohms, slope] of cases) {
        const at = (T: number) => thermistorResistance(T, 10_000, beta);
        expect(Math.round(at(temperature))).toBe(ohms);
        // printed to the ohm per kelvin above 100 Ω/K, to a tenth below
        const printed = slope < 100 ? 0.05 : 0.5;
        const found = (at(temperature - 0.001) - at(temperature + 0.001)) / 0.002;
        expect(Math.abs(found - slope)).toBeLessThanOrEqual(printed);
      }
    },
  );

  test('leads from °C to Ω and back within 1e-9 K, −20 to 120 °C in steps of 1 K', () => {
    for (let T = -20; T <= 120; T++) {
      const ohms = thermistorResistance(T, 10_000, 3435);
      expect(Math.abs(thermistorTemperature(ohms, 10_000, 3435) - T)).toBeLessThan(rounding);
    }
  });

  test('is beyond all temperatures at 0.05 Ω and hot but finite at 1 Ω, by beta 3435 K', () => {
    // 1/298.15 + ln(R / 10 000) / 3435 passes zero at 10 000 exp(−11.52) = 0.099 Ω
    expect(thermistorTemperature(0.05, 10_000, 3435)).toBe(Number.POSITIVE_INFINITY);
    expect(thermistorTemperature(1, 10_000, 3435)).toBeCloseTo(1213, 0); // by hand, to the kelvin
  });

  test('obeys the definition of beta: ln(R25 / R85) over 1/298.15 − 1/358.15 is 3435 K', () => {
    const ratio = 10_000 / thermistorResistance(85, 10_000, 3435);
    expect(Math.log(ratio) / (1 / 298.15 - 1 / 358.15)).toBeCloseTo(3435, 8); // rounding
  });
});

describe('a platinum element', () => {
  // source: iec60751, tables of 100 Ω elements printed to 0.01 Ω; from memory
  test.each([
    [0, 100.0],
    [10, 103.9],
    [20, 107.79],
    [50, 119.4],
    [60, 123.24],
    [80, 130.9],
    [100, 138.51],
    [120, 146.07],
  ])('of 100 Ω has at %d °C %d Ω, one of 1000 Ω ten times that', (temperature, ohms) => {
    expect(Math.abs(platinumResistance(temperature, 100) - ohms)).toBeLessThanOrEqual(0.005);
    expect(platinumResistance(temperature, 1000)).toBeCloseTo(
      10 * platinumResistance(temperature, 100),
      9, // rounding
    );
  });

  test('at −20 °C has 92.16 Ω by the full relation of the standard, within 0.001 K', () => {
    // below 0 °C the standard adds C (t − 100) t³ with C = −4.183e-12; from memory
    const full = 100 * (1 + 3.9083e-3 * -20 - 5.775e-7 * 400 - 4.183e-12 * -120 * -8000);
    expect(full).toBeCloseTo(92.16, 2); // printed to 0.01 Ω
    expect(Math.abs(platinumTemperature(full, 100) + 20)).toBeLessThan(0.0011); // stated: 0.001 K
  });

  test('leads from °C to Ω and back within 1e-9 K, −20 to 120 °C in steps of 1 K, 0 °C to 0', () => {
    for (let T = -20; T <= 120; T++) {
      const back = platinumTemperature(platinumResistance(T, 1000), 1000);
      expect(Math.abs(back - T)).toBeLessThan(rounding);
    }
    expect(platinumTemperature(1000, 1000)).toBe(0);
  });

  test('stops rising at 3384 °C and 7.61 times its ohms at 0 °C, and has no temperature above', () => {
    expect(PLATINUM_TURN).toBeCloseTo(3384, 0); // 3.9083e-3 / (2 × 5.775e-7), to the kelvin
    expect(platinumTemperature(7610, 1000)).toBeLessThan(PLATINUM_TURN);
    expect(platinumTemperature(7613, 1000)).toBe(Number.POSITIVE_INFINITY);
  });

  test('of class B is within 0.6 K at 60 °C, and within 0.4 K at 20 °C either side of 0', () => {
    expect(classB(60)).toBeCloseTo(0.6, 12); // rounding
    expect([classB(20), classB(-20)]).toEqual([0.4, 0.4]);
  });
});

describe('a two-core lead of flexible copper', () => {
  test.each([
    [30, '0.5', 2.34],
    [30, '0.75', 1.56],
    [30, '1.0', 1.17],
    [40, '0.5', 3.12],
    [40, '0.75', 2.08],
    [40, '1.0', 1.56],
    [0, '0.5', 0],
  ] as const)('of %d m and %s mm² has %d Ω there and back', (length, section, ohms) => {
    expect(leadResistance(length, LEAD_SECTIONS[section])).toBeCloseTo(ohms, 12); // rounding
  });
});
