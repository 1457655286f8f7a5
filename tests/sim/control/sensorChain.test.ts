import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isSolvable } from '../../../shared/steinhartHart.ts';
import { steinhartHartResistance } from '../../../sim/closures/steinhartHart.ts';
import { makeSensorChain, type SensorWiring } from '../../../sim/control/sensorChain.ts';

/** A healthy chain: 10 kΩ, beta 3435 K, no lead, taken for what it is. */
const healthy: SensorWiring = {
  element: 'thermistor',
  r25: 10_000,
  beta: 3435,
  steinhartA: 1.129148e-3,
  steinhartB: 2.34125e-4,
  steinhartC: 8.76741e-8,
  platinumOhms: 1000,
  expects: 'same',
  expectedR25: 10_000,
  expectedBeta: 3435,
  leadLength: 0,
  leadSection: '0.5',
  jointResistance: 0,
  dampResistance: 0,
};
const reads = (wiring: Partial<SensorWiring>, bead: number) =>
  makeSensorChain({ ...healthy, ...wiring }).reading(bead);

describe('a chain without a fault', () => {
  test.each(['true', 'thermistor', 'steinhartHart', 'platinum'] as const)(
    'of kind %s reads −20 to 120 °C within 1e-9 K of what is there',
    (element) => {
      for (let bead = -20; bead <= 120; bead += 5) {
        expect(Math.abs(reads({ element }, bead) - bead)).toBeLessThan(1e-9); // rounding
      }
    },
  );
});

describe('a sensor of another kind than the controller takes it for', () => {
  const expects = 'thermistor';
  // worked by hand at 60 °C from B / T²: 1 % of ohms is 0.32 K at 3435 K and 0.28 K at 3977 K
  const cases: readonly (readonly [string, number, number, Partial<SensorWiring>])[] = [
    ['R25 1 % high, 3977 K', -0.28, 2, { r25: 10_100, beta: 3977, expectedBeta: 3977, expects }],
    ['R25 1 % high, 3435 K', -0.32, 2, { r25: 10_100, expects }],
    ['R25 5 % high, 3977 K', -1.4, 1, { r25: 10_500, beta: 3977, expectedBeta: 3977, expects }],
    ['R25 5 % high, 3435 K', -1.6, 1, { r25: 10_500, expects }],
    ['beta 1 % high, 3977 K', 0.39, 2, { beta: 3977 * 1.01, expectedBeta: 3977, expects }],
    ['beta 1 % high, 3435 K', 0.39, 2, { beta: 3435 * 1.01, expects }],
    ['3977 K read as 3435 K', 6.3, 1, { beta: 3977, expects }],
    ['3435 K read as 3977 K', -5.2, 1, { expectedBeta: 3977, expects }],
  ];
  test.each(cases)(
    'with %s, a bead at 60 °C is read wrong by %d K',
    (_what, kelvins, digits, wiring) => {
      expect(reads(wiring, 60) - 60).toBeCloseTo(kelvins, digits); // as it is printed
    },
  );

  test('platinum taken for a thermistor reads 91 °C at 60 °C and falls as it warms', () => {
    const wiring: Partial<SensorWiring> = { element: 'platinum', expects };
    // by hand: 1232.4 Ω, and 1/298.15 + ln 0.12324 / 3435 = 1/364.2
    expect(reads(wiring, 60)).toBeCloseTo(91.2, 1); // by hand, to 0.1 K
    expect(reads(wiring, 70)).toBeLessThan(reads(wiring, 60));
  });

  test('a thermistor taken for platinum is off the scale at 20 °C, 12 times its ohms at 0 °C', () => {
    expect(reads({ expects: 'platinum' }, 20)).toBe(Number.POSITIVE_INFINITY);
    expect(makeSensorChain({ ...healthy, expects: 'platinum' }).beadAt(5000)).toBe(null);
  });
});

