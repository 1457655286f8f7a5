import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import type { Arrangement, Variant } from '../../../shared/variant.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { idealVariant } from '../../make/idealVariant.ts';

const mc = 0.25 * 4180; // W/K
const UA = 900; // W/K
const C = 836_000; // J/K
const radiator = 300; // W/K, what the radiators give for each kelvin of their mean above the room
const room = 20; // °C

/**
 * A mixed store and radiators at constant caps: constant water, a coil of known conductance, radiators with next to no water
 * and an output in proportion to their excess, a house so large that its air stays at 20 °C, an ideal boiler of 20 kW that
 * never reaches its flow limit.
 */
function house(arrangement: Arrangement): Variant {
  const ideal = idealVariant({ C, UA, mc, output: 20_000, flowLimit: 200, setPoint: 60 });
  return {
    ...ideal,
    boiler: { ...ideal.boiler, heatingFlow: 200 },
    primary: { ...ideal.primary, coilShare: 0.5 },
    heating: {
      ...ideal.heating,
      arrangement,
      radiatorOutput: 50 * radiator,
      radiatorExponent: 1,
      waterContent: 1e-5,
      roomSetPoint: 30, // so that it calls all the time
      roomDifferential: 20,
    },
    house: { ...ideal.house, floorArea: 1e5, heatLoss: 1, outside: room },
  };
}

describe('a boiler of 20 kW and radiators of 300 W/K, at constant caps', () => {
  test('hot water first: 200 kg from 10 to 60 °C at 20 kW take C × 50 / P = 2090 s', () => {
    const { measures, balance } = simulateToEnd(house('priority'));
    expect(measures.recovery).toBeCloseTo((C * 50) / 20_000, 0); // a pool of one layer, no loss: rounding
    expect(Math.abs(balance.relative)).toBeLessThan(1e-9);
  });

  test('both at once: the closed form of the two in parallel, to 0.1 %', () => {
    const { measures, balance } = simulateToEnd(house('simultaneous'));
    // coil: K (flow − T) with half the flow; radiators: R (flow − room), with the mean of their flow and return
    const half = mc / 2;
    const K = half * (1 - Math.exp(-UA / half));
    const R = 1 / (1 / radiator + 1 / (2 * half));
    // P = K (flow − T) + R (flow − room), so C dT/dt = K (P + R (room − T)) / (K + R): an exponential
    const rate = (K * R) / (K + R) / C;
    const end = room + 20_000 / R;
    const time = Math.log((end - 10) / (end - 60)) / rate;
    expect((measures.recovery ?? 0) / time).toBeCloseTo(1, 3);
    expect(Math.abs(balance.relative)).toBeLessThan(1e-9);
  });
});

test('20 kW and 12 kW of heating on a cold day: both at once takes 1.3 to 1.7 times as long, and the rooms stay 1.5 K warmer', () => {
  const base = defaultVariant('cold day');
  const run = (arrangement: Arrangement) =>
    simulateToEnd({
      ...base,
      boiler: { ...base.boiler, output: 20_000 },
      heating: { ...base.heating, arrangement, radiatorOutput: 12_000 },
      house: { ...base.house, heatLoss: 400, outside: -3 },
      run: { ...base.run, duration: 3 * 3600 },
    });
  const first = run('priority');
  const both = run('simultaneous');
  const ratio = (both.measures.recovery ?? Infinity) / (first.measures.recovery ?? Infinity);
  expect(ratio).toBeGreaterThan(1.3);
  expect(ratio).toBeLessThan(1.7);
  expect((both.measures.lowestRoom ?? 0) - (first.measures.lowestRoom ?? 0)).toBeGreaterThan(1.5);
  for (const { balance } of [first, both]) expect(Math.abs(balance.relative)).toBeLessThan(1e-9);
});

test('half the flow through the coil and half through equal radiators is what two equal branches of the network give', () => {
  const base = defaultVariant('equal');
  // a coil branch of nothing but 20 kPa at 15 l/min, as much as the heating circuit with its valve
  const run = simulateToEnd({
    ...base,
    coil: { ...base.coil, given: 'conductance', conductance: 900 },
    primary: { ...base.primary, length: 0, bends: 0, valveDrop: 5000, coilBranchDrop: 15_000 },
    heating: { ...base.heating, arrangement: 'simultaneous', pressureDrop: 15_000 },
    run: { ...base.run, duration: 900 },
  });
  const { coilFlow, radiatorFlow } = run.trace.of;
  const both = coilFlow.findIndex((flow, i) => flow > 0 && radiatorFlow[i] > 0);
  expect(coilFlow[both] / radiatorFlow[both]).toBeCloseTo(1, 6);
});
