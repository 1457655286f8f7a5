import { expect } from 'vitest';
import { dayRun } from '../../sim/run/day.ts';
import { toEnd } from '../../sim/run/toEnd.ts';
import { claim } from '../support/claim.ts';
import { expectMoves } from '../support/expectMoves.ts';
import { houseWith, presetWith, runOf, type Settings } from '../support/houseWith.ts';
import { resultOf } from '../support/recordOf.ts';

const reductions = ['shortestReduction', 'longestReduction'];
const scalds = ['shortestScald', 'longestScald'];
const oneDay: Settings = {
  'heating.arrangement': 'hotWaterOnly',
  'day.repeat': 'stated',
  'day.days': 1,
  'run.layers': 16,
};

claim(
  'A hotter store: between 50 and 60 °C each kelvin takes a quarter to a half off the time.',
  () => {
    for (const key of reductions) {
      for (let temperature = 50; temperature < 60; temperature++) {
        const kept =
          resultOf(key, { temperature: temperature + 1 }) / resultOf(key, { temperature });
        expect(1 - kept).toBeGreaterThan(0.25);
        expect(1 - kept).toBeLessThan(0.5);
      }
    }
  },
);

claim(
  'below 45 °C infinite: nothing is counted as killed, and from 20 °C it may multiply; beyond the last printed time held, so that no faster kill is claimed',
  () => {
    for (const key of reductions) {
      expect(resultOf(key, { temperature: 44.9 })).toBe(Infinity);
      expect(resultOf(key, { temperature: 95 })).toBe(resultOf(key, { temperature: 85 }));
      expectMoves(key, { temperature: [46, 60] }, { temperature: 'down' });
    }
  },
);

claim(
  '44 to 71 °C, adults; table and curve of the same tests differ by two times and more below 52 °C.',
  () => {
    for (const temperature of [45, 47, 49, 51, 52]) {
      const times =
        resultOf('longestScald', { temperature }) / resultOf('shortestScald', { temperature });
      expect(times).toBeGreaterThanOrEqual(2);
    }
  },
);

claim(
  'below 44 °C infinite, as no time is printed: long contact may still harm; above 71 °C held, where it is shorter still',
  () => {
    for (const key of scalds) {
      expect(resultOf(key, { temperature: 43.9 })).toBe(Infinity);
      expect(resultOf(key, { temperature: 90 })).toBe(resultOf(key, { temperature: 72 }));
    }
  },
);

claim(
  'The temperature at the outlet: a thermostatic mixing valve lowers it while the store stays hot enough against Legionella.',
  () => {
    for (const key of scalds) expectMoves(key, { temperature: [45, 70] }, { temperature: 'down' });
  },
);

claim('The hotter, the sooner it scalds.', () => {
  for (const key of scalds) expectMoves(key, { temperature: [45, 70] }, { temperature: 'down' });
});

claim('The lowest part under the coil, which never gets hot, is the usual blind spot.', () => {
  const day = toEnd(dayRun(houseWith(oneDay)));
  expect(day.hygiene.coldestTenth.most).toBeLessThan(60);
  expect(day.hygiene.neverHot).toBeGreaterThan(0.21 * (0.07 / 1.32)); // the coil begins at 0.08 m
});

claim(
  'What lies under the coil, below …, is hardly heated by it: a pump that turns the store over, or a lower heater, would reach it (common practice, no source).',
  () => {
    const bottom = (settings: Settings) => {
      const { of, samples } = runOf(
        houseWith({
          'heating.arrangement': 'hotWaterOnly',
          'coil.bottom': 0.3,
          'coil.top': 0.7,
          ...settings,
        }),
      ).trace;
      return of.bottom[samples - 1];
    };
    expect(bottom({})).toBeLessThan(20);
    const heater: Settings = {
      'immersion.used': 'withBoiler',
      'immersion.height': 0.02,
      'run.duration': 6,
    };
    expect(bottom(heater)).toBeGreaterThan(50);
  },
);

claim(
  'Hot water is allowed at set times only: see that the whole store reaches 60 °C in them, or the cooler part is where Legionella multiplies.',
  () => {
    const { trace } = runOf(presetWith('programme-too-short', { 'run.duration': 1 }));
    expect(trace.of.top[trace.samples - 1]).toBeLessThan(60); // twenty minutes do not get it there
  },
);
