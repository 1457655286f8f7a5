import { incomingCold } from '../../../shared/coldWater.ts';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Trace } from '../../../shared/result.ts';
import type { Variant } from '../../../shared/variant.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { anyRun } from '../../make/anyRun.ts';

test('200 runs over all settings: energy closes to 1e-9, nothing is hotter than its source', () => {
  fc.assert(
    fc.property(anyRun, (variant) => {
      const { outcome, balance, trace, measures } = simulateToEnd(variant);
      expect(Math.abs(balance.relative)).toBeLessThan(1e-9);

      // 0.05 K: the solver's interpolant between two of its steps, in the samples; the steps keep 1e-4 K
      expect(measures.hottest).toBeLessThan(hottestSource(variant, trace) + 0.05);

      // all the water at the hottest: what a plug of it would give
      const cold = incomingCold(variant.draw);
      const plug = variant.cylinder.volume * Math.max(1, (measures.hottest - cold) / (40 - cold));
      for (const usable of trace.of.usable) expect(usable).toBeLessThan(plug * (1 + 1e-12));

      // the boiler gives no more than all it can; 1 W: a thousandth of the smallest boiler
      // as built it is rated with 60 °C back, and colder water gets up to 98.5 / 87 of that
      const { model, efficiencyShift } = variant.boiler;
      const better = model === 'asBuilt' ? (0.985 + efficiencyShift) / (0.87 + efficiencyShift) : 1;
      const most = better * variant.boiler.output + 1;
      expect(balance.fromBoiler).toBeLessThan(most * outcome.at + 1e-6);
    }),
    { numRuns: 200, endOnFailure: true },
  );
}, 180_000);

test('200 runs over all settings end with no layer 1e-6 K warmer than the one above it', () => {
  fc.assert(
    fc.property(anyRun, (variant) => {
      // the last state is one the solver stepped to; a merge is thrown there from 1e-7 K on
      expect(fallAtEnd(simulateToEnd(variant).trace)).toBeLessThan(1e-6);
    }),
    { numRuns: 200, endOnFailure: true },
  );
}, 180_000);

test('200 runs over all settings have no sample in which a layer is 0.2 K warmer than the one above it', () => {
  fc.assert(
    fc.property(anyRun, (variant) => {
      const { samples, layers, layerTemperature } = simulateToEnd(variant).trace;
      let worst = 0;
      for (let sample = 0; sample < samples; sample++) {
        for (let i = sample * layers + 1; i < (sample + 1) * layers; i++) {
          worst = Math.max(worst, layerTemperature[i - 1] - layerTemperature[i]);
        }
      }
      // samples lie inside steps; the worst of 1500 such runs was 0.05 K, in a front just after a draw began
      expect(worst).toBeLessThan(0.2);
    }),
    { numRuns: 200, endOnFailure: true },
  );
}, 180_000);

test('20 runs over all settings give the same bits twice', () => {
  fc.assert(
    fc.property(anyRun, (variant) => {
      expect(simulateToEnd(variant)).toEqual(simulateToEnd(variant));
    }),
    { numRuns: 20, endOnFailure: true },
  );
}, 180_000);

/**
 * What may heat the store: the boiler, as built up to its limiter and what it overshoots while the burner goes off, the
 * immersion heater, the start, the surroundings, radiators that were hotter, °C.
 */
function hottestSource(
  { boiler, immersion, start, draw, cylinder }: Variant,
  trace: Trace,
): number {
  const target = boiler.targets === 'shared' ? boiler.heatingFlow : boiler.hotWaterFlow;
  let hottest = Math.max(target, cylinder.surroundings, draw.incomingCold);
  if (boiler.model === 'asBuilt')
    for (const flow of trace.of.flow) if (flow > hottest) hottest = flow;
  if (immersion.used !== 'no') hottest = Math.max(hottest, immersion.setPoint);
  if (start.hotShare > 0) hottest = Math.max(hottest, start.hotTemperature);
  for (const radiator of trace.of.radiator) hottest = Math.max(hottest, radiator);
  return hottest;
}

/** The most by which a layer is warmer than the one above it in the last sample, K. */
function fallAtEnd({ samples, layers, layerTemperature }: Trace): number {
  let largest = 0;
  for (let at = (samples - 1) * layers + 1; at < samples * layers; at++) {
    largest = Math.max(largest, layerTemperature[at - 1] - layerTemperature[at]);
  }
  return largest;
}
