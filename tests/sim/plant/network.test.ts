import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coilPressureDrop } from '../../../sim/closures/coilPressureDrop.ts';
import { copperTubes, type TubeSize } from '../../../sim/closures/copperTube.ts';
import { equivalentLength, quadraticDrop } from '../../../sim/closures/fitting.ts';
import { COPPER_ROUGHNESS, pipePressureDrop } from '../../../sim/closures/pipeFriction.ts';
import { type Circulator, circulatorPressure } from '../../../sim/closures/pumpCurve.ts';
import { type Drop, networkFlows } from '../../../sim/plant/network.ts';

const density = 974.84; // water at 75 °C, kg/m³
const viscosity = 377.411e-6; // Pa s
const litrePerMinute = 1 / 60_000;
const reference = 15 * litrePerMinute;

const circulator: Circulator = {
  kind: 'curve',
  shutOffHead: 6,
  largestFlow: 50 * litrePerMinute,
  setHead: 3,
};
const pumpOf = (c: Circulator) => (flow: number) => circulatorPressure(c, flow, density);
const shutOff = density * 9.80665 * 6; // Pa

/** Resistance by its pressure at 15 l/min. */
const quadratic = (pressure: number): Drop => {
  return (flow) => quadraticDrop(pressure, reference, flow);
};
const pipe = (size: TubeSize, length: number): Drop => {
  const { bore } = copperTubes[size];
  return (flow) => pipePressureDrop(length, bore, COPPER_ROUGHNESS, flow, density, viscosity);
};
const none: Drop = () => 0;
const solve = (common: Drop, branches: Drop[], c = circulator) =>
  networkFlows(pumpOf(c), common, branches, c.largestFlow);
const sum = (flows: number[]) => flows.reduce((total, flow) => total + flow, 0);

describe('closed forms', () => {
  test('one branch of 12 kPa after 10 kPa at 15 l/min takes 21.8 l/min, where the parabolas meet', () => {
    const [flow] = solve(quadratic(10_000), [quadratic(12_000)]);
    // p₀ (1 − (Q / Qmax)²) = 22 000 (Q / Qref)²
    const exact = Math.sqrt(
      shutOff / (shutOff / circulator.largestFlow ** 2 + 22_000 / reference ** 2),
    );
    expect(flow / exact).toBeCloseTo(1, 12); // rounding; 1e-6 is promised
    expect(exact / litrePerMinute).toBeCloseTo(21.8, 1);
  });

  test('branches of 5 and 20 kPa divide the flow 2 to 1, as 1 / √R, and the total is that of both as one', () => {
    const flows = solve(quadratic(8000), [quadratic(5000), quadratic(20_000)]);
    expect(flows[0] / flows[1]).toBeCloseTo(2, 12); // rounding
    // Side by side: 1 / √R = 1 / √5000 + 1 / √20000, so R = 2222.2
    const [asOne] = solve(quadratic(8000), [quadratic(20_000 / 9)]);
    expect(sum(flows) / asOne).toBeCloseTo(1, 12);
  });

  test('a circulator that holds 3 m gives a lone branch the same pressure whatever else is open', () => {
    const steady: Circulator = { ...circulator, kind: 'constantHead' };
    const [alone] = solve(none, [quadratic(29_000)], steady);
    const [first] = solve(none, [quadratic(29_000), quadratic(50_000)], steady);
    // 974.84 × 9.80665 × 3 = 28 679.744 Pa over 29 000 Pa
    expect(alone / (reference * Math.sqrt(28_679.744 / 29_000))).toBeCloseTo(1, 6); // worked to 8 figures
    expect(first / alone).toBeCloseTo(1, 12);
  });

  test('20 m of 22 mm with 8 elbows, boiler 10 kPa and coil 5 kPa at 15 l/min need 2.404 m for 15 l/min, by hand', () => {
    const { bore } = copperTubes['22'];
    const length = 20 + 8 * equivalentLength('elbow', bore);
    // 20 + 8 × 0.606 = 24.848 m at 321.36 Pa/m are 7985 Pa; with 15 000 Pa that is 22 985 Pa; over
    // 974.84 × 9.80665 Pa/m: 2.4043 m
    const exact: Circulator = { ...circulator, kind: 'constantHead', setHead: 2.4043 };
    const run = pipe('22', length);
    const [flow] = solve((q) => quadratic(10_000)(q) + run(q), [quadratic(5000)], exact);
    expect(flow / litrePerMinute).toBeCloseTo(15, 3); // head worked to 5 figures, flow as its root
  });
});

describe('pressures', () => {
  test('balance to 1e-6 of the shut-off pressure in every branch of pipes, coil and valves', () => {
    const coil = { bore: 0.0204, coilDiameter: 0.35, length: 10 };
    const common: Drop = (q) => quadratic(10_000)(q) + pipe('22', 4)(q);
    const branches: Drop[] = [
      (q) => pipe('22', 16)(q) + coilPressureDrop(coil, q, density, viscosity),
      (q) => pipe('15', 30)(q) + quadratic(2000)(q),
      (q) => pipe('8', 20)(q) + quadratic(5e6)(q), // nearly shut, laminar
    ];
    const flows = solve(common, branches);
    expect(flows[2]).toBeGreaterThan(0);
    const pressure = pumpOf(circulator)(sum(flows)) - common(sum(flows));
    branches.forEach((branch, i) => {
      expect(Math.abs(branch(flows[i]) - pressure) / shutOff).toBeLessThan(1e-6);
      // And the flow itself to 1e-6: 1e-6 more of it is already too much
      expect(branch(flows[i] * (1 + 1e-6))).toBeGreaterThan(pressure);
      expect(branch(flows[i] * (1 - 1e-6))).toBeLessThan(pressure);
    });
  });

  test('a branch a million times as tight as its neighbour still divides as 1 / √R', () => {
    const flows = solve(quadratic(10_000), [quadratic(10), quadratic(1e7)]);
    expect(flows[0] / flows[1]).toBeCloseTo(1000, 6); // 1e-9 of it
  });
});

