import { linearScale } from '../../../src/charts/scale.ts';
import { describe, expect, test } from 'vitest';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { type Constraint, constraints } from '../../../shared/pace.ts';
import { presets, presetVariant } from '../../../shared/presets.ts';
import type { Result } from '../../../shared/result.ts';
import { valueAt } from '../../../shared/sampleAt.ts';
import { comb } from '../../../src/figures/comb.ts';
import { paceRibbon } from '../../../src/figures/paceRibbon.ts';
import { temperatureTop, timeEnd } from '../../../src/figures/reheatFrames.ts';
import { lineEnd } from '../../../src/figures/reheatLines.ts';
import { reheatTable } from '../../../src/figures/reheatTable.ts';
import { inventedResult } from '../../make/result.ts';

const invented = inventedResult(); // satisfied after 40 min, run of 120 min

describe('the axes of the reheat curve', () => {
  test('a recovery of 40 min is drawn on 60 min, of 100 min on the 120 min of the run', () => {
    expect(timeEnd(invented) / 60).toBe(60);
    expect(timeEnd(inventedResult({ recovery: 6000 })) / 60).toBe(120);
  });

  test('a run of 120 min that does not recover is drawn to its end', () => {
    expect(timeEnd(inventedResult({ recovery: null })) / 60).toBe(120);
  });

  test('beside a former recovery of 52 min the axis holds both, 80 min', () => {
    expect(timeEnd(invented, inventedResult({ recovery: 3120 })) / 60).toBe(80);
  });

  test('a flow of 80 °C is drawn under 90 °C', () => {
    expect(temperatureTop(invented)).toBe(90);
  });
});

describe('what set the pace', () => {
  const ribbon = (stretches: Result['pace']['stretches']) =>
    paceRibbon({ pace: { ...invented.pace, stretches } });

  test('20 min boiler output, 20 min the coil, then satisfied without minutes', () => {
    expect(paceRibbon(invented).map(({ pattern, minutes }) => [pattern, minutes])).toEqual([
      ['output', '20.0'],
      ['surface', '20.0'],
      ['off', ''],
    ]);
  });

  test('a lead that is shared has 2 patterns and both words, the stronger first', () => {
    const [shared] = ribbon([{ from: 0, to: 600, by: ['coil', 'primaryFlow'] }]);
    expect([shared.pattern, shared.under]).toEqual(['surface', 'stream']);
    expect(shared.words).toEqual(['coil and primary flow', 'coil and flow', 'both']);
  });

  test('a lead of 3 is never told as that of 1', () => {
    const [shared] = ribbon([{ from: 0, to: 600, by: ['coil', 'primaryFlow', 'output'] }]);
    expect(shared.words.at(-1)).toBe('several');
    const [alone] = ribbon([{ from: 0, to: 600, by: ['primaryFlow'] }]);
    expect(alone.words).toEqual(['primary flow', 'flow']);
  });

  test('a stretch of 0.1 s is left out', () => {
    expect(
      ribbon([
        { from: 0, to: 0.1, by: ['valve'] },
        { from: 0.1, to: 60, by: ['coil'] },
      ]),
    ).toHaveLength(1);
  });

  test('each of 11 constraints has a pattern of its own', () => {
    const keys = Object.keys(constraints) as Constraint[];
    const all = ribbon(
      keys.map((key, index) => ({ from: 60 * index, to: 60 * index + 60, by: [key] })),
    );
    expect(new Set(all.map(({ pattern }) => pattern)).size).toBe(11);
  });
});

describe('lines of the reheat curve', () => {
  test('the flow ends at 40 min, where the coil stops, the sensor at the end of the axis', () => {
    const { trace } = invented;
    expect(lineEnd(trace, trace.of.coilInlet, 3600, false)?.at).toBe(2400);
    expect(lineEnd(trace, trace.of.sensor, 3600, false)?.at).toBe(3600);
    expect(lineEnd(trace, trace.of.boilerHeat, 3600, true)).toEqual({ at: 2400, value: 12_000 });
  });

  test('a line without a value has no end', () => {
    const none = new Float64Array(invented.trace.samples).fill(Number.NaN);
    expect(lineEnd(invented.trace, none, 3600, false)).toBeNull();
  });

  test('the comb has a tooth a minute, 39 before it stops at 40 min, as long as the heat is large', () => {
    const x = linearScale([0, 3600], [0, 440]);
    const teeth = comb(invented.trace, 3600, x, (celsius) => -celsius)
      .split('M')
      .slice(1);
    expect(teeth).toHaveLength(39);
    const [, flow, back] = /^\S+ (\S+)V(\S+)$/.exec(teeth[9]) ?? [];
    expect(Math.abs(Number(flow) - Number(back))).toBeCloseTo(24, 1); // 24 kW, printed to 0.1 px
  });

  test('on 60 pixels for 60 min the teeth stand 5 min apart, 7 before 40 min', () => {
    const x = linearScale([0, 3600], [0, 60]);
    const teeth = comb(invented.trace, 3600, x, (celsius) => celsius)
      .split('M')
      .slice(1);
    expect(teeth).toHaveLength(7);
  });
});

describe('the table of the reheat curve', () => {
  const result = simulateToEnd(presetVariant(presets[0]));
  const { columns, rows } = reheatTable(result, timeEnd(result));

  test('it has 30 rows at most, one of them at the recovery', () => {
    expect(rows.length).toBeLessThanOrEqual(30);
    const recovery = ((result.measures.recovery ?? 0) / 60).toFixed(1);
    expect(rows.map(([at]) => at)).toContain(recovery);
  });

  test('its sensor column has the values of the curve, to 0.1 °C', () => {
    const column = columns.indexOf('sensor reads, °C');
    for (const row of rows.slice(0, 5)) {
      const value = valueAt(result.trace.time, result.trace.of.sensor, Number(row[0]) * 60);
      expect(Number(row[column])).toBeCloseTo(value, 1); // printed to 0.1 °C
    }
  });
});
