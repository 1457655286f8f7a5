import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Trace } from '../../../shared/result.ts';
import type { Variant } from '../../../shared/variant.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { anyVariant } from '../../make/anyVariant.ts';

/** All settings anywhere within their limits, but at most 3 h and 40 layers, so that 200 take seconds. */
const anyRun = anyVariant.map<Variant>((variant) => ({
  ...variant,
  draw: { ...variant.draw, startsAt: variant.draw.startsAt % 7200 },
  run: {
    ...variant.run,
    duration: Math.min(variant.run.duration, 3 * 3600),
    layers: 10 + (variant.run.layers % 31),
  },
}));

test('200 runs over all settings: energy closes to 1e-9, nothing is hotter than its source', () => {
  fc.assert(
    fc.property(anyRun, (variant) => {
      const { outcome, balance, trace, measures } = simulateToEnd(variant);
      expect(outcome.kind).toBe('finished');
      expect(Math.abs(balance.relative)).toBeLessThan(1e-9);

      // 0.05 K: the solver's interpolant between two of its steps, in the samples; the steps keep 1e-4 K
      expect(measures.hottest).toBeLessThan(hottestSource(variant, trace) + 0.05);

      // all the water at the hottest: what a plug of it would give
      const cold = variant.draw.incomingCold;
      const plug = variant.cylinder.volume * Math.max(1, (measures.hottest - cold) / (40 - cold));
      for (const usable of trace.of.usable) expect(usable).toBeLessThan(plug * (1 + 1e-12));

      // full output is the fastest the heat can come; 1e-6: W to which the boiler's output is found
      if (measures.recovery !== null && measures.ruleTime !== null) {
        expect(measures.ruleTime).toBeLessThan(measures.recovery * (1 + 1e-5) + 1e-3);
      }
    }),
    { numRuns: 200 },
  );
}, 60_000);

test('200 runs without draws at 1e-6 K: no layer is ever 1e-5 K warmer than the one above it', () => {
  const still = anyRun.map((variant) => ({ ...variant, draw: { ...variant.draw, volume: 0 } }));
  fc.assert(
    fc.property(still, (variant) => {
      const { trace } = simulateToEnd(variant, { tolerance: 1e-6 });
      // 1e-5 K: ten times the tolerance, for samples lie between the steps of the solver
      expect(largestFall(trace)).toBeLessThan(1e-5);
    }),
    { numRuns: 200 },
  );
}, 60_000);

test('20 runs over all settings give the same bits twice', () => {
  fc.assert(
    fc.property(anyRun, (variant) => {
      expect(simulateToEnd(variant)).toEqual(simulateToEnd(variant));
    }),
    { numRuns: 20 },
  );
}, 60_000);

/** What may heat the store: the boiler, the start, the surroundings, radiators that were hotter, °C. */
function hottestSource({ boiler, start, draw, cylinder }: Variant, trace: Trace): number {
  let hottest = Math.max(boiler.hotWaterFlow, cylinder.surroundings, draw.incomingCold);
  if (start.hotShare > 0) hottest = Math.max(hottest, start.hotTemperature);
  for (const radiator of trace.of.radiator) hottest = Math.max(hottest, radiator);
  return hottest;
}

/** The most by which a layer is warmer than the one above it in any sample, K. */
function largestFall({ samples, layers, layerTemperature }: Trace): number {
  let largest = 0;
  for (let i = 0; i < samples; i++) {
    for (let at = i * layers + 1; at < (i + 1) * layers; at++) {
      largest = Math.max(largest, layerTemperature[at - 1] - layerTemperature[at]);
    }
  }
  return largest;
}