describe('shut and empty', () => {
  test('0 branches have 0 flows', () => {
    expect(solve(none, [])).toEqual([]);
  });

  test('a shut branch has 0 and its neighbour what it has alone', () => {
    const shut = quadratic(Number.POSITIVE_INFINITY);
    const alwaysShut: Drop = () => Number.POSITIVE_INFINITY;
    const [alone] = solve(quadratic(5000), [quadratic(9000)]);
    expect(solve(quadratic(5000), [shut, quadratic(9000), alwaysShut])).toEqual([0, alone, 0]);
  });

  test('all branches shut, the common pipe shut or the circulator at rest give 0 everywhere', () => {
    const shut = quadratic(Number.POSITIVE_INFINITY);
    expect(solve(none, [shut, shut])).toEqual([0, 0]);
    expect(solve(shut, [quadratic(5000), quadratic(9000)])).toEqual([0, 0]);
    expect(networkFlows(() => 0, none, [quadratic(5000)], 1e-3)).toEqual([0]);
  });

  test('a valve that opens at 20 kPa passes nothing while the circulator has 19 kPa, and something at 21', () => {
    const spring: Drop = (q) => 20_000 + quadratic(5000)(q);
    const holding = (head: number): Circulator => {
      return { ...circulator, kind: 'constantHead', setHead: head / density / 9.80665 };
    };
    expect(solve(none, [spring, quadratic(9000)], holding(19_000))[0]).toBe(0);
    expect(solve(none, [spring, quadratic(9000)], holding(21_000))[0]).toBeGreaterThan(0);
  });

  test('a branch without resistance and a circulator that still pushes at its largest flow are faults', () => {
    expect(() => solve(quadratic(5000), [none])).toThrow('branch loses 0 Pa');
    expect(() => networkFlows(() => 1000, none, [quadratic(5000)], 1e-3)).toThrow(
      'pump adds 1000 Pa at its largest flow; expected 0',
    );
  });
});

describe('any two branches, 200 of them', () => {
  const runs = { numRuns: 200 };
  /** Pressures at 15 l/min from 0.1 kPa to 10 000 kPa, evenly by their logarithm. */
  const pressure = fc.double({ min: 2, max: 7, noNaN: true }).map((x) => 10 ** x);
  const branch = fc
    .record({
      size: fc.constantFrom<TubeSize>('8', '10', '15', '22', '28'),
      length: fc.double({ min: 1, max: 60, noNaN: true }),
      valve: pressure,
    })
    .map(
      ({ size, length, valve }): Drop =>
        (q) =>
          pipe(size, length)(q) + quadratic(valve)(q),
    );
  const anyCirculator = fc.record({
    kind: fc.constantFrom('curve' as const, 'constantHead' as const),
    shutOffHead: fc.double({ min: 1, max: 8, noNaN: true }),
    largestFlow: fc.double({ min: 10, max: 80, noNaN: true }).map((x) => x * litrePerMinute),
    setHead: fc.double({ min: 0.5, max: 6, noNaN: true }),
  });
  const rounding = 1e-9; // a thousandth of the 1e-6 that is promised

  test('more resistance in one never raises its flow nor lowers that of the other', () => {
    fc.assert(
      fc.property(anyCirculator, pressure, branch, branch, pressure, (c, shared, a, b, more) => {
        const tighter: Drop = (q) => a(q) + quadratic(more)(q);
        const before = solve(quadratic(shared), [a, b], c);
        const after = solve(quadratic(shared), [tighter, b], c);
        expect(after[0]).toBeLessThanOrEqual(before[0] * (1 + rounding));
        expect(after[1]).toBeGreaterThanOrEqual(before[1] * (1 - rounding));
        expect(after[0]).toBeGreaterThan(0);
      }),
      runs,
    );
  });

  test('a second one that opens raises the total and takes from the first', () => {
    fc.assert(
      fc.property(anyCirculator, pressure, branch, branch, (c, shared, a, b) => {
        const [alone] = solve(quadratic(shared), [a], c);
        const both = solve(quadratic(shared), [a, b], c);
        expect(sum(both)).toBeGreaterThan(alone * (1 - rounding));
        expect(both[0]).toBeLessThan(alone * (1 + rounding));
        expect(both[1]).toBeGreaterThan(0);
      }),
      runs,
    );
  });

  test('a circulator with a tenth more head and flow raises both by 1.7 % or more', () => {
    fc.assert(
      fc.property(anyCirculator, pressure, branch, branch, (c, shared, a, b) => {
        const before = solve(quadratic(shared), [a, b], c);
        const stronger: Circulator = {
          kind: c.kind,
          shutOffHead: c.shutOffHead * 1.1,
          largestFlow: c.largestFlow * 1.1,
          setHead: c.setHead * 1.1,
        };
        const after = solve(quadratic(shared), [a, b], stronger);
        // If the pressure across them rises by a factor x, the flows rise by no more than x (laminar)
        // and the common loss by no more than x², so x² is 1.1 or more; as no branch loses more than
        // as flow^2.75 (where it turns turbulent), flows rise by 1.1^(1/5.5) = 1.0175 or more
        expect(after[0]).toBeGreaterThan(before[0] * 1.017);
        expect(after[1]).toBeGreaterThan(before[1] * 1.017);
      }),
      runs,
    );
  });
});
