import { describe, expect } from 'vitest';
import type { FieldPath } from '../../shared/variant.ts';
import { makeSensorChain } from '../../sim/control/sensorChain.ts';
import { claim } from '../support/claim.ts';
import { expectMoves } from '../support/expectMoves.ts';
import { expectFalling, expectRising } from '../support/expectOrder.ts';
import {
  houseWith,
  measuresWith,
  presetWith,
  recoveryWith,
  runOf,
  sampled,
  type Settings,
} from '../support/houseWith.ts';
import { resultOf, termsOf } from '../support/recordOf.ts';

const alone: Settings = { 'heating.arrangement': 'hotWaterOnly' };

/** What a controller reads where the element is at 60 °C. */
const readsAt60 = (settings: Settings) => makeSensorChain(houseWith(settings).sensor).reading(60);
const thermistor: Settings = { 'sensor.element': 'thermistor' };
const platinum: Settings = { 'sensor.element': 'platinum' };
const one = (path: FieldPath) => (value: number | string) => ({ [path]: value });
const joint = one('sensor.jointResistance');
const damp = one('sensor.dampResistance');

describe('ohms', () => {
  claim('Fewer ohms than at 25 °C mean warmer, more mean colder.', () => {
    expectMoves('thermistorTemperature', { resistance: [300, 1e5] }, { resistance: 'down' });
    expect(resultOf('thermistorTemperature', { resistance: 10_000 })).toBeCloseTo(25, 9);
  });
  claim('A thermistor loses 3 to 5 % of its ohms with every kelvin it warms.', () => {
    for (const beta of [3435, 3977]) {
      for (const temperature of [0, 25, 50, 75]) {
        const given = { beta, temperature };
        const kept =
          resultOf('thermistorResistance', { ...given, temperature: temperature + 1 }) /
          resultOf('thermistorResistance', given);
        expect(Math.round(100 * (1 - kept))).toBeGreaterThanOrEqual(3);
        expect(Math.round(100 * (1 - kept))).toBeLessThanOrEqual(5);
      }
    }
  });
  claim('Another R25 moves the whole curve, another beta tilts it about 25 °C.', () => {
    expectMoves(
      'thermistorResistance',
      { temperature: [-10, 90], r25: [1e3, 1e5] },
      { r25: 'up', temperature: 'down' },
    );
    expectMoves(
      'thermistorResistance',
      { temperature: [26, 90], beta: [3000, 4500] },
      { beta: 'down' },
    );
    expectMoves(
      'thermistorResistance',
      { temperature: [-10, 24], beta: [3000, 4500] },
      { beta: 'up' },
    );
  });
  claim(
    'A thermistor loses ohms as it warms, so a bad joint reads too cold: the store then gets hotter than the controller shows.',
    () => {
      expectMoves('thermistorResistance', { temperature: [-10, 90] }, { temperature: 'down' });
      for (const ohms of [100, 300]) {
        const run = runOf(houseWith({ ...alone, ...thermistor, ...joint(ohms) }));
        const at = run.measures.recovery ?? Number.NaN;
        expect(run.measures.topAtSatisfied).toBeGreaterThan(sampled(run, 'sensor', at) + 1);
      }
    },
  );
  claim(
    'Platinum gains a few ohms in a thousand with each kelvin, so a bad joint reads too warm.',
    () => {
      for (const temperature of [0, 40, 80]) {
        const ohms = (T: number) => resultOf('platinum', { temperature: T });
        const gain = ohms(temperature + 1) / ohms(temperature) - 1;
        expect(gain).toBeGreaterThan(0.002);
        expect(gain).toBeLessThan(0.005);
      }
      expectRising([0, 1, 3, 10].map((ohms) => readsAt60({ ...platinum, ...joint(ohms) })));
    },
  );
  claim('How steeply its resistance falls, between 25 and 85 °C.', () => {
    const fall = (beta: number) =>
      resultOf('thermistorResistance', { beta, temperature: 25 }) /
      resultOf('thermistorResistance', { beta, temperature: 85 });
    expectRising([3000, 3435, 3977, 4500].map(fall));
  });
  claim('Reading it with the R25 or the beta of another type shifts every temperature.', () => {
    for (const other of [{ r25: 12_000 }, { beta: 3435 }]) {
      for (const resistance of [1500, 2463, 30_000]) {
        const shift =
          resultOf('thermistorTemperature', { resistance, ...other }) -
          resultOf('thermistorTemperature', { resistance });
        expect(Math.abs(shift)).toBeGreaterThan(1);
      }
    }
  });
  claim('The coefficients belong to one type of thermistor, with the resistance in ohms.', () => {
    expect(termsOf('steinhartHart')).toEqual(['A', 'B', 'C', 'resistance']);
  });
  claim(
    'extended while the ohms fall; beyond that the temperature stays at the end of the falling part',
    () => {
      const turning = { A: 1.5e-3, B: 2e-4, C: -2e-7 }; // turns at exp(18.3) ohms
      const at = (resistance: number) => resultOf('steinhartHart', { ...turning, resistance });
      expect(at(Math.exp(19))).toBeCloseTo(at(Math.exp(25)), 9);
    },
  );
  claim('extended; infinite where the ohms are too few for any temperature', () => {
    expect(resultOf('thermistorTemperature', { resistance: 0.01, beta: 3435 })).toBe(Infinity);
  });
  claim(
    'Platinum gains 0.39 % of its ohms with every kelvin, so each ohm of lead counts, and reads high.',
    () => {
      const gain =
        resultOf('platinum', { temperature: 1 }) / resultOf('platinum', { temperature: 0 }) - 1;
      expect(gain).toBeCloseTo(0.0039, 4);
      expectRising(
        [0, 30, 100].map((length) => readsAt60({ ...platinum, 'sensor.leadLength': length })),
      );
    },
  );
  claim('Only the resistance at 0 °C: 100 Ω or 1000 Ω.', () => {
    expectMoves(
      'platinum',
      { r0: [10, 1e4], temperature: [-20, 120] },
      { r0: 'up', temperature: 'up' },
    );
  });
  claim('copper at 20 °C; each kelvin warmer adds 0.4 % (common practice)', () => {
    expect(termsOf('leadResistance')).toEqual(['length', 'perLength']); // always taken at 20 °C
  });
  claim('Thicker cores, a shorter lead, or a third and fourth core to measure around it.', () => {
    expectMoves(
      'leadResistance',
      { length: [1, 300], perLength: [0.01, 0.05] },
      { length: 'up', perLength: 'up' },
    );
    const read = (section: string) =>
      readsAt60({ ...platinum, 'sensor.leadLength': 50, 'sensor.leadSection': section });
    expectFalling(['0.5', '0.75', '1.0'].map(read));
  });
  claim('Whatever stands in series with the element adds its ohms.', () => {
    expectMoves(
      'ohmsInSeries',
      { element: [100, 1e5], lead: [0, 30], joint: [0, 1e4] },
      { element: 'up', lead: 'up', joint: 'up' },
    );
  });
  claim('A sound joint, a shorter or thicker lead.', () => {
    expectMoves('ohmsInSeries', { lead: [0, 30], joint: [0, 1e4] }, { lead: 'up', joint: 'up' });
  });
  claim('A damp path beside the element takes ohms away, so a thermistor reads too warm.', () => {
    expectRising([0, 1e6, 1e5, 1e4].map((ohms) => readsAt60({ ...thermistor, ...damp(ohms) })));
  });
  claim('A dry box and a sound joint.', () => {
    expectMoves('ohmsWithDamp', { seen: [500, 1e5], damp: [1e3, 1e6] }, { damp: 'up' });
  });
});

