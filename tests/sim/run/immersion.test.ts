import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import type { Variant } from '../../../shared/variant.ts';
import { constantWater } from '../../../sim/closures/water.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { type Ideal, idealVariant } from '../../make/idealVariant.ts';

/** 3 kW at a height, in a store that does not conduct unless it is told to. */
function heated(
  ideal: Partial<Ideal>,
  immersion: Partial<Variant['immersion']> = {},
  stirring = 0,
): Variant {
  const variant = idealVariant(ideal);
  return {
    ...variant,
    cylinder: { ...variant.cylinder, stirring },
    immersion: {
      ...variant.immersion,
      used: 'insteadOfBoiler',
      output: 3000,
      height: 0.33,
      setPoint: 60,
      differential: 6,
      ...immersion,
    },
  };
}

describe('3 kW at 0.33 m of 1.2 m, in place of the boiler, in 200 kg from 10 °C', () => {
  const result = simulateToEnd(heated({ layers: 20, duration: 4 * 3600 }));
  const { trace, marks, phases, measures, balance } = result;

  test('heats the 15 of 20 layers from its own up to 60 °C in C ΔT / P = 10 450 s, within 1 %', () => {
    // by hand: 836 kJ/K × 15 / 20 × 50 K / 3 kW
    const off = marks.find(({ kind }) => kind === 'immersionOff')?.at ?? Number.NaN;
    expect(Math.abs(off / 10_450 - 1)).toBeLessThan(0.01);
  });

  test('leaves the 5 layers below at 10 °C and the 15 above at 60 °C', () => {
    const last = (trace.samples - 1) * trace.layers;
    const end = Array.from(trace.layerTemperature.slice(last, last + 20));
    for (const cold of end.slice(0, 5)) expect(cold).toBeCloseTo(10, 6);
    for (const hot of end.slice(5)) expect(hot).toBeCloseTo(60, 2); // pools merge within a hundredth
  });

  test('refuses the call for hot water: it comes at 0 s, and the coil and the boiler give 0 J', () => {
    expect(marks[0]).toEqual({ at: 0, kind: 'hotWaterCalled' });
    expect(phases.some(({ coilRuns }) => coilRuns)).toBe(false);
    expect(Math.max(...trace.of.coilFlow)).toBe(0);
    expect(measures.coilHeat).toBe(0);
    expect(balance.fromBoiler).toBe(0);
  });

  test('takes as electricity 3 kW × the time it was on, to rounding, and all of it is in the water', () => {
    const on = phases.reduce((sum, { immersionRuns, from, to }) => {
      return immersionRuns ? sum + to - from : sum;
    }, 0);
    expect(on).toBeGreaterThan(10_000);
    expect(measures.electricity / (3000 * on)).toBeCloseTo(1, 9);
    expect(balance.gainedByStore / measures.electricity).toBeCloseTo(1, 9);
    expect(Math.abs(balance.relative)).toBeLessThan(1e-9);
  });
});

test('with the conduction of water, 0.6 W/(m K), the 0.3 m below warm by 80 to 100 % of the 6.9 K on the mean that a half-space warms in 4 h', () => {
  const { trace } = simulateToEnd(
    heated({ layers: 200, duration: 4 * 3600 }, { height: 0.303 }, 1),
  );
  const last = (trace.samples - 1) * trace.layers;
  const below = Array.from(trace.layerTemperature.slice(last, last + 50));
  const mean = below.reduce((sum, one) => sum + one, 0) / 50;
  // by hand: its upper face warms at 50 K / 10 450 s for that long and then stays, so the heat that has gone in is
  // 4/3 β √(a / π) (t^1.5 − (t − 10 450)^1.5), with a = λ / ρc
  const a = constantWater().conductivity(35) / 4.18e6;
  const powers = 14_400 ** 1.5 - 3950 ** 1.5;
  const rise = ((4 / 3) * (50 / 10_450) * Math.sqrt(a / Math.PI) * powers) / 0.3;
  expect(rise).toBeCloseTo(6.9, 0);
  // less, as the water above gives up what goes down, 5 % of its heat, and so is late; and as the lowest warm layer is 6 mm
  // thick, so that the face is 3 mm above 0.3 m, where warmth reaches √(a t) = 46 mm
  expect((mean - 10) / rise).toBeLessThan(1);
  expect((mean - 10) / rise).toBeGreaterThan(0.8);
});

