import { expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import type { Variant } from '../../../shared/variant.ts';
import { offTime, onTime } from '../../../sim/closures/cycling.ts';
import { boilerEfficiency } from '../../../sim/closures/boilerEfficiency.ts';
import { makePlant } from '../../../sim/plant/plant.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { idealVariant } from '../../make/idealVariant.ts';

/**
 * A boiler as built whose least output is more than its coil takes, on a store so large that it stays at 60 °C: no pipes, a
 * coil of a known conductance. What is left is one lump of boiler water between two temperatures.
 */
function overfed(minimumOff: number): Variant {
  const ideal = idealVariant({ C: 1e12, UA: 150, cold: 60, setPoint: 70, duration: 4 * 3600 });
  return {
    ...ideal,
    boiler: {
      ...ideal.boiler,
      model: 'asBuilt',
      output: 20_000,
      minimumOutput: 8000,
      hotWaterFlow: 85,
      waterContent: 0.02,
      offMargin: 5,
      restartBelow: 5,
      minimumOff,
      highLimit: 110,
    },
    cylinder: { ...ideal.cylinder, surroundings: 60, standingLoss: 0 },
  };
}

/** Times at which the burner lit and went off, after its first cycle, s. */
function cycle(variant: Variant): { on: number; off: number } {
  const marks = simulateToEnd(variant).marks.filter(
    ({ kind }) => kind === 'burnerLit' || kind === 'burnerOff',
  );
  const lit = marks.filter(({ kind }) => kind === 'burnerLit').map(({ at }) => at);
  const out = marks.filter(({ kind }) => kind === 'burnerOff').map(({ at }) => at);
  return { on: out[2] - lit[2], off: lit[3] - out[2] };
}

test('a boiler of 8 kW at least on a coil that takes 2.9 kW cycles with the closed-form period to 0.1 %', () => {
  const variant = overfed(0);
  const { coilAlone, built } = makePlant(variant);
  if (!built) throw new Error('an ideal boiler; expected one as built');
  const effectiveness = 1 - Math.exp(-150 / coilAlone.heatRate);
  const lump = {
    capacity: built.loop.boilerCapacity,
    conductance: effectiveness * coilAlone.heatRate + built.loop.boilerLoss,
    around: 60,
  };
  // the return is above 71 °C all the time, where the efficiency stays at its end value
  const load = built.burner.inputLeast / built.burner.inputMost;
  const heat = built.burner.inputLeast * boilerEfficiency(80, load);
  const { on, off } = cycle(variant);
  expect(on / onTime(lump, 80, 90, heat)).toBeCloseTo(1, 3);
  expect(off / offTime(lump, 80, 90)).toBeCloseTo(1, 3);
});

test('a target that steps from 60 to 80 °C under a lit burner moves it to full output at once: 20 K is its whole band', () => {
  const { phases } = simulateToEnd(defaultVariant('hot water after heating'));
  const [heating, hotWater] = phases;
  expect([heating.radiatorsRun, heating.limit]).toEqual([true, 'flowLimit']);
  expect([hotWater.coilRuns, hotWater.limit]).toEqual([true, 'output']);
  expect(hotWater.from).toBe(20); // when the valve arrives
});

test('with a minimum off time longer than that, the burner rests for just that time, to 0.1 s', () => {
  const { off } = cycle(overfed(1800));
  expect(Math.abs(off - 1800)).toBeLessThan(0.1);
});
