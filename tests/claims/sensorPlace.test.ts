import { describe, expect } from 'vitest';
import { differentialStudy } from '../../sim/run/studies.ts';
import { toEnd } from '../../sim/run/toEnd.ts';
import { claim } from '../support/claim.ts';
import { expectMoves } from '../support/expectMoves.ts';
import { expectFalling } from '../support/expectOrder.ts';
import {
  houseWith,
  measuresWith,
  presetWith,
  recoveryWith,
  runOf,
  type Settings,
} from '../support/houseWith.ts';
import { recordOf } from '../support/recordOf.ts';

// where the foot of the coil stands within a layer matters here, so the usual layers
const fine: Settings = { 'run.layers': 48 };
const alone: Settings = { ...fine, 'heating.arrangement': 'hotWaterOnly' };

/** After two hours the bottom has gained less than a fifth of what the hottest water has. */
function expectHardlyHeated(bottom: number, hottest: number): void {
  expect(bottom - 10).toBeLessThan((hottest - 10) / 5);
}

describe('where it sits', () => {
  const below: Settings = { ...alone, 'stat.sensorHeight': 0.06 };

  claim('Below the coil it may never be satisfied, and the top overheats.', () => {
    const { recovery, hottest } = measuresWith(below);
    expect(recovery).toBeNull();
    expect(hottest).toBeGreaterThan(75);
  });
  claim(
    'The water there is hardly heated, so the stat goes on calling while the store above overheats.',
    () => {
      const { measures, trace } = runOf(presetWith('sensor-too-low', fine));
      expect(measures.recovery).toBeNull();
      expectHardlyHeated(trace.of.bottom[trace.samples - 1], measures.hottest);
      expect(measures.hottest).toBeGreaterThan(75);
    },
  );
  claim(
    'The sensor sits below the coil, where water is hardly heated, so the stat may not stop the boiler before the top is overheated.',
    () => {
      const { trace, measures } = runOf(houseWith(below));
      expectHardlyHeated(trace.of.bottom[trace.samples - 1], measures.hottest);
      expect(measures.hottest).toBeGreaterThan(75);
    },
  );
  claim(
    'The sensor sits below the coil, where water is hardly heated, while the hottest water is at …: raise the sensor to the coil or above it.',
    () => {
      for (const height of [0.1, 0.3, 0.6])
        expect(recoveryWith({ ...alone, 'stat.sensorHeight': height })).toBeLessThan(40 * 60);
    },
  );
  claim(
    'What the coil stirs warms as one body, so from cold the reheat takes about as long wherever above the coil’s lowest turn the sensor sits.',
    () => {
      const times = [0.1, 0.3, 0.6, 1, 1.2].map((height) =>
        recoveryWith({ ...alone, 'stat.sensorHeight': height }),
      );
      expect(Math.max(...times) / Math.min(...times)).toBeLessThan(1.02);
    },
  );
  claim(
    'It sits in water that is still hot and does not call, though most of the store is cold.',
    () => {
      expect(runOf(presetWith('sensor-too-high')).measures.hotWaterCalls).toBe(0);
    },
  );
});

describe('the differential', () => {
  const study = toEnd(differentialStudy(houseWith({ ...alone, 'run.layers': 48 })));
  const points = study.kind === 'differential' ? study.points : [];
  const at = (value: number) => points.find((point) => point.value === value) ?? points[0];

  claim('A smaller differential calls sooner and, as a rule, more often.', () => {
    expectMoves(
      'callsAt',
      { setPoint: [40, 80], differential: [0.5, 30] },
      { differential: 'down' },
    );
    expect(points.length).toBeGreaterThan(8);
    const calls = [1, 4, 12, 20].map((value) => at(value).callsPerDay ?? -1);
    expectFalling(calls);
  });
  claim('A small differential calls soon and often, in short runs.', () => {
    expect(at(1).callsPerDay).toBeGreaterThan(1.5 * (at(12).callsPerDay ?? Infinity));
    expect(at(1).reheatAfterCall).toBeLessThan(0.8 * (at(20).reheatAfterCall ?? 0));
  });
  claim('A large one lets the store run further down before anything happens.', () => {
    expectFalling([1, 6, 20].map((value) => at(value).usableAtCall ?? -1));
  });
  claim(
    'It tells when nothing is drawn: the cylinder loses … now, and how often the boiler answers that is the differential’s to say.',
    () => {
      const idle: Settings = { ...alone, 'start.hotShare': 100, 'run.duration': 48 };
      expectFalling(
        [1, 3, 12].map(
          (differential) =>
            measuresWith({ ...idle, 'stat.differential': differential }).hotWaterCalls,
        ),
      );
    },
  );
  claim('Satisfied at …, the stat rests until its sensor has fallen to …, … lower.', () => {
    expect(recordOf('callsAt').compute({ setPoint: 60, differential: 6 })).toBe(54);
  });
});
