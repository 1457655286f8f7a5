import { describe, expect, test } from 'vitest';
import * as exact from './exact.ts';

// Every printed figure below was worked out from the stated formula and checked by a second
// calculation; none is measured.
const C = 200 * 4180; // J/K
const MC = 0.25 * 4180; // W/K

describe('closed forms give the figures printed for them', () => {
  test('836 kJ/K beside an 80 °C coil of 800 W/K goes from 10 to 60 °C in 1309.137 s', () => {
    expect(exact.timeBesideCoil(C, 800, 80, 10, 60)).toBeCloseTo(1309.137, 3); // printed to 1 ms
  });

  test('3 kW with 2 W/K of loss takes it from 10 to 48.514654 °C in 3 h', () => {
    const tank = { C, UA: 2, around: 20, start: 10 };
    expect(exact.poweredTank(tank, 3000, 10_800)).toBeCloseTo(48.514654, 6); // printed to 1e-6 °C
  });

  test('0.25 kg/s through 800 W/K gives 0.5349220 of its heat and takes 1873.563 s', () => {
    expect(exact.streamShare(800, MC)).toBeCloseTo(0.534922, 7); // printed to 1e-7
    expect(C / (exact.streamShare(800, MC) * MC)).toBeCloseTo(1495.545, 3); // printed to 1 ms
    expect(exact.timeBehindStream(C, 800, MC, 80, 10, 60)).toBeCloseTo(1873.563, 3);
  });

  test('a 24 kW boiler at most at 80 °C changes over at 37.065693 °C and takes 942.788 + 1142.505 s', () => {
    const two = exact.cappedHeatUp({ C, UA: 800, mc: MC }, { power: 24_000, flow: 80 }, 10, 60);
    expect(two.changeOver).toBeCloseTo(37.065693, 6); // printed to 1e-6 °C
    expect(two.limited).toBeCloseTo(942.788, 3); // printed to 1 ms
    expect(two.fading).toBeCloseTo(1142.505, 3);
  });

  test.each([
    [1, 0.08423],
    [6, 0.20633],
    [24, 0.41265],
  ])('a still front in water is after %i h %f m thick from 10 to 90 %', (hours, thickness) => {
    const t = hours * 3600;
    expect(exact.frontThickness(0.15e-6, t)).toBeCloseTo(thickness, 5); // printed to 0.01 mm
    expect(exact.stepInColumn(0, 1, exact.frontThickness(0.15e-6, t) / 2, 0.15e-6, t)).toBeCloseTo(
      0.9,
      12,
    );
  });

  test.each([
    [10, [58.408597, 45.831213, 32.896486, 22.119608]],
    [20, [59.827283, 50.612426, 33.512863, 19.013026]],
    [50, [59.999652, 56.483247, 34.059584, 14.220334]],
    [100, [60.0, 59.144584, 34.33506, 11.393187]],
  ])(
    '%i tanks in a row answer a step as printed at 0.5, 0.8, 1.0 and 1.2 contents',
    (N, printed) => {
      const answers = [0.5, 0.8, 1, 1.2].map((theta) => exact.tanksInSeries(N, theta, 60, 10));
      answers.forEach((T, i) => {
        expect(T).toBeCloseTo(printed[i], 6);
      }); // printed to 1e-6 °C
    },
  );

  test.each([
    [6, [10.000034, 10.324316, 35.0, 59.675684, 60.0]],
    [24, [10.648631, 15.358365, 35.000017, 54.646484, 59.999966]],
    [240, [31.598645, 33.315262, 37.860694, 43.728047, 54.278612]],
  ])(
    'a closed 1.2 m column has after %i h the printed temperatures at five heights',
    (hours, printed) => {
      const column = { height: 1.2, b: 0.4, cold: 10, hot: 60, alpha: 0.15e-6 };
      const found = [0, 0.2, 0.4, 0.6, 1.2].map((z) => exact.closedColumn(column, z, hours * 3600));
      found.forEach((T, i) => {
        expect(T).toBeCloseTo(printed[i], 6);
      }); // printed to 1e-6 °C
    },
  );

  test('60 °C water losing 2 W/K to 20 °C is at 52.530590 °C after 24 h, and the 2 W/K can be read back', () => {
    const end = exact.coolingTank(C, 2, 60, 20, 24 * 3600);
    expect(end).toBeCloseTo(52.53059, 6); // printed to 1e-6 °C
    expect(C / 2 / 3600).toBeCloseTo(116.111, 3); // time constant, printed to 0.001 h
    // an inversion: rounding only
    expect(exact.lossFromCooling(C, 24 * 3600, 60, end, 20)).toBeCloseTo(2, 12);
  });

  test('3 kW between 55 and 60 °C is on for 1429.061 s and off for 55 816.122 s', () => {
    const { on, off } = exact.cycleTimes({ C, UA: 2, around: 20 }, 3000, 55, 60);
    expect(on).toBeCloseTo(1429.061, 3); // printed to 1 ms
    expect(off).toBeCloseTo(55_816.122, 3);
    expect(on / (on + off)).toBeCloseTo(0.0249639, 7); // printed to 1e-7
  });

  test('entering five layers at the top instead of the bottom gives 27 629.82 W instead of 23 733.03 W', () => {
    const layers = [15, 20, 30, 45, 60];
    const bottom = exact.streamThroughLayers(layers, 80, 800, MC);
    const top = exact.streamThroughLayers([...layers].reverse(), 80, 800, MC);
    expect(bottom.outlet).toBeCloseTo(57.28897, 6); // printed to 1e-6 °C
    expect(bottom.heat).toBeCloseTo(23_733.03, 2); // printed to 0.01 W
    expect(top.outlet).toBeCloseTo(53.55998, 6);
    expect(top.heat).toBeCloseTo(27_629.82, 2);
  });

  test('a lossy column held at 60 °C on top is at 20.722641, 21.810134 and 28.345717 °C at 0, 0.4 and 0.8 m', () => {
    const column = { k: 0.65, area: 0.16, loss: 1.6, height: 1.2, top: 60, around: 20 };
    expect(exact.steadyColumn(column, 0)).toBeCloseTo(20.722641, 6); // printed to 1e-6 °C
    expect(exact.steadyColumn(column, 0.4)).toBeCloseTo(21.810134, 6);
    expect(exact.steadyColumn(column, 0.8)).toBeCloseTo(28.345717, 6);
  });

  test.each([
    [0.05, 0.741546347],
    [0.1, 0.503560298],
    [0.2, 0.173565056],
  ])('a slow front has %f m along the share %f after 10 000 s', (x, share) => {
    expect(exact.movingFront(x, 1e4, 1e-6, 1e-6)).toBeCloseTo(share, 9); // printed to 1e-9
  });

  test.each([
    [0.3, 0.995631],
    [0.35, 0.829077],
    [0.37, 0.61109],
    [0.4, 0.235722],
    [0.45, 0.008422],
  ])('a draw of 6 l/min has %f m up the share %f after 600 s', (x, share) => {
    const found = exact.movingFront(x, 600, 6.287603e-4, 7.5e-7);
    // Printed to 1e-6; 0.45 m (0.00842251) is printed cut off, not rounded, hence a whole last
    // digit
    expect(Math.abs(found - share)).toBeLessThan(1e-6);
  });

  test('20 kW under 40 % of hot water merges after 1254.0 s and reaches 65 °C after 1463.0 s', () => {
    const { merge, reached } = exact.twoZoneReheat(C, 0.6, 10, 60, 20_000, 65);
    expect(merge).toBeCloseTo(1254, 9); // exact in decimals
    expect(reached).toBeCloseTo(1463, 9);
  });
});

