import { describe, expect, test } from 'vitest';
import { presets, presetVariant } from '../../../shared/presets.ts';
import type { Phase } from '../../../shared/result.ts';
import { phaseAt } from '../../../shared/sentences/plantStates.ts';
import { withSetting } from '../../../shared/variant.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import {
  burnerStretches,
  immersionStretches,
  valveStretches,
} from '../../../src/figures/plantStretches.ts';
import { inventedResult } from '../../make/result.ts';

const invented = inventedResult(); // 20 min at full output, 20 min at the flow limit, then off
const phase = (from: number, to: number, change: Partial<Phase>): Phase => ({
  from,
  to,
  coilRuns: true,
  radiatorsRun: false,
  draws: false,
  immersionRuns: false,
  limit: 'output',
  ...change,
});
const told = (stretches: { words: readonly string[]; from: number; to: number }[]) =>
  stretches.map(({ words, from, to }) => [words[0], from, to]);

describe('the burner under the curves', () => {
  test('20 min full, 20 min modulating, then off', () => {
    expect(told(burnerStretches(invented))).toEqual([
      ['full output', 0, 1200],
      ['modulating', 1200, 2400],
      ['off', 2400, 7200],
    ]);
  });

  test('rest, valve and overrun are one stretch of 300 s in which it is off', () => {
    const phases = [
      phase(0, 60, { limit: 'minimum' }),
      phase(60, 160, { limit: 'resting' }),
      phase(160, 260, { limit: 'valve' }),
      phase(260, 360, { limit: 'overrun' }),
    ];
    expect(told(burnerStretches({ ...invented, phases }))).toEqual([
      ['at its least', 0, 60],
      ['off', 60, 360],
    ]);
  });
});

describe('the valves under the curves', () => {
  const variant = withSetting(invented.variant, 'primary.valveTravel', 20);

  test('one that arrives at 120 s has moved since 100 s, while the water kept its old way', () => {
    const phases = [
      phase(0, 120, { coilRuns: false, radiatorsRun: true }),
      phase(120, 600, { radiatorsRun: true }),
      phase(600, 900, {}),
    ];
    const marks = [{ at: 120, kind: 'valveArrived' as const }];
    expect(told(valveStretches({ ...invented, variant, phases, marks }))).toEqual([
      ['open to the radiators', 0, 100],
      ['moving', 100, 120],
      ['open to both', 120, 600],
      ['open to the coil', 600, 900],
    ]);
    expect(phaseAt({ ...invented, variant, phases, marks }, 110)?.state).toBe('moving');
    expect(phaseAt({ ...invented, variant, phases, marks }, 130)?.state).toBe('both');
  });

  test('with a travel time of 0 s nothing moves', () => {
    const still = withSetting(invented.variant, 'primary.valveTravel', 0);
    const phases = [phase(0, 120, { coilRuns: false }), phase(120, 600, {})];
    const marks = [{ at: 120, kind: 'valveArrived' as const }];
    expect(told(valveStretches({ ...invented, variant: still, phases, marks }))).toEqual([
      ['shut', 0, 120],
      ['open to the coil', 120, 600],
    ]);
  });
});

test('an immersion heater on from 60 to 960 s is on for 15.0 min', () => {
  const phases = [phase(0, 60, {}), phase(60, 960, { immersionRuns: true }), phase(960, 1200, {})];
  const found = immersionStretches({ ...invented, phases });
  expect(told(found)).toEqual([
    ['off', 0, 60],
    ['heater on', 60, 960],
    ['off', 960, 1200],
  ]);
  expect(found[1].minutes).toBe('15.0');
});

test.each(presets.map((preset) => [preset.title, preset] as const))(
  '"%s": burner and valves are told from 0 s to the end without a gap over 1 s',
  (_title, preset) => {
    const result = simulateToEnd(presetVariant(preset));
    for (const stretches of [burnerStretches(result), valveStretches(result)]) {
      expect(stretches[0].from).toBeLessThan(1);
      expect(Math.abs(stretches[stretches.length - 1].to - result.outcome.at)).toBeLessThan(1);
      stretches.slice(1).forEach(({ from }, index) => {
        expect(Math.abs(from - stretches[index].to)).toBeLessThan(1);
      });
    }
  },
);
