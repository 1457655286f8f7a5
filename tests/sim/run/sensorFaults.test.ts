import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import type { Mark, Result } from '../../../shared/result.ts';
import type { Sensor, Variant } from '../../../shared/variant.ts';
import { mountingOf } from '../../../shared/mounting.ts';
import { makePlant } from '../../../sim/plant/plant.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { System } from '../../../sim/solve/system.ts';
import { idealVariant } from '../../make/idealVariant.ts';
import { marchToEnd } from '../../make/marchToEnd.ts';

const base = defaultVariant('faults'); // fault after 10 min, valve 20 s, overrun 2 min

/** A reheat of 2 h without radiators and with its sensor chain. */
function run(sensor: Partial<Sensor>, boiler: Partial<Variant['boiler']> = {}): Result {
  return simulateToEnd({
    ...base,
    boiler: { ...base.boiler, ...boiler },
    heating: { ...base.heating, arrangement: 'hotWaterOnly' },
    sensor: { ...base.sensor, ...sensor },
  });
}
const times = ({ marks }: Result, kind: Mark['kind']) =>
  marks.filter((mark) => mark.kind === kind).map(({ at }) => at);

/** When water last moved through the coil, s. */
function lastFlow({ trace }: Result): number {
  return trace.time[trace.of.coilFlow.findLastIndex((flow) => flow > 0)];
}

describe.each(['open', 'short'] as const)('%s circuit of a thermistor at 10 min', (fault) => {
  const result = run({ element: 'thermistor', fault });

  test('shows its fault at 600 s, once, and the burner goes off then', () => {
    expect(times(result, 'faultShown')).toEqual([600]);
    expect(times(result, 'burnerOff')).toContain(600);
    const after = result.phases.filter(({ from }) => from >= 600);
    expect(after.map(({ limit }) => limit)).toEqual(['overrun', 'off']);
  });

  test('stops the coil at 720 s, after the overrun of 120 s, for good', () => {
    expect(times(result, 'overrunEnded')).toEqual([720]);
    expect(lastFlow(result)).toBe(720);
    const { trace } = result;
    for (let i = 0; i < trace.samples; i++) {
      if (trace.time[i] > 600) expect(trace.of.fuel[i]).toBe(0);
    }
    expect(times(result, 'hotWaterCalled')).toEqual([0]);
  });

  test('leaves no reading from 600 s on: a number before, none after, and the bead goes on', () => {
    const { time, of, samples } = result.trace;
    for (let i = 0; i < samples; i++) {
      if (time[i] < 600) expect(of.sensor[i]).toBeGreaterThan(0);
      if (time[i] > 600) expect(of.sensor[i]).toBeNaN();
      expect(of.bead[i]).toBeGreaterThan(0);
    }
  });

  test('never recovers, and energy still closes to 1e-9', () => {
    expect(result.measures.recovery).toBe(null);
    expect(times(result, 'statSatisfied')).toEqual([]);
    expect(result.outcome).toEqual({ kind: 'finished', at: 7200 });
    expect(Math.abs(result.balance.relative)).toBeLessThan(1e-9);
  });
});

test('an ideal boiler has no overrun: a fault at 600 s stops the coil at 600 s', () => {
  const result = run({ element: 'platinum', fault: 'open' }, { model: 'ideal' });
  expect(lastFlow(result)).toBe(600);
  expect(times(result, 'faultShown')).toEqual([600]);
});

test('a fault at 0 s is shown at 0 s, and the coil gives 0 J', () => {
  const result = run({ element: 'thermistor', fault: 'open', faultAt: 0 });
  expect(times(result, 'faultShown')).toEqual([0]);
  expect(result.measures.coilHeat).toBeLessThan(1); // water that rests in it is as warm as the store
  expect(Math.max(...result.trace.of.coilFlow)).toBe(0);
});

test('a fault goes by the run and not by the clock: at 600 s whether it starts at 0:00 or 6:00', () => {
  const programme = { ...base.programme, startsAt: 0 };
  const sensor = { ...base.sensor, element: 'thermistor' as const, fault: 'open' as const };
  const early = simulateToEnd({ ...base, programme, sensor });
  expect(times(early, 'faultShown')).toEqual([600]);
});

test('the rooms are heated on after a fault at 600 s', () => {
  const sensor = { ...base.sensor, element: 'thermistor' as const, fault: 'open' as const };
  const { phases } = simulateToEnd({ ...base, sensor });
  expect(phases.some(({ from, coilRuns }) => coilRuns && from > 620)).toBe(false);
  expect(phases.some(({ from, radiatorsRun }) => radiatorsRun && from >= 620)).toBe(true);
});