describe('leads of flexible copper', () => {
  // by hand: there and back at 20 °C, over the slope of the curve at the bead
  const cases: readonly (readonly [number, SensorWiring['leadSection'], number, number, number])[] =
    [
      // length, mm², error at 20 °C; at 60 and 80 °C by beta 3435 K, then 3977 K below
      [30, '0.5', -0.005, -0.025, -0.051],
      [30, '0.75', -0.003, -0.017, -0.034],
      [30, '1.0', -0.002, -0.013, -0.026],
      [40, '0.5', -0.006, -0.034, -0.068],
      [40, '0.75', -0.004, -0.023, -0.045],
    ];
  test.each(cases)(
    'of %d m and %s mm² shift 10 kΩ, 3435 K by %d K at 20 °C, %d K at 60 °C, %d K at 80 °C',
    (leadLength, leadSection, at20, at60, at80) => {
      const error = (bead: number) => reads({ leadLength, leadSection }, bead) - bead;
      expect([20, 60, 80].map(error).map(to1mK)).toEqual([at20, at60, at80]);
    },
  );

  test.each([
    [30, '0.5', -0.027, -0.059],
    [30, '0.75', -0.018, -0.039],
    [30, '1.0', -0.013, -0.029],
    [40, '0.5', -0.035, -0.078],
    [40, '0.75', -0.024, -0.052],
  ] as const)(
    'of %d m and %s mm² shift 10 kΩ, 3977 K by %d K at 60 °C and %d K at 80 °C',
    (leadLength, leadSection, at60, at80) => {
      const error = (bead: number) => reads({ beta: 3977, leadLength, leadSection }, bead) - bead;
      expect([60, 80].map(error).map(to1mK)).toEqual([at60, at80]);
    },
  );

  test.each([
    ['0.5', 0.81],
    ['0.75', 0.54],
    ['1.0', 0.41],
  ] as const)(
    'of 40 m and %s mm² make two-wire platinum of 1000 Ω read %d K high, of 100 Ω ten times that',
    (leadSection, kelvins) => {
      const platinum = { element: 'platinum', leadLength: 40, leadSection } as const;
      expect(reads(platinum, 60) - 60).toBeCloseTo(kelvins, 2); // printed to 0.01 K
      const ten = reads({ ...platinum, platinumOhms: 100 }, 60) - 60;
      expect(ten / (reads(platinum, 60) - 60)).toBeCloseTo(10, 1); // the curve bends by 0.2 %
    },
  );
});

describe('joints', () => {
  test('a bad joint of 1000 Ω makes 60 °C read 50.9 °C, and a stat that stops at 60 °C stop at 73.8 °C', () => {
    // by hand: 3981 Ω, and 1/298.15 + ln 0.3981 / 3435 = 1/324.06
    const { reading, beadAt } = makeSensorChain({ ...healthy, jointResistance: 1000 });
    expect(reading(60)).toBeCloseTo(50.9, 1); // by hand, to 0.1 K
    // the controller waits for 2981 Ω, of which the bead has 1981
    expect(beadAt(60)).toBeCloseTo(73.8, 1); // by hand, to 0.1 K
  });

  test('a damp path of 10 kΩ makes 60 °C read 68.6 °C, and a stat that stops at 60 °C stop at 48.9 °C', () => {
    // by hand: 2981 and 10 000 Ω in parallel are 2296 Ω, and 1/298.15 + ln 0.2296 / 3435 = 1/341.80
    const { reading, beadAt } = makeSensorChain({ ...healthy, dampResistance: 10_000 });
    expect(reading(60)).toBeCloseTo(68.6, 1); // by hand, to 0.1 K
    // the controller waits for 2981 Ω, which the bead makes with 4247
    expect(beadAt(60)).toBeCloseTo(48.9, 1); // by hand, to 0.1 K
  });

  test('at 20, 40, 60 and 80 °C a thermistor reads lower the worse its joint, higher the damper', () => {
    for (const bead of [20, 40, 60, 80]) {
      const bad = [0, 10, 100, 1000, 10_000].map((ohms) => reads({ jointResistance: ohms }, bead));
      expect(bad).toEqual([...bad].sort((one, other) => other - one));
      const damp = [1e6, 1e5, 1e4, 1e3].map((ohms) => reads({ dampResistance: ohms }, bead));
      expect(damp).toEqual([...damp].sort((one, other) => one - other));
      expect(new Set([...bad, ...damp]).size).toBe(9);
    }
  });

  test('with a damp path of 1000 Ω no bead from −20 to 120 °C reads 10 °C', () => {
    const { beadAt, reading } = makeSensorChain({ ...healthy, dampResistance: 1000 });
    expect(reading(-20)).toBeGreaterThan(10);
    expect(beadAt(10)).toBe(null);
  });

  test('with a joint of 1000 Ω no bead from −20 to 120 °C reads 100 °C', () => {
    const { beadAt, reading } = makeSensorChain({ ...healthy, jointResistance: 1000 });
    expect(reading(120)).toBeLessThan(100);
    expect(beadAt(100)).toBe(null);
  });

  test.each([-300, -273.15, Number.POSITIVE_INFINITY, Number.NaN])(
    'no bead reads %d °C, of any of the 4 elements',
    (reading) => {
      for (const element of ['true', 'thermistor', 'steinhartHart', 'platinum'] as const) {
        expect(makeSensorChain({ ...healthy, element }).beadAt(reading)).toBe(null);
      }
    },
  );
});

