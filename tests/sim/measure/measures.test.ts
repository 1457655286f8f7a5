import { describe, expect, test } from 'vitest';
import { plainVariant } from '../../make/plainVariant.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { idealVariant } from '../../make/idealVariant.ts';

describe('measures of a run', () => {
  const run = simulateToEnd(idealVariant({ layers: 12, output: 24_000 }));
  const { measures } = run;

  test('heat through the coil until satisfied is 836 kJ/K times 50 K', () => {
    expect(measures.coilHeat / (836_000 * 50)).toBeCloseTo(1, 5); // 1e-4 K of 50 K, and no loss
    expect((measures.meanCoilHeat ?? 0) * (measures.recovery ?? 0)).toBeCloseTo(
      measures.coilHeat,
      3,
    );
  });

  test('peak output is the 24 kW of the boiler, and the mean is below it', () => {
    expect(Math.abs((measures.peakCoilHeat ?? 0) - 24_000)).toBeLessThan(0.1); // found to 0.1 W
    expect(measures.meanCoilHeat ?? 0).toBeLessThan(24_000);
  });

  test('times before the call, at full output and at the flow limit add up to the recovery', () => {
    const parts = measures.waitingTime + measures.outputLimitTime + measures.flowLimitTime;
    expect(parts).toBeCloseTo(measures.recovery ?? 0, 6); // phases stand without gaps
  });

  test('mean return at 24 kW and 0.25 kg/s in a straight line is the mean flow less 22.97 K', () => {
    const straight = simulateToEnd(
      idealVariant({ output: 24_000, flowLimit: 500, duration: 1800 }),
    );
    // flow = store + 24 kW / (0.534922 × 1045 W/K); the store goes from 10 to 60 °C: mean 35 °C
    const flow = 35 + 24_000 / (0.534922 * 1045);
    expect(straight.measures.meanReturn ?? 0).toBeCloseTo(flow - 24_000 / 1045, 2); // trapezes of 15 s
  });

  test('a start above the call waits for it: 60 °C water that loses 2 W/K calls at 55 °C after 55 816 s', () => {
    const ideal = idealVariant({ loss: 2, duration: 60_000 });
    const waiting = simulateToEnd({
      ...ideal,
      start: { hotShare: 1, hotTemperature: 60, boundary: 0 },
    });
    expect(Math.abs(waiting.measures.waitingTime - 55_816.122)).toBeLessThan(1.2); // 1e-4 K at 75 W
  });

  test('a run too short to be satisfied says null, not 0', () => {
    const short = simulateToEnd(idealVariant({ duration: 900 })).measures;
    for (const key of ['recovery', 'ruleTime', 'usableAtSatisfied', 'topAtSatisfied'] as const) {
      expect(short[key]).toBeNull();
    }
    expect(short.waitingTime).toBe(0);
  });
});

test('phases of the default run follow without gaps from 0 s to 2 h', () => {
  const { phases } = simulateToEnd(plainVariant('default'));
  expect(phases[0].from).toBe(0);
  expect(phases.at(-1)?.to).toBe(7200);
  for (let i = 1; i < phases.length; i++) expect(phases[i].from).toBe(phases[i - 1].to);
});

test('the balance of the default run accounts for every joule of 24 kW over 2 h to 1e-9', () => {
  const { balance } = simulateToEnd(plainVariant('default'));
  const { gainedByStore, gainedByHouse, lostByCylinder, lostByPipes, lostByHouse, drawn } = balance;
  const gone = gainedByStore + gainedByHouse + lostByCylinder + lostByPipes + lostByHouse + drawn;
  expect(Math.abs(gone / balance.fromBoiler - 1)).toBeLessThan(1e-9);
  expect(balance.lostByPipes).toBeGreaterThan(0);
  expect(balance.lostByCylinder).toBeGreaterThan(0);
});
