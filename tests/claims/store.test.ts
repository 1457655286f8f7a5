import { describe, expect } from 'vitest';
import { placementStudy } from '../../sim/run/studies.ts';
import { toEnd } from '../../sim/run/toEnd.ts';
import { claim } from '../support/claim.ts';
import { expectMoves } from '../support/expectMoves.ts';
import { expectFalling, expectRising } from '../support/expectOrder.ts';
import {
  houseWith,
  measuresWith,
  presetWith,
  recoveryWith,
  runWith,
  type Settings,
  sampled,
} from '../support/houseWith.ts';
import { recordOf, resultOf, termsOf } from '../support/recordOf.ts';

const alone: Settings = { 'heating.arrangement': 'hotWaterOnly' };
const coarse: Settings = { ...alone, 'run.layers': 16 }; // a study is many runs
const coilAt = (bottom: number): Settings => ({
  ...alone,
  'coil.bottom': bottom,
  'coil.top': bottom + 0.4,
  'stat.sensorHeight': bottom + 0.36,
});

describe('heat to be found', () => {
  claim('Twice the water or twice the rise takes twice the heat.', () => {
    for (const [volume, rise] of [
      [0.1, 50],
      [0.3, 20],
    ]) {
      const once = resultOf('storedHeat', { volume, rise });
      expect(resultOf('storedHeat', { volume: 2 * volume, rise })).toBeCloseTo(2 * once, 3);
      expect(resultOf('storedHeat', { volume, rise: 2 * rise })).toBeCloseTo(2 * once, 3);
    }
  });

  claim('Less water, warmer incoming water or a lower store temperature.', () => {
    expectMoves('storedHeat', { volume: [0.03, 2], rise: [1, 70] }, { volume: 'up', rise: 'up' });
    const heat = (settings: Settings) => measuresWith({ ...alone, ...settings }).coilHeat;
    expectFalling([300, 210, 160].map((volume) => heat({ 'cylinder.volume': volume })));
    expectFalling([5, 10, 20].map((cold) => heat({ 'draw.incomingCold': cold })));
    expectFalling([60, 55, 50].map((setPoint) => heat({ 'stat.setPoint': setPoint })));
  });

  claim('More power into the water, not more power in the boiler.', () => {
    expectMoves('heatUpTime', { power: [1e3, 3e4] }, { power: 'down' });
    const small = (output: number) =>
      recoveryWith({ ...alone, 'coil.length': 5, 'boiler.output': output });
    expect(small(36) / small(24)).toBeGreaterThan(0.97); // the coil holds it back, not the boiler
    expect(recoveryWith({ ...alone, 'coil.length': 8 })).toBeLessThan(0.85 * small(24));
  });

  claim('Only volume, rise and mean power are in it; coil, flow and sensor are not.', () => {
    expect(termsOf('tradeHeatUpTime')).toEqual(['volume', 'rise', 'power']);
  });

  claim(
    'Less to heat, or a higher mean: the mean is what coil, flow and boiler leave over.',
    () => {
      expectMoves(
        'recoveryTime',
        { heat: [1e6, 1e8], mean: [1e3, 3e4] },
        { heat: 'up', mean: 'down' },
      );
    },
  );

  claim('Only the boiler and the heat: the rule knows of nothing else.', () => {
    expect(termsOf('ruleTime')).toEqual(['heat', 'power']);
  });

  claim('More water to heat, colder water, a higher set-point.', () => {
    const heat = (settings: Settings) => measuresWith({ ...alone, ...settings }).coilHeat;
    expectRising([160, 210, 300].map((volume) => heat({ 'cylinder.volume': volume })));
    expectRising([20, 10, 5].map((cold) => heat({ 'draw.incomingCold': cold })));
    expectRising([50, 55, 60].map((setPoint) => heat({ 'stat.setPoint': setPoint })));
  });
});

