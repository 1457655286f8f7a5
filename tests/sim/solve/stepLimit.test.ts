import { expect, test } from 'vitest';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { idealVariant } from '../../make/idealVariant.ts';

test('water that only goes round a coil of 18.9 kW/K in 2 of 35 layers leaves no sample 1 mK upside down', () => {
  // the return is hotter than the target, so the ideal boiler gives nothing, and the pipes lose 11.8 W/K on the way
  const ideal = idealVariant({
    C: 0.15 * 4.18e6,
    mc: 4180,
    flowLimit: 30,
    setPoint: 80,
    height: 2,
    layers: 35,
    duration: 10_800,
    surroundings: 1,
    loss: 3,
  });
  const { trace, phases } = simulateToEnd({
    ...ideal,
    coil: { ...ideal.coil, conductance: 18_900, top: 0.1, flowEnters: 'bottom' },
    cylinder: { ...ideal.cylinder, stirring: 25 },
    primary: { ...ideal.primary, length: 2, heatLoss: 2.95 },
    immersion: {
      ...ideal.immersion,
      used: 'withBoiler',
      output: 6000,
      height: 0.02,
      setPoint: 65,
      differential: 18.5,
    },
    stat: { ...ideal.stat, sensorHeight: 0.02 },
    start: { hotShare: 1, hotTemperature: 60, boundary: 0 },
  });
  expect(phases.every(({ limit }) => limit === 'idle')).toBe(true);
  const { samples, layers, layerTemperature: T } = trace;
  let worst = 0;
  for (let sample = 0; sample < samples; sample++) {
    for (let i = sample * layers + 1; i < (sample + 1) * layers; i++) {
      worst = Math.max(worst, T[i - 1] - T[i]);
    }
  }
  // steps of four settlings of one layer left 0.2 K here, and more than 1 K in a store with a second coil
  expect(worst).toBeLessThan(1e-3);
});
