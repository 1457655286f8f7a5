import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  overallCoefficient,
  type PreparedCoil,
  prepareCoil,
} from '../../../sim/closures/overallCoefficient.ts';
import { tabulatedWater } from '../../../sim/closures/water.ts';
import { coilTube } from '../../make/coilTube.ts';

const water = tabulatedWater();
const coil = prepareCoil(coilTube(), 0.25, water, water);
const temperature = fc.double({ min: 0, max: 100, noNaN: true });
/** Primary and tank whose mean is near 4 °C, where convection almost stops. */
const nearDensest = fc
  .tuple(fc.double({ min: 0, max: 8, noNaN: true }), fc.double({ min: -3, max: 3, noNaN: true }))
  .map(([tank, off]): [number, number] => [8 - tank + off, tank]);

/** Resistance from primary to tube surface, m² K/W. */
function inner(of: PreparedCoil, primary: number): number {
  return of.areaRatio / of.inside.at(primary) + of.solidResistance;
}

/** The same coefficient by halving the interval of the surface temperature until nothing moves. */
function byBisection(of: PreparedCoil, primary: number, tank: number): number {
  const R = inner(of, primary);
  const side = primary < tank ? -0.5 : 0.5;
  let low = 0;
  let high = Math.abs(primary - tank);
  const whole = high;
  for (let i = 0; i < 100; i++) {
    const surplus = (low + high) / 2;
    const h = of.outside.coefficient(tank + side * surplus, surplus);
    if (surplus * (1 + R * h) > whole) high = surplus;
    else low = surplus;
  }
  return 1 / (R + 1 / of.outside.coefficient(tank + side * low, low));
}

describe('overall coefficient', () => {
  // Outside and overall coefficient worked out from the same published formulas beforehand, 22 /
  // 20.4 mm, 0.25 kg/s, 75 °C
  test.each([
    [15, 1214, 1028],
    [40, 1187, 1009],
    [60, 1010, 878],
  ])(
    'in a tank at %f °C the outside gives %f and the whole coil %f W/(m² K)',
    (tank, outside, whole) => {
      const U = overallCoefficient(coil, 75, tank);
      // printed to 4 figures
      expect(Math.abs(1 / (1 / U - inner(coil, 75)) / outside - 1)).toBeLessThan(0.001);
      expect(Math.abs(U / whole - 1)).toBeLessThan(0.001); // printed to 3 or 4 figures
    },
  );

  test.each([
    ['clean', coilTube(), 0.25],
    ['with 3 mm of scale', coilTube({ scaleThickness: 0.003 }), 0.25],
    ['starved at 0.01 kg/s', coilTube(), 0.01],
    ['thin', coilTube({ outsideDiameter: 0.01, insideDiameter: 0.0088 }), 0.1],
  ])(
    'of a coil %s it is within 1e-6 of bisection for 2000 pairs of temperatures, half of them around the densest water',
    (_, tube, flow) => {
      const one = prepareCoil(tube, flow, water, water);
      fc.assert(
        fc.property(
          fc.oneof(fc.tuple(temperature, temperature), nearDensest),
          ([primary, tank]) => {
            const U = overallCoefficient(one, primary, tank);
            return Math.abs(U / byBisection(one, primary, tank) - 1) < 1e-6; // the stated error
          },
        ),
        { numRuns: 2000 },
      );
    },
  );

  test('it is finite and above zero for any two temperatures from −20 to 150 °C, also outside its tables', () => {
    const wide = fc.double({ min: -20, max: 150, noNaN: true });
    fc.assert(
      fc.property(wide, wide, (primary, tank) => {
        const U = overallCoefficient(coil, primary, tank);
        return U > 0 && U < 1 / inner(coil, primary);
      }),
      { numRuns: 1000 },
    );
  });

  test('at 40 °C on both sides it is the still-water limit and is reached from either side', () => {
    const still = 1 / (inner(coil, 40) + 1 / coil.outside.coefficient(40, 0));
    expect(overallCoefficient(coil, 40, 40)).toBeCloseTo(still, 12); // the limit itself
    const warmer = overallCoefficient(coil, 40 + 1e-6, 40);
    const colder = overallCoefficient(coil, 40 - 1e-6, 40);
    expect(warmer / colder - 1).toBeCloseTo(0, 6); // film moves by 1e-6 K only
  });

  test('heat through it never falls when the primary gets hotter, for 500 tanks', () => {
    const tank = fc.double({ min: 8, max: 70, noNaN: true });
    const surplus = fc.double({ min: 0.01, max: 30, noNaN: true });
    fc.assert(
      fc.property(tank, surplus, surplus, (T, a, b) => {
        const [less, more] = a < b ? [a, b] : [b, a];
        const heat = (difference: number): number =>
          overallCoefficient(coil, T + difference, T) * difference;
        // Neighbouring numbers may swap by rounding: up to 4 operations of 2.2e-16 on each side
        return heat(more) >= heat(less) * (1 - 2e-15);
      }),
      { numRuns: 500 },
    );
  });

  test('half a millimetre of scale always costs, and so does less flow; no flow gives nothing', () => {
    const scaled = prepareCoil(coilTube({ scaleThickness: 0.0005 }), 0.25, water, water);
    const slow = prepareCoil(coilTube(), 0.1, water, water);
    const stopped = prepareCoil(coilTube(), 0, water, water);
    for (const tank of [10, 30, 50, 70]) {
      const U = overallCoefficient(coil, 80, tank);
      expect(overallCoefficient(scaled, 80, tank)).toBeLessThan(U);
      expect(overallCoefficient(slow, 80, tank)).toBeLessThan(U);
      expect(overallCoefficient(stopped, 80, tank)).toBe(0);
    }
  });
});