describe('layers', () => {
  claim(
    'Warm water under cooler water rises and mixes with it until both have the mean temperature, and no heat is lost.',
    () => {
      expectMoves(
        'mixing',
        { C1: [1e4, 1e6], T1: [40, 80], C2: [1e4, 1e6], T2: [10, 39] },
        { C1: 'up', T1: 'up', C2: 'down', T2: 'up' },
      );
      const { C1, T1, C2, T2 } = recordOf('mixing').example.given;
      expect(resultOf('mixing') * (C1 + C2)).toBeCloseTo(C1 * T1 + C2 * T2, 3);
    },
  );

  claim('Heating higher up leaves less water above the warm layer to be mixed.', () => {
    expectMoves('mixing', { T1: [40, 80], C2: [1e4, 1e6], T2: [10, 39] }, { C2: 'down' });
    const topAfter10Minutes = [0.08, 0.3, 0.6].map((bottom) =>
      sampled(runWith(coilAt(bottom)), 'top', 600),
    );
    expectRising(topAfter10Minutes);
  });

  claim(
    'Warm water rises and stirs everything above it to one temperature, so one body of water warms together.',
    () => {
      const { trace } = runWith(alone);
      const sample = trace.time.findIndex((time) => time >= 900);
      const layers = trace.layerTemperature.subarray(
        sample * trace.layers,
        (sample + 1) * trace.layers,
      );
      const aboveCoil = [...layers].slice(Math.ceil((0.48 / 1.32) * trace.layers));
      expect(Math.max(...aboveCoil) - Math.min(...aboveCoil)).toBeLessThan(0.5);
    },
  );

  claim(
    'What the coil warms rises and stirs everything above it to one temperature, so the lines in the field stand upright there.',
    () => {
      const { trace } = runWith(coilAt(0.3));
      const sample = trace.time.findIndex((time) => time >= 600);
      const layers = trace.layerTemperature.subarray(
        sample * trace.layers,
        (sample + 1) * trace.layers,
      );
      const aboveCoil = [...layers].slice(Math.ceil((0.7 / 1.32) * trace.layers));
      expect(Math.max(...aboveCoil) - Math.min(...aboveCoil)).toBeLessThan(0.5);
    },
  );

  claim('More coil output, or less water above the coil.', () => {
    expectMoves(
      'risePerMinute',
      { power: [1e3, 3e4], volume: [0.02, 0.5] },
      { power: 'up', volume: 'down' },
    );
  });

  claim('A coil nearer the base leaves less.', () => {
    expectMoves('coldLeft', { volume: [0.21, 0.3], hotVolume: [0.05, 0.2] }, { hotVolume: 'down' });
    expectRising(
      [0.04, 0.1, 0.2, 0.4].map((bottom) => measuresWith(coilAt(bottom)).coldAtSatisfied ?? -1),
    );
  });

  claim('What is not hot is cold: mostly the water below the coil, which nothing stirs.', () => {
    const below = 0.21 * (0.3 / 1.32);
    const cold = measuresWith({ ...coilAt(0.3), 'run.layers': 48 }).coldAtSatisfied ?? 0;
    expect(cold / below).toBeGreaterThan(0.9);
    expect(cold / below).toBeLessThan(1.1);
  });

  claim(
    [
      'Below the coil only conduction down the water and the wall brings heat, and it is slow.',
      'Below the coil only conduction brings heat, and it is slow.',
      'Downwards there is only conduction, … through water and wall together, and that is slow.',
    ],
    () => {
      const left = runWith({ ...coilAt(0.3), 'run.duration': 6 });
      const bottom = left.trace.of.bottom[left.trace.samples - 1];
      expect(bottom).toBeLessThan(20); // 6 h under water at 60 °C
    },
  );

  claim(
    'A copper wall carries more heat from the hot top to the cold bottom than all the still water inside it.',
    () => {
      expectMoves(
        'conduction',
        { wall: [15, 400], thickness: [4e-4, 3e-3], diameter: [0.25, 0.6] },
        { wall: 'up', thickness: 'up' },
      );
      for (const [thickness, diameter] of [
        [0.0007, 0.4],
        [0.0009, 0.35],
        [0.0012, 0.5],
      ]) {
        const water = resultOf('conduction', { wall: 0, thickness, diameter });
        expect(resultOf('conduction', { wall: 390, thickness, diameter })).toBeGreaterThan(
          2 * water,
        );
      }
    },
  );

  claim(
    'A stainless cylinder keeps hot and cold apart several times longer than a copper one.',
    () => {
      const times = resultOf('conduction', { wall: 390 }) / resultOf('conduction', { wall: 16 });
      expect(times).toBeGreaterThan(3);
      expect(times).toBeLessThan(10);
    },
  );

  claim('1 for still water; more stands for whatever else blurs the layers.', () => {
    const bottom = (stirring: number) => {
      const { of, samples } = runWith({
        ...coilAt(0.3),
        'cylinder.stirring': stirring,
        'run.duration': 4,
      }).trace;
      return of.bottom[samples - 1];
    };
    expectRising([1, 5, 20].map(bottom));
  });

  claim('Equal slices of water the store is computed in; more are finer and slower.', () => {
    const work = (layers: number) => {
      const { cost, trace } = runWith({ ...alone, 'run.layers': layers });
      return cost.derivativeCalls * trace.layers;
    };
    expectRising([30, 60, 120].map(work));
  });
});

