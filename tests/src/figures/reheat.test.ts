import { linearScale } from '../../../src/charts/scale.ts';
import { describe, expect, test } from 'vitest';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { presets, presetVariant } from '../../../shared/presets.ts';
import { valueAt } from '../../../shared/sampleAt.ts';
import { comb } from '../../../src/figures/comb.ts';
import { heldBy, limitStretches } from '../../../src/figures/limitStretches.ts';
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

describe('what held the boiler', () => {
  test('20 min at full output, 20 min at the flow limit, then off', () => {
    expect(limitStretches(invented).map(({ pattern, minutes }) => [pattern, minutes])).toEqual([
      ['output', '20.0'],
      ['flowLimit', '20.0'],
      ['off', ''],
    ]);
    expect(heldBy(invented, 600)).toBe('boiler at full output');
    expect(heldBy(invented, 1200)).toBe('flow at its limit');
    expect(heldBy(invented, 1e9)).toBe('off');
  });

  test('2 neighbouring phases of one kind are 1 stretch, and one of 0.1 s is left out', () => {
    const [first] = invented.phases;
    const phases = [
      first,
      { ...first, from: 1200, to: 1200.1, limit: 'idle' as const },
      { ...first, from: 1200.1, to: 1800 },
    ];
    expect(limitStretches({ ...invented, phases })).toHaveLength(1);
    expect(limitStretches({ ...invented, phases })[0].minutes).toBe('30.0');
  });

  test('before the first call at 300 s the boiler waits', () => {
    const [first] = invented.phases;
    const waits = { ...first, coilRuns: false, limit: 'off' as const, from: 0, to: 300 };
    const phases = [waits, { ...first, from: 300, to: 900 }];
    const marks = [{ at: 300, kind: 'hotWaterCalled' as const }];
    const patterns = limitStretches({ ...invented, phases, marks }).map(({ pattern }) => pattern);
    expect(patterns).toEqual(['waiting', 'output']);
  });

  test.each(presets.map((preset) => [preset.title, preset] as const))(
    'the stretches of "%s" reach from 0 s to the end without a gap over 1 s',
    (_title, preset) => {
      const result = simulateToEnd(presetVariant(preset));
      const stretches = limitStretches(result);
      expect(stretches[0].from).toBeLessThan(1);
      expect(Math.abs(stretches[stretches.length - 1].to - result.outcome.at)).toBeLessThan(1);
      stretches.slice(1).forEach((stretch, index) => {
        expect(Math.abs(stretch.from - stretches[index].to)).toBeLessThan(1);
      });
    },
  );
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
