import { describe, expect, test } from 'vitest';
import type { PatternDraw } from '../../../shared/drawPattern.ts';
import { defaultVariant } from '../../../shared/fields.ts';
import type { Variant } from '../../../shared/variant.ts';
import { makePlant } from '../../../sim/plant/plant.ts';
import { slotsOf } from '../../../sim/solve/slots.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { idealVariant } from '../../make/idealVariant.ts';
import { marchToEnd } from '../../make/marchToEnd.ts';
import { plainVariant } from '../../make/plainVariant.ts';

const C = 836_000; // J/K, by hand 0.2 m³ × 1000 kg/m³ × 4180 J/(kg K)
const FLOW = 10 / 60_000; // m³/s
const LITRE = 1e-3;

interface Wish {
  readonly hot?: number;
  readonly cold?: number;
  readonly layers?: number;
  readonly duration?: number;
}

/** 200 l of constant water at 60 °C that lose nothing, nothing heats and 10 °C replace; one layer. */
function store({ hot = 60, cold = 10, layers = 1, duration = 3600 }: Wish = {}): Variant {
  const ideal = idealVariant({ layers, cold, duration, setPoint: 0 });
  return {
    ...ideal,
    cylinder: { ...ideal.cylinder, stirring: 0 },
    start: { hotShare: 1, hotTemperature: hot, boundary: 0 },
  };
}

const draw = (litres: number, changes: Partial<PatternDraw> = {}): PatternDraw => ({
  at: 0,
  volume: litres * LITRE,
  flow: FLOW,
  name: 'draw',
  ...changes,
});

/** Useful heat, J, above a least temperature, and a peak where one must be reached. */
const useful = (
  energy: number,
  leastTemperature: number,
  peakTemperature: number | null = null,
) => ({
  useful: { energy, leastTemperature, peakTemperature },
});

/** What a run of draws left: store temperature, heat and water out of it, and when what happened. */
function drawn(variant: Variant, draws: readonly PatternDraw[]) {
  const plant = makePlant(variant);
  const slots = slotsOf(plant);
  const { end, marks } = marchToEnd(plant, { draws });
  const times = (kind: string) =>
    marks.filter(({ mark }) => mark.kind === kind).map(({ mark }) => mark.at);
  return {
    T: end.state[0],
    heat: end.state[slots.drawn],
    useful: end.state[slots.useful],
    litres: end.state[slots.fromStore] / LITRE,
    tap: end.memory.tap,
    times,
  };
}

// 1e-4 K at each step, and as much again for the steps taken together
const KELVINS = 2e-3;
// the water out of the store is kept to a millilitre in a step
const LITRES = 0.01;

describe('a mixed draw of 10 l/min at 40 °C from a mixed store of 200 l at 60 °C', () => {
  const mixed = { mixedTo: 40 };

  test.each([10, 50, 100, 130])(
    'of %i l takes 30 K from each, whatever the store: 60 °C less 0.15 K a litre',
    (litres) => {
      const { T, heat, times, litres: hot } = drawn(store(), [draw(litres, mixed)]);
      expect(Math.abs(T - (60 - (litres * 30) / 200))).toBeLessThan(KELVINS);
      expect(heat / (litres * 4180 * 30)).toBeCloseTo(1, 5); // 100 J a step
      // all that was asked for left the tap: open for litres over flow, closed in on to 1e-4 s
      expect(times('drawEnded')[0] - times('drawStarted')[0]).toBeCloseTo(litres * 6, 3);
      expect(times('tapCold')).toEqual([]);
      // by hand: of each litre 30 / (T − 10) is hot, integrated over the falling T
      expect(Math.abs(hot - 200 * Math.log(50 / (T - 10)))).toBeLessThan(LITRES);
      expect(hot).toBeLessThan(litres);
    },
  );

  test('runs cold at 133.3 l, after 800 s, within 0.1 s', () => {
    // by hand: 20 K × 200 l / 30 K
    expect(Math.abs(drawn(store(), [draw(200, mixed)]).times('tapCold')[0] - 800)).toBeLessThan(
      0.1,
    );
  });

  test('then takes hot alone: 200 l in all leave the store at 10 + 30 exp(−66.7 / 200) = 31.50 °C', () => {
    const { T, litres, times } = drawn(store(), [draw(200, mixed)]);
    expect(10 + 30 * Math.exp(-1 / 3)).toBeCloseTo(31.496, 3);
    expect(Math.abs(T - (10 + 30 * Math.exp(-1 / 3)))).toBeLessThan(KELVINS);
    expect(Math.abs(litres - (200 * Math.log(50 / 30) + 200 / 3))).toBeLessThan(LITRES);
    expect(times('drawEnded')[0]).toBeCloseTo(1200, 3);
  });

  test('comes out at 40 °C to the last bit until it runs cold, then as the store is', () => {
    const { trace } = simulateToEnd(store({ duration: 1100 }), {
      draws: [draw(200, mixed)],
      sampleEvery: 20,
    });
    const { outlet, top } = trace.of;
    expect(outlet).toHaveLength(trace.samples);
    trace.time.forEach((time, i) => {
      if (time > 0 && time < 799.9) expect(outlet[i]).toBe(40);
      if (time > 800.1) expect(outlet[i]).toBe(top[i]);
    });
  });

  test('from a store at 35 °C is hot alone from the first litre, and is never told to turn cold', () => {
    const { litres, times } = drawn(store({ hot: 35 }), [draw(50, mixed)]);
    expect(Math.abs(litres - 50)).toBeLessThan(LITRES);
    expect(times('tapCold')).toEqual([]);
  });

  test.each([
    [60, 35],
    [20, 35],
    [60, 30],
  ])('at 30 °C from a store at %i °C with the cold at %i °C takes no hot water', (hot, cold) => {
    const variant = store({ hot, cold, duration: 600 });
    const below = [draw(50, { mixedTo: 30 })];
    const { T, heat, litres, times } = drawn(variant, below);
    expect([heat, litres]).toEqual([0, 0]);
    expect(T).toBe(hot);
    expect(times('drawEnded')[0]).toBeCloseTo(300, 3);
    expect([...times('tapCold'), ...times('tapWarm')]).toEqual([]);
    const { outlet } = simulateToEnd(variant, { draws: below }).trace.of;
    for (const one of outlet) if (!Number.isNaN(one)) expect(one).toBe(cold);
  });
});

