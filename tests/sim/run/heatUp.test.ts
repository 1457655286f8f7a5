import { describe, expect, test } from 'vitest';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { idealVariant } from '../../make/idealVariant.ts';
import * as exact from '../../reference/exact.ts';

const C = 836_000; // J/K, 200 kg at 4180 J/(kg K)
const MC = 0.25 * 4180; // W/K

/** The same store as one node and cut into layers: under a coil that stirs it all they must agree. */
const cuts = [1, 12, 48];

// The run is integrated to 1e-4 K of some 50 K; 1e-5 is five times what that may leave in a time
const CLOSE = 1e-5;

function recovery(ideal: Parameters<typeof idealVariant>[0]): number {
  return simulateToEnd(idealVariant(ideal)).measures.recovery ?? Number.NaN;
}

describe('a stirred store agrees with its closed form', () => {
  test.each(cuts)(
    'cut into %i: 836 kJ/K beside an 80 °C coil of 800 W/K takes 1309.137 s',
    (layers) => {
      // 10 m³/s through the coil cool by 1 part in 100 000 of the difference: as good as one temperature
      const found = recovery({ layers, mc: 4.18e7 });
      expect(Math.abs(found / exact.timeBesideCoil(C, 800, 80, 10, 60) - 1)).toBeLessThan(
        2 * CLOSE,
      );
      expect(Math.abs(found / 1309.137 - 1)).toBeLessThan(2 * CLOSE);
    },
  );

  test.each(cuts)('cut into %i: 0.25 kg/s at 80 °C takes 1873.563 s', (layers) => {
    const found = recovery({ layers });
    expect(Math.abs(found / exact.timeBehindStream(C, 800, MC, 80, 10, 60) - 1)).toBeLessThan(
      CLOSE,
    );
  });

  test.each(cuts)(
    'cut into %i: 24 kW, then at most 80 °C, takes 942.788 s + 1142.505 s',
    (layers) => {
      const run = simulateToEnd(idealVariant({ layers, output: 24_000 }));
      const two = exact.cappedHeatUp({ C, UA: 800, mc: MC }, { power: 24_000, flow: 80 }, 10, 60);
      const change = run.marks.find(({ kind }) => kind === 'limitChanged');
      const at = run.trace.time.indexOf(change?.at ?? Number.NaN);
      // the change-over is found from the boiler's flow temperature, itself good to 1e-4 W of 24 kW
      expect(Math.abs((change?.at ?? 0) / two.limited - 1)).toBeLessThan(CLOSE);
      expect(Math.abs(run.trace.of.top[at] - 37.065693)).toBeLessThan(1e-3);
      expect(Math.abs((run.measures.recovery ?? 0) / 2085.293 - 1)).toBeLessThan(CLOSE);
      expect(run.measures.outputLimitTime).toBeCloseTo(two.limited, 1); // to a hundredth of 10 s
      expect(run.measures.flowLimitTime).toBeCloseTo(two.fading, 1);
    },
  );

  test('3 kW with 2 W/K of loss brings 10 °C to 48.514654 °C in 3 h', () => {
    const run = simulateToEnd(
      idealVariant({ output: 3000, flowLimit: 500, loss: 2, setPoint: 200, duration: 10_800 }),
    );
    const last = run.trace.of.top.at(-1) ?? Number.NaN;
    expect(Math.abs(last - 48.514654)).toBeLessThan(2e-4); // twice the tolerance of the run
    // declared loss is read back from what was lost: 10 to 48.5 °C beside 20 °C
    expect(run.balance.lostByCylinder).toBeCloseTo(run.balance.fromBoiler - C * (last - 10), -1);
  });

  test('3 kW without loss warms it by 3 kW / 836 kJ/K in a straight line', () => {
    const run = simulateToEnd(
      idealVariant({ layers: 12, output: 3000, flowLimit: 500, setPoint: 200, duration: 7200 }),
    );
    const { time, of } = run.trace;
    const worst = Math.max(
      ...Array.from(time, (t, i) => Math.abs(of.top[i] - (10 + (3000 / C) * t))),
    );
    expect(worst).toBeLessThan(1e-6); // a straight line has no error of method, only the boiler's 1e-4 W
  });

  test('60 °C water losing 2 W/K to 20 °C is at 52.530590 °C after 24 h', () => {
    const still = idealVariant({ loss: 2, setPoint: 0, duration: 86_400 });
    const run = simulateToEnd({
      ...still,
      start: { hotShare: 1, hotTemperature: 60, boundary: 0 },
    });
    const last = run.trace.of.top.at(-1) ?? Number.NaN;
    expect(Math.abs(last - 52.53059)).toBeLessThan(2e-4); // twice the tolerance of the run
    expect(exact.lossFromCooling(C, 86_400, 60, last, 20)).toBeCloseTo(2, 4); // 2e-4 K of 7.5 K
  });
});

describe('heat-up cases in litres and minutes, 4186 J/(kg K) and 1 kg a litre', () => {
  const mc = (15 / 60) * 4186;
  const limitless = 1e9;

  test.each([
    // litres, W/K, flow °C, from, to, W, minutes
    [150, 600, 75, 10, 60, limitless, 33.6],
    [210, 900, 80, 15, 60, limitless, 28.61],
    [210, 900, 55, 15, 50, limitless, 50.47],
    [210, 900, 80, 10, 60, 20_000, 39.26],
  ])(
    '%i l behind %i W/K at %i °C, %i to %i °C with at most %i W, takes %f min',
    (litres, UA, flowLimit, cold, setPoint, output, minutes) => {
      const ideal = { C: litres * 4186, UA, mc, flowLimit, cold, setPoint, output };
      for (const layers of cuts) {
        const found = recovery({ ...ideal, layers }) / 60;
        expect(Math.abs(found - minutes)).toBeLessThan(0.005 + 1e-3); // printed to 0.01 min
      }
    },
  );

  test('a 20 kW boiler is at its limit to 46.87 °C for 27.01 min; the rule says 36.6 min, the run 39.26', () => {
    const run = simulateToEnd(idealVariant({ C: 210 * 4186, UA: 900, mc, output: 20_000 }));
    expect(run.measures.outputLimitTime / 60).toBeCloseTo(27.01, 2); // printed to 0.01 min
    expect(run.measures.flowLimitTime / 60).toBeCloseTo(12.25, 2);
    expect((run.measures.ruleTime ?? 0) / 60).toBeCloseTo(36.6, 1); // printed to 0.1 min
    // the mean power over the whole heat-up is what the rule would have needed
    expect(run.measures.meanCoilHeat ?? 0).toBeCloseTo((210 * 4186 * 50) / (39.26 * 60), -1);
  });
});