describe('sensors that mislead', () => {
  claim(
    'This sensor may read lower than the water is: the store gets hotter than the controller shows, and scalds the sooner.',
    () => {
      const top = (settings: Settings) =>
        measuresWith({ ...alone, ...settings }).topAtSatisfied ?? 0;
      const sound = top({});
      for (const mounting of ['strappedBare', 'strappedLagged'])
        expect(top({ 'stat.mounting': mounting })).toBeGreaterThan(sound + 1);
      expect(top({ ...thermistor, ...joint(300) })).toBeGreaterThan(sound + 1);
      expect(
        runOf(houseWith({ ...alone, ...platinum, ...damp(20_000) })).measures.hottest,
      ).toBeGreaterThan(sound + 10);
      expectMoves('shortestScald', { temperature: [45, 70] }, { temperature: 'down' });
    },
  );
  claim(
    'This sensor may read hotter than the water is: the store is then colder than the controller shows, and Legionella is not reliably killed.',
    () => {
      const top = (settings: Settings) =>
        measuresWith({ ...alone, ...settings }).topAtSatisfied ?? 0;
      const sound = top({});
      expect(top({ ...thermistor, ...damp(20_000) })).toBeLessThan(sound - 2);
      expect(top({ ...platinum, ...joint(30) })).toBeLessThan(sound - 5);
      const mistaken = { ...thermistor, 'sensor.r25': 9_000, 'sensor.expects': 'thermistor' };
      expect(top(mistaken)).toBeLessThan(sound - 1);
    },
  );
  claim(
    'Resistance in series makes a thermistor look colder, so the stat is satisfied late or not at all.',
    () => {
      expectFalling([0, 100, 500].map((ohms) => readsAt60({ ...thermistor, ...joint(ohms) })));
      expectRising(
        [0, 100, 300].map((ohms) => recoveryWith({ ...alone, ...thermistor, ...joint(ohms) })),
      );
      expect(recoveryWith({ ...alone, ...thermistor, ...joint(2000) })).toBe(Infinity);
    },
  );
  claim(
    'It follows late and settles between water and air: it reads low, and the store has to get hotter before it is satisfied.',
    () => {
      const { topAtSatisfied } = runOf(presetWith('badly-strapped')).measures;
      expect(topAtSatisfied).toBeGreaterThan((measuresWith().topAtSatisfied ?? 0) + 3);
      expectMoves(
        'sensorSettles',
        { water: [40, 80], share: [0.01, 0.5], air: [0, 30] },
        { share: 'down', air: 'up' },
      );
    },
  );
  claim('A pocket, paste, or lagging over the sensor.', () => {
    expectMoves(
      'sensorSettles',
      { water: [40, 80], share: [0.01, 0.5], air: [0, 30] },
      { share: 'down' },
    );
    const late = (mounting: string) => recoveryWith({ ...alone, 'stat.mounting': mounting });
    expectFalling(['strappedBare', 'strappedLagged', 'dryPocket', 'wetPocket'].map(late));
  });
  claim('Heat-transfer paste and a tight pocket shorten the lag.', () => {
    expectMoves(
      'sensorFollows',
      { water: [61, 90], reading: [10, 60], lag: [10, 900] },
      { lag: 'down' },
    );
    expectRising([10, 60, 300].map((lag) => recoveryWith({ ...alone, 'stat.lag': lag })));
  });
  claim('The right characteristic, sound joints.', () => {
    expectMoves('readsTrue', { bead: [10, 80], fault: [-10, 10] }, { bead: 'up' });
    expect(readsAt60(thermistor)).toBeCloseTo(60, 1); // its lead of 5 m is 0.4 Ω
  });
});
