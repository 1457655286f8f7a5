import { expect } from 'vitest';
import { causes } from '../../shared/causes.ts';
import { healthyVariant } from '../../shared/presets.ts';
import { claim } from '../support/claim.ts';
import { expectFalling, expectRising } from '../support/expectOrder.ts';
import {
  houseWith,
  measuresWith,
  presetWith,
  recoveryWith,
  runOf,
  type Settings,
  sampled,
} from '../support/houseWith.ts';

const alone: Settings = { 'heating.arrangement': 'hotWaterOnly' };
const fault = (key: string, settings: Settings = {}) => runOf(presetWith(key, settings));
const healthy = (key: string) => {
  const cause = causes.find((row) => row.key === key);
  if (!cause) throw new Error(`${key} is no cause; expected one`);
  return runOf(healthyVariant(cause));
};
const recovery = (key: string, settings: Settings = {}) =>
  fault(key, settings).measures.recovery ?? Infinity;

claim('The boiler gives all it can for nearly the whole time, and it cannot give more.', () => {
  const { outputLimitTime, recovery: all } = fault('undersized-boiler').measures;
  expect(outputLimitTime).toBeGreaterThan(0.9 * (all ?? Infinity));
  expect(recovery('undersized-boiler', { 'boiler.output': 12 })).toBeLessThan(0.85 * (all ?? 0));
  expect(recovery('undersized-boiler', { 'coil.length': 18 })).toBeGreaterThan(
    0.97 * (all ?? Infinity),
  );
});

claim(
  'The coil takes less than the boiler’s least, so the burner goes off at its target and has to rest.',
  () => {
    const { meanCoilHeat, burnerStarts, restingTime } = fault('short-cycling', alone).measures;
    expect(meanCoilHeat).toBeLessThan(18e3);
    expect(burnerStarts).toBeGreaterThan(5);
    expect(restingTime).toBeGreaterThan(20 * 60);
  },
);

claim(
  'The coil takes less than the boiler’s least output: the burner is at its least for … and goes on and off.',
  () => {
    const { minimumTime, burnerStarts } = fault('short-cycling', alone).measures;
    expect(minimumTime).toBeGreaterThan(5 * 60);
    expect(burnerStarts).toBeGreaterThan(5);
  },
);

claim(
  'Each time the flow reaches its target the burner rests for the whole minimum off time, however cold the store is.',
  () => {
    for (const minutes of [5, 15, 30]) {
      for (const start of [0, 40]) {
        const { trace, marks } = fault('long-rests', {
          ...alone,
          'boiler.minimumOff': minutes,
          'start.hotShare': start,
        });
        const offs = marks.filter(({ kind }) => kind === 'burnerOff').map(({ at }) => at);
        const ons = marks.filter(({ kind }) => kind === 'burnerLit').map(({ at }) => at);
        const rests = offs.flatMap((off) => {
          const on = ons.find((at) => at > off);
          return on === undefined ? [] : [on - off];
        });
        for (const rest of rests) expect(rest).toBeGreaterThanOrEqual(minutes * 60 - 0.1);
        expect(trace.samples).toBeGreaterThan(0);
      }
    }
    expectRising(
      [3, 8, 15].map((minutes) => recovery('long-rests', { 'boiler.minimumOff': minutes })),
    );
  },
);

claim(
  'Friction in the narrow pipe lets so little water through that it comes back cold and brings little heat.',
  () => {
    const [narrow, sound] = [fault('small-bore').measures, healthy('small-bore').measures];
    expect(narrow.coilFlow).toBeLessThan(sound.coilFlow / 3);
    expect(narrow.meanReturn).toBeLessThan((sound.meanReturn ?? 0) - 5);
    expect(narrow.meanCoilHeat).toBeLessThan(0.6 * (sound.meanCoilHeat ?? 0));
  },
);

claim(
  'Too little water carries the heat: the flow is hot, the return cold, and the coil short of it.',
  () => {
    const run = fault('weak-circulator', alone);
    expect(sampled(run, 'flow', 1200)).toBeGreaterThan(75);
    expect(run.measures.meanReturn).toBeLessThan((measuresWith(alone).meanReturn ?? 0) - 5);
    expectFalling(
      [5, 1, 0.4].map(
        (head) =>
          measuresWith({ ...alone, 'circulator.shutOffHead': head, 'circulator.largestFlow': 20 })
            .meanCoilHeat ?? 0,
      ),
    );
  },
);