describe('a draw by useful heat of 10 l/min from a mixed store of 200 l at 60 °C', () => {
  test.each([2, 5, 10, 19])('ends once it has taken %i K from the store, within 0.1 s', (fall) => {
    const { T, heat, times, useful: counted } = drawn(store(), [draw(1000, useful(C * fall, 40))]);
    const ends = 1200 * Math.log(50 / (50 - fall)); // by hand: T − 10 = 50 exp(−t / 1200 s)
    expect(Math.abs(times('drawEnded')[0] - ends)).toBeLessThan(0.1);
    expect(Math.abs(T - (60 - fall))).toBeLessThan(KELVINS);
    expect(heat / (C * fall)).toBeCloseTo(1, 4);
    expect(counted).toBe(heat);
  });

  test('counts above 40 °C only: 16.72 of 25.08 MJ, cold after 613.0 s, over with its 250 l', () => {
    const { times, heat, useful: counted } = drawn(store(), [draw(250, useful(C * 30, 40))]);
    // by hand 1200 s × ln(50 / 30), 836 kJ/K × 20 K, 836 kJ/K × 50 K × (1 − exp(−1.25))
    expect(Math.abs(times('tapCold')[0] - 612.99)).toBeLessThan(0.1);
    expect(counted / 16.72e6).toBeCloseTo(1, 4);
    expect(heat / (C * 50 * (1 - Math.exp(-1.25)))).toBeCloseTo(1, 4);
    expect(times('drawEnded')[0]).toBeCloseTo(1500, 3);
  });

  test('from 35 °C, below 40 °C, ends with its volume of 30 l after 180 s and counts 0 J', () => {
    const { times, heat, useful: counted } = drawn(store({ hot: 35 }), [draw(30, useful(C, 40))]);
    expect(times('drawEnded')[0]).toBeCloseTo(180, 3);
    expect(counted).toBe(0);
    expect(heat).toBeGreaterThan(1e6);
  });

  test('the second of two is done when its own heat is delivered, not the sum of both', () => {
    const both = [draw(1000, useful(C * 5, 40)), draw(1000, { at: 600, ...useful(C * 5, 40) })];
    const { T, times } = drawn(store(), both);
    expect(Math.abs(T - 50)).toBeLessThan(KELVINS);
    expect(Math.abs(times('drawEnded')[1] - 600 - 1200 * Math.log(45 / 40))).toBeLessThan(0.1);
  });

  test.each([
    [60, true],
    [50, false],
  ])('from %i °C a peak of 55 °C is reached: %s', (hot, isReached) => {
    const { tap } = drawn(store({ hot, duration: 60 }), [draw(1000, useful(1e9, 40, 55))]);
    expect(tap.hasPeaked).toBe(isReached);
  });

  test('heated with 40 kW meanwhile, a peak of 55 °C is reached at the closed form, and not before', () => {
    const heated = (duration: number) => {
      const base = store({ hot: 50, duration });
      const immersion = {
        ...base.immersion,
        used: 'insteadOfBoiler' as const,
        output: 40_000,
        setPoint: 90,
      };
      return drawn({ ...base, immersion }, [draw(1000, useful(1e9, 40, 55))]).tap.hasPeaked;
    };
    // by hand: it settles at 10 °C + 40 kW / 696.7 W/K = 67.42 °C, with 1200 s
    const reached = 1200 * Math.log(17.416 / 12.416);
    expect(heated(reached - 0.1)).toBe(false);
    expect(heated(reached + 0.1)).toBe(true);
  });
});