/** Any chain whose controller takes its element for one of the same sense. */
const wirings: fc.Arbitrary<SensorWiring> = fc
  .record({
    element: fc.constantFrom('true', 'thermistor', 'steinhartHart', 'platinum'),
    r25: fc.double({ min: 1000, max: 100_000, noNaN: true }),
    beta: fc.double({ min: 2500, max: 5000, noNaN: true }),
    steinhartA: fc.double({ min: 0.5e-3, max: 1.5e-3, noNaN: true }),
    steinhartB: fc.double({ min: 1.5e-4, max: 3.5e-4, noNaN: true }),
    steinhartC: fc.double({ min: -5e-8, max: 3e-7, noNaN: true }),
    platinumOhms: fc.constantFrom(100, 1000),
    expects: fc.constantFrom('same', 'thermistor'),
    expectedR25: fc.double({ min: 1000, max: 100_000, noNaN: true }),
    expectedBeta: fc.double({ min: 2500, max: 5000, noNaN: true }),
    leadLength: fc.double({ min: 0, max: 100, noNaN: true }),
    leadSection: fc.constantFrom('0.5', '0.75', '1.0'),
    jointResistance: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 5000, noNaN: true })),
    dampResistance: fc.oneof(fc.constant(0), fc.double({ min: 500, max: 1e6, noNaN: true })),
  } as const)
  // a thermistor of more than 2 MΩ in the cold would leave none of its figures beside a damp path of 500 Ω
  .filter(
    ({ steinhartA: A, steinhartB: B, steinhartC: C }) =>
      isSolvable({ A, B, C }) && (steinhartHartResistance(-20, { A, B, C }) ?? 0) < 2e6,
  )
  .map((wiring) => (wiring.element === 'platinum' ? { ...wiring, expects: 'same' } : wiring));

test('in 400 chains the reading rises with the bead from −20 to 120 °C until it is off the scale, and leads back', () => {
  fc.assert(
    fc.property(wirings, (wiring) => {
      const { reading, beadAt } = makeSensorChain(wiring);
      let before = Number.NEGATIVE_INFINITY;
      for (let bead = -20; bead <= 120; bead += 7) {
        const now = reading(bead);
        if (now === Number.POSITIVE_INFINITY) {
          before = now; // a joint so bad that platinum is off the scale, and stays there
          continue;
        }
        expect(now).toBeGreaterThan(before);
        before = now;
        // a damp path far below the element's ohms hides all but their last figures
        expect(Math.abs((beadAt(now) ?? Number.NaN) - bead)).toBeLessThan(1e-6);
      }
    }),
    { numRuns: 400 },
  );
});

/** To a thousandth, as the figures are printed. */
function to1mK(kelvins: number): number {
  return Number(kelvins.toFixed(3));
}