test('without an electrical element an open circuit at 10 min has no say: 0 marks of it, the same recovery to the bit', () => {
  const mechanical = run({ element: 'true', fault: 'open' });
  expect(times(mechanical, 'faultShown')).toEqual([]);
  expect(mechanical.measures.recovery).toBe(run({ element: 'true' }).measures.recovery);
  expect(mechanical.measures.recovery).not.toBe(null);
});

describe('a thermistor of 10 kΩ read as platinum of 1000 Ω', () => {
  const result = run({ element: 'thermistor', expects: 'platinum' });

  test('is off the scale and shows a fault at 0 s', () => {
    // by hand at 10 °C: 10 000 exp(3977 (1 / 283.15 − 1 / 298.15)) = 20.3 kΩ; platinum has 1000 at 0 °C, 4800 at most
    expect(times(result, 'faultShown')).toEqual([0]);
    expect(result.trace.of.sensor.slice(2).every(Number.isNaN)).toBe(true);
  });

  test('runs the coil at 0 l/min for 2 h', () => {
    expect(Math.max(...result.trace.of.coilFlow)).toBe(0);
    expect(result.measures.recovery).toBe(null);
  });
});

describe('mountings', () => {
  const mounted = (mounting: Variant['stat']['mounting']) => ({ ...base.stat, mounting });

  test('lag 30 s in a wet pocket and 120 s otherwise, and are drawn to the air by 0, 0, 3.5 and 12.5 %', () => {
    const kinds = ['wetPocket', 'dryPocket', 'strappedLagged', 'strappedBare'] as const;
    expect(kinds.map((kind) => mountingOf(mounted(kind)))).toEqual([
      { lag: 30, airShare: 0 },
      { lag: 120, airShare: 0 },
      { lag: 120, airShare: 0.035 },
      { lag: 120, airShare: 0.125 },
    ]);
    const typed = { ...mounted('asTyped'), lag: 77, airShare: 0.2 };
    expect(mountingOf(typed)).toEqual({ lag: 77, airShare: 0.2 });
  });

  /** The bead after a time in 60 °C water with 20 °C around, from a temperature, °C. */
  function bead(mounting: Variant['stat']['mounting'], from: number | null, duration: number) {
    // a store so large that it stays at 60 °C, and a stat that does not call
    const ideal = idealVariant({ C: 1e15, cold: 60, setPoint: 40, duration });
    const plant = makePlant({ ...ideal, stat: { ...ideal.stat, mounting } });
    const system = new System(plant);
    const { state, memory } = system.start();
    if (from === null) return state[system.slots.bead];
    const cold = [...state];
    cold[system.slots.bead] = from;
    return marchToEnd(plant, { from: { state: cold, memory } }).end.state[system.slots.bead];
  }

  test('bare and strapped in 60 °C of water and 20 °C of air settle at 55 °C, by hand 60 − 0.125 × 40', () => {
    expect(bead('strappedBare', null, 60)).toBeCloseTo(55, 9); // at rest when the run starts
    expect(bead('strappedBare', 20, 3600)).toBeCloseTo(55, 3); // tolerance of the run
    expect(bead('strappedLagged', 20, 3600)).toBeCloseTo(60 - 0.035 * 40, 3);
    expect(bead('wetPocket', 20, 3600)).toBeCloseTo(60, 3);
  });

  test('from 20 °C read 42.12 °C after one lag of 120 s, by hand 55 − 35 / e, in a wet pocket 59.27 °C', () => {
    expect(bead('strappedBare', 20, 120)).toBeCloseTo(55 - 35 / Math.E, 3); // tolerance of the run
    expect(bead('wetPocket', 20, 120)).toBeCloseTo(60 - 40 * Math.exp(-4), 3);
    expect(55 - 35 / Math.E).toBeCloseTo(42.12, 2);
    expect(60 - 40 * Math.exp(-4)).toBeCloseTo(59.27, 2);
  });

  test('bare and strapped the stat of 60 °C stops later and hotter: by 5.7 K of water at 20 °C around', () => {
    const stopsAt = (mounting: Variant['stat']['mounting']) => {
      // 2 kW into 200 kg: 2.4 mK/s, so a lag of 120 s is 0.29 K
      const slow = idealVariant({ output: 2000, flowLimit: 200, duration: 12 * 3600 });
      const { marks, trace } = simulateToEnd({ ...slow, stat: { ...slow.stat, mounting } });
      const at = marks.find(({ kind }) => kind === 'statSatisfied')?.at ?? Number.NaN;
      return trace.of.top[trace.time.indexOf(at)];
    };
    // by hand: 20 + 40 / 0.875 = 65.71 °C, and 120 s × 2000 / 836 000 for the lag
    expect(stopsAt('strappedBare')).toBeCloseTo(65.71 + 0.29, 1);
    expect(stopsAt('wetPocket')).toBeCloseTo(60 + 0.07, 1); // 30 s
  });
});