describe('3 kW in a mixed store of 200 kg that loses 20 W/K to 20 °C', () => {
  const loss = 20;
  const C = 836_000;
  const { marks, measures, phases } = simulateToEnd(
    heated({ layers: 1, loss, cold: 50, duration: 24 * 3600 }, { height: 0.6 }),
  );
  const times = (kind: string) => marks.filter((mark) => mark.kind === kind).map(({ at }) => at);
  const end = 20 + 3000 / loss; // where it would settle: 170 °C
  const rising = (C / loss) * Math.log((end - 54) / (end - 60));
  const falling = (C / loss) * Math.log((60 - 20) / (54 - 20));

  test('cycles between 60 and 54 °C with the closed form: on for 2222 s, off for 6793 s, to 0.1 %', () => {
    // by hand: 41 800 s × ln(116 / 110) and 41 800 s × ln(40 / 34)
    expect(rising).toBeCloseTo(2220, -1);
    expect(falling).toBeCloseTo(6793, 0);
    // it is on from the start, so the first time it comes on again is the second
    const [off, on] = [times('immersionOff'), times('immersionOn').slice(1)];
    expect(off.length).toBeGreaterThan(5);
    for (let cycle = 0; cycle < 5; cycle++) {
      expect((on[cycle] - off[cycle]) / falling).toBeCloseTo(1, 3);
      expect((off[cycle + 1] - on[cycle]) / rising).toBeCloseTo(1, 3);
    }
  });

  test('starts on at 50 °C, which is below 54 °C, and takes 3 kW × the time on', () => {
    expect(phases[0].immersionRuns).toBe(true);
    // by hand: first rise from 50 to 60 °C
    expect(times('immersionOff')[0] / ((C / loss) * Math.log(120 / 110))).toBeCloseTo(1, 3);
    let on = 0;
    for (const { immersionRuns, from, to } of phases) if (immersionRuns) on += to - from;
    expect(measures.electricity / (3000 * on)).toBeCloseTo(1, 9);
  });

  test('waits at 55 °C, above 54 °C: the first call comes when the store has lost 1 K', () => {
    const warm = simulateToEnd(
      heated({ layers: 1, loss, cold: 55, duration: 3600 }, { height: 0.6 }),
    );
    const first = warm.marks.find(({ kind }) => kind === 'immersionOn')?.at ?? Number.NaN;
    expect(first / ((C / loss) * Math.log(35 / 34))).toBeCloseTo(1, 3);
  });
});

test('3 kW beside a boiler of 20 kW heat 200 kg from 10 to 60 °C in 1817.4 s, together 23 kW, to 0.1 %', () => {
  // by hand: 836 000 × 50 / 23 000; the immersion’s own stat at 70 °C has no say
  const helped = heated(
    { layers: 1, output: 20_000, flowLimit: 200 },
    { used: 'withBoiler', setPoint: 70, height: 0.6 },
  );
  const { measures } = simulateToEnd(helped);
  expect((measures.recovery ?? Number.NaN) / 1817.4).toBeCloseTo(1, 3);
});

test('in place of the boiler as built the rooms keep it: radiators run in 2 h, the coil never', () => {
  const base = defaultVariant('rooms');
  const instead = {
    ...base,
    immersion: { ...base.immersion, used: 'insteadOfBoiler' as const },
  };
  const { phases, balance } = simulateToEnd(instead);
  expect(phases.some(({ coilRuns }) => coilRuns)).toBe(false);
  expect(phases.some(({ radiatorsRun }) => radiatorsRun)).toBe(true);
  expect(balance.fromImmersion).toBeGreaterThan(3000 * 7000); // on for nearly all of 7200 s
});
