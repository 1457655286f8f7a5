import { describe, expect, test } from 'vitest';
import type { Variant } from '../../../shared/variant.ts';
import { makePlant, type Plant } from '../../../sim/plant/plant.ts';
import { idealVariant } from '../../make/idealVariant.ts';
import { marchToEnd } from '../../make/marchToEnd.ts';
import * as exact from '../../reference/exact.ts';

const C = 836_000; // J/K

/** 60 % of the store at 10 °C under 60 °C, 20 kW put in at its base, nothing conducted. */
function twoZones(setPoint: number, duration = 7200): Plant {
  const base = idealVariant({
    layers: 50,
    output: 20_000,
    flowLimit: 5000, // never reached, so that the output alone decides
    setPoint,
    differential: 1,
    duration,
  });
  const variant: Variant = {
    ...base,
    coil: { ...base.coil, top: 0.12 },
    stat: { ...base.stat, sensorHeight: 1.2 },
    start: { hotShare: 0.4, hotTemperature: 60, boundary: 0 },
  };
  const plant = makePlant(variant);
  return { ...plant, cylinder: { ...plant.cylinder, conductance: 0 } };
}

describe('20 kW below 40 % of hot water', () => {
  const { merge, reached } = exact.twoZoneReheat(C, 0.6, 10, 60, 20_000, 65);

  test('the top is at 65 °C after 1463.0 s', () => {
    const at = marchToEnd(twoZones(65)).marks.find(({ mark }) => mark.kind === 'statSatisfied');
    // all straight lines: what is left is 1e-4 s of each located event and 1e-7 K of each merge
    expect(Math.abs((at?.mark.at ?? 0) - reached)).toBeLessThan(0.01);
  });

  test('the top stays at 60 °C to the last bit until the zones merge after 1254.0 s', () => {
    const before = marchToEnd(twoZones(80, merge - 0.1)).end.state;
    for (let layer = 30; layer < 50; layer++) expect(before[layer]).toBe(60);
    // 0.1 s at 20 kW over 60 % of the store is 0.004 K short of it
    expect(before[0]).toBeCloseTo(60 - (0.1 * 20_000) / (0.6 * C), 4);
    const after = marchToEnd(twoZones(80, merge + 10)).end.state;
    expect(after[49]).toBeCloseTo(60 + (10 * 20_000) / C, 4);
  });

  test('the run to 10 s past the merge takes fewer than 5 pieces', () => {
    // the cost of the run counts one restart for each event and slice: start, merge, end
    const { cost } = marchToEnd(twoZones(80, merge + 10));
    expect(cost.restarts).toBeLessThan(5);
  });
});