test('a store in 48 layers delivers 160 of 200 l at 60 °C within 0.01 K, mixed 1 litre hot for each 1.67', () => {
  const plug = store({ layers: 48, duration: 960 });
  const { trace } = simulateToEnd(plug, { draws: [draw(160)] });
  const outlet = trace.of.outlet.filter((one) => !Number.isNaN(one));
  expect(outlet.length).toBeGreaterThan(60);
  for (const one of outlet) expect(Math.abs(one - 60)).toBeLessThan(0.01);
  const { litres } = drawn(plug, [draw(160, { mixedTo: 40 })]);
  expect(Math.abs(litres - (160 * 30) / 50)).toBeLessThan(LITRES);
});

describe('draws in turn', () => {
  test('a useful draw that is done after 126.4 s lets in the one due at 60 s', () => {
    const { times } = drawn(store(), [draw(1000, useful(C * 5, 40)), draw(10, { at: 60 })]);
    const done = 1200 * Math.log(50 / 45);
    expect(times('drawStarted')).toHaveLength(2);
    expect(Math.abs(times('drawStarted')[1] - done)).toBeLessThan(0.1);
    expect(Math.abs(times('drawEnded')[1] - done - 60)).toBeLessThan(0.1);
  });

  test('one still open at the end of a run of 300 s is cut: 50 of 100 l, and one that waits never begins', () => {
    const { times, litres, tap } = drawn(store({ duration: 300 }), [
      draw(100),
      draw(10, { at: 200 }),
    ]);
    expect(times('drawStarted')).toHaveLength(1);
    expect(times('drawEnded')).toEqual([]);
    expect(litres).toBeCloseTo(50, 6);
    expect(tap.draw?.volume).toBe(0.1);
  });
});

test('with pipe, jet and a mixed draw from a layered store that is heated, energy closes to 1e-9', () => {
  const base = plainVariant('all of it');
  const { balance, marks } = simulateToEnd({
    ...base,
    draw: {
      ...base.draw,
      ...{ volume: 0.12, flow: FLOW, startsAt: 300, taken: 'mixed' as const },
      ...{ inlet: 'deflected' as const, pipeLength: 12 },
    },
    start: { hotShare: 0.5, hotTemperature: 60, boundary: 0.2 },
  });
  expect(marks.map(({ kind }) => kind)).toContain('tapWarm');
  expect(Math.abs(balance.relative)).toBeLessThan(1e-9);
  expect(balance.lostByTapPipe).toBeGreaterThan(1e4);
  expect(balance.gainedByTapPipe).toBeGreaterThan(1e3);
});

test.each(['asTyped', 'plain', 'deflected'] as const)(
  'a draw at 40 °C from 210 l at 60 °C, inlet %s, runs cold at 1e-4 K within 0.1 s of 1e-6 K, and in 48 layers within a 200th of 96',
  (inlet) => {
    const base = defaultVariant('convergence');
    const runsCold = (layers: number, tolerance: number) => {
      const variant: Variant = {
        ...base,
        draw: { ...base.draw, inlet, pipeLength: 10 },
        stat: { ...base.stat, setPoint: 0 },
        start: { hotShare: 1, hotTemperature: 60, boundary: 0 },
        run: { ...base.run, layers },
      };
      const { marks } = marchToEnd(makePlant(variant), {
        ...{ draws: [draw(400, { mixedTo: 40 })], tolerance },
        until: ({ kind }) => kind === 'tapCold',
      });
      return marks.find(({ mark }) => mark.kind === 'tapCold')?.mark.at ?? Number.NaN;
    };
    const usual = runsCold(48, 1e-4);
    expect(Math.abs(usual - runsCold(48, 1e-6))).toBeLessThan(0.1);
    expect(Math.abs(usual / runsCold(96, 1e-4) - 1)).toBeLessThan(0.005);
  },
  30_000,
);