describe('litres at the tap', () => {
  claim(
    'Each litre that is hot enough goes further the hotter it is; the rest does not count.',
    () => {
      expectMoves(
        'usableLitres',
        { hotVolume: [0.01, 0.3], hot: [41, 80], cold: [2, 25] },
        { hotVolume: 'up', hot: 'up' },
      );
      expect(recordOf('usableLitres').compute({ hotVolume: 0, hot: 39, cold: 10, mixed: 40 })).toBe(
        0,
      );
    },
  );

  claim('A hotter store, warmer incoming water; at the next call, a lower sensor.', () => {
    expectMoves('usableLitres', { hot: [41, 80], cold: [2, 25] }, { hot: 'up', cold: 'up' });
    for (const house of [houseWith(coarse), presetWith('partly-used', coarse)]) {
      const study = toEnd(placementStudy(house));
      if (study.kind !== 'placement') throw new Error(`got a ${study.kind}; expected a placement`);
      const called = study.points.filter((point) => point.usableAtCall !== null);
      expect(called.length).toBeGreaterThan(8);
      expectFalling(called.map((point) => point.usableAtCall ?? -1)); // from the lowest sensor up
    }
  });

  claim('Hotter water goes further at the tap; water below 40 °C does not count at all.', () => {
    expectMoves('mixedShare', { hot: [41, 80], cold: [2, 25] }, { hot: 'up' });
    expect(resultOf('mixedShare', { hot: 39.9 })).toBe(0);
  });

  claim('A hotter store gives more mixed litres, and needs more care against scalding.', () => {
    expectRising(
      [50, 55, 60, 65].map(
        (setPoint) => measuresWith({ ...alone, 'stat.setPoint': setPoint }).usableAtSatisfied ?? -1,
      ),
    );
    expectMoves('longestScald', { temperature: [45, 70] }, { temperature: 'down' });
  });

  claim('Less water above the element, or a lower set-point.', () => {
    const energy = (settings: Settings) =>
      measuresWith({
        ...alone,
        'immersion.used': 'insteadOfBoiler',
        'run.duration': 10,
        ...settings,
      }).electricity;
    expectFalling([0.1, 0.4, 0.8].map((height) => energy({ 'immersion.height': height })));
    expectFalling(
      [60, 55, 50].map((setPoint) =>
        energy({ 'immersion.setPoint': setPoint, 'stat.setPoint': setPoint }),
      ),
    );
  });
});