claim(
  'The resistance before the coil leaves a trickle, whatever boiler and circulator could do.',
  () => {
    const as = fault('half-shut-valve').measures;
    expect(as.coilFlow).toBeLessThan(healthy('half-shut-valve').measures.coilFlow / 4);
    expect(recovery('half-shut-valve', { 'boiler.output': 36 })).toBeGreaterThan(
      0.95 * (as.recovery ?? Infinity),
    );
    const strong = fault('half-shut-valve', { 'circulator.shutOffHead': 7 }).measures;
    expect(strong.coilFlow).toBeLessThan(healthy('half-shut-valve').measures.coilFlow / 3);
  },
);

claim(
  'The pipes have to be warmed before the coil gets anything, and lose heat all the way.',
  () => {
    const [bare, sound] = [fault('bare-primary'), healthy('bare-primary')];
    const firstHeat = (run: typeof bare) =>
      run.trace.time[run.trace.of.coilHeat.findIndex((heat) => heat > 5e3)];
    expect(firstHeat(bare)).toBeGreaterThan(firstHeat(sound) + 30);
    expect(bare.balance.lostByPipes).toBeGreaterThan(5 * sound.balance.lostByPipes);
  },
);

claim(
  'Whenever the rooms call, the radiators take part of the flow and of the boiler’s heat.',
  () => {
    const { phases, trace, measures } = fault('heating-shares');
    const shared = phases.filter(({ coilRuns, radiatorsRun }) => coilRuns && radiatorsRun);
    expect(shared.length).toBeGreaterThan(3); // the room stat goes on and off
    for (const { from, to } of shared) {
      const sample = trace.time.findIndex((time) => time >= (from + to) / 2);
      expect(trace.of.radiatorFlow[sample]).toBeGreaterThan(0);
      expect(trace.of.radiatorHeat[sample]).toBeGreaterThan(2e3);
    }
    expect(measures.meanCoilHeat).toBeLessThan(
      healthy('heating-shares').measures.meanCoilHeat ?? 0,
    );
  },
);

claim(
  'The cylinder loses the boiler half-way and has to wait while the rooms have their turn.',
  () => {
    const { phases, measures } = fault('turn-taken');
    const turn = phases.find(
      ({ from, radiatorsRun, coilRuns }) => from > 0 && radiatorsRun && !coilRuns,
    );
    expect(turn?.from).toBeGreaterThan(15 * 60);
    expect(turn?.to).toBeLessThan(measures.recovery ?? 0);
  },
);

claim(
  'The programme shuts the valve before the stat is satisfied, and the rest waits for the next time.',
  () => {
    expect(recovery('programme-too-short')).toBeGreaterThan(90 * 60); // from six to half past seven
  },
);

claim(
  'The hot-water programme is shut for … while the stat calls: a longer or earlier time would let it finish.',
  () => {
    const timed = (from: number, minutes: number, hours: number) =>
      recoveryWith({
        ...alone,
        'programme.hotWater': 'timed',
        'programme.hotWaterFrom': from,
        'programme.hotWaterFor': minutes,
        'run.duration': hours, // from six
      });
    expect(timed(6, 20, 2)).toBe(Infinity);
    expect(timed(6, 60, 2)).toBeLessThan(Infinity);
    expect(timed(7.5, 60, 2)).toBe(Infinity);
    expect(timed(6.5, 60, 2)).toBeLessThan(Infinity);
  },
);

claim('Always allowed, or at the set times only; outside them a call is not answered.', () => {
  const { trace } = runOf(
    houseWith({
      ...alone,
      'programme.hotWater': 'timed',
      'programme.hotWaterFrom': 7.5,
      'run.duration': 1,
    }),
  );
  const heat = [...trace.of.coilHeat.subarray(0, trace.samples)].filter(Number.isFinite);
  expect(Math.max(0, ...heat)).toBeLessThan(1);
});

claim(
  'The stat lets the store cool by the whole differential, and the household draws from what is left before it calls.',
  () => {
    expectRising(
      [6, 10, 20].map(
        (differential) =>
          fault('wide-differential', { 'stat.differential': differential }).measures.waitingTime,
      ),
    );
  },
);

claim('The trade’s formula, all this heat at full boiler output, would say …: … too few.', () => {
  for (const key of [
    'healthy-house',
    'partly-used',
    'large-family',
    'rapid-coil',
    'undersized-boiler',
    'far-away',
  ]) {
    const {
      recovery: all,
      waitingTime,
      ruleTime,
    } = fault(key, { 'immersion.used': 'withBoiler' }).measures;
    expect((all ?? 0) - waitingTime).toBeGreaterThan(ruleTime ?? Infinity);
    const boilerOnly = fault(key).measures;
    expect((boilerOnly.recovery ?? 0) - boilerOnly.waitingTime).toBeGreaterThan(
      boilerOnly.ruleTime ?? Infinity,
    );
  }
});