describe('heat-up cases in litres and minutes, 4186 J/(kg K) and 1 kg a litre', () => {
  const mc = (15 / 60) * 4186;

  test.each([
    [150, 600, 75, 10, 60, 33.6, 15.57],
    [210, 900, 80, 15, 60, 28.61, 23.05],
    [210, 900, 55, 15, 50, 50.47, 10.16],
  ])(
    '%i l behind %i W/K at %i °C goes from %i to %i °C in %f min at %f kW on average',
    (...row) => {
      const [litres, UA, flow, from, to, minutes, kilowatts] = row;
      const t = exact.timeBehindStream(litres * 4186, UA, mc, flow, from, to);
      expect(t / 60).toBeCloseTo(minutes, 2); // printed to 0.01 min
      // printed to 0.01 kW
      expect((litres * 4186 * (to - from)) / t / 1000).toBeCloseTo(kilowatts, 2);
    },
  );

  test('a 20 kW boiler takes 27.01 min to 46.87 °C and 12.25 min more: 39.26 min, not the 36.6 of the rule', () => {
    const C210 = 210 * 4186;
    const two = exact.cappedHeatUp({ C: C210, UA: 900, mc }, { power: 20_000, flow: 80 }, 10, 60);
    expect(two.changeOver).toBeCloseTo(46.87, 2); // printed to 0.01 °C
    expect(two.limited / 60).toBeCloseTo(27.01, 2); // printed to 0.01 min
    expect(two.fading / 60).toBeCloseTo(12.25, 2);
    expect((C210 * 50) / 20_000 / 60).toBeCloseTo(36.6, 1); // printed to 0.1 min
  });
});
