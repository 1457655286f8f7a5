import { describe, expect, test } from 'vitest';
import { causes } from '../../../shared/causes.ts';
import { defaultVariant } from '../../../shared/fields.ts';
import type { DelayKey, MinutesByCause } from '../../../shared/minutes.ts';
import { presetNamed, presetVariant } from '../../../shared/presets.ts';
import { type Variant, withSetting } from '../../../shared/variant.ts';
import { minutesByCause, timeWithout } from '../../../sim/run/minutes.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { toEnd } from '../../../sim/run/toEnd.ts';
import { removable } from '../../../sim/run/withoutCauses.ts';

const sumOf = ({ shares }: MinutesByCause) => shares.reduce((sum, { time }) => sum + time, 0);
const of = (key: string): Variant => {
  const preset = presetNamed(key);
  if (!preset) throw new Error(`${key} is no example`);
  return presetVariant(preset);
};
const minutesOf = (variant: Variant) => toEnd(minutesByCause(variant));
const inMinutes = ({ shares }: MinutesByCause, key: DelayKey) =>
  (shares.find((share) => share.key === key)?.time ?? Number.NaN) / 60;

/** All that is posted on the way. */
function posted(variant: Variant): { estimates: MinutesByCause[]; last: MinutesByCause } {
  const estimates: MinutesByCause[] = [];
  const run = minutesByCause(variant);
  for (;;) {
    const step = run.next();
    if (step.done) return { estimates, last: step.value };
    if (typeof step.value === 'number') continue;
    const { study } = step.value;
    if (study.kind === 'minutes') estimates.push(study);
  }
}

describe('the healthy house', () => {
  const variant = defaultVariant('healthy');
  const { estimates, last } = posted(variant);

  test('has 7 causes and 2 that are absent, from 128 runs', () => {
    expect(last.shares).toHaveLength(7);
    expect(last.absent).toEqual(['heating', 'scale']);
    expect([last.runs, last.of]).toEqual([128, 128]);
  });

  test('has the recovery of its run as the whole, to the last bit', () => {
    expect(last.whole).toBe(simulateToEnd(variant).measures.recovery);
  });

  test('adds up at the end and in each of its 2 estimates', () => {
    expect(estimates).toHaveLength(2);
    for (const found of [...estimates, last]) {
      expect(sumOf(found)).toBeCloseTo((last.whole ?? 0) - (last.ideal ?? 0), 6);
    }
  });

  test('has first estimates within 1 min of the end, from 16 runs', () => {
    expect(estimates[0].runs).toBe(16);
    estimates[0].shares.forEach(({ time }, i) => {
      expect(Math.abs(time - last.shares[i].time)).toBeLessThan(60);
    });
  });

  test('at full output would take 29.4 min: 206 l from 10 to 60 °C, and the wall, by hand', () => {
    // water above the foot of the coil at 0.08 of 1.32 m, 4 % less dense at the end: 197 l × 4.12 MJ/m³K × 50 K = 40.7 MJ; the
    // wall and the losses add a few percent; 24 kW give 42.3 MJ in 29.4 min
    expect((last.ideal ?? 0) / 60).toBeGreaterThan(40.7 / 0.024 / 60 / 1.001);
    expect((last.ideal ?? 0) / 60).toBeLessThan((40.7 * 1.08) / 0.024 / 60);
  });
});

describe('the examples have their own cause as the largest', () => {
  const own: Record<string, DelayKey> = {
    'flow-too-cool': 'flowLimit',
    'short-cycling': 'coil', // a boiler too large for its coil: the coil is too small for it
    'small-bore': 'primaryFlow',
    'weak-circulator': 'primaryFlow',
    'half-shut-valve': 'primaryFlow',
    'bare-primary': 'pipes',
    'undersized-coil': 'coil',
    'scaled-coil': 'scale',
    'heating-shares': 'heating',
    'turn-taken': 'heating',
    'programme-too-short': 'times',
    'sensor-too-low': 'sensor',
    'badly-strapped': 'sensor',
    'wrong-characteristic': 'sensor',
    'bad-joint': 'sensor',
    'wide-differential': 'sensor',
  };
  // told below, because it is otherwise: undersized-boiler, long-rests, sensor-too-high
  test('and there is a row for all but 3 of them', () => {
    const others = causes.map(({ key }) => key).filter((key) => !(key in own));
    expect(others).toEqual(['undersized-boiler', 'long-rests', 'sensor-too-high']);
  });

  test.each(Object.entries(own))(
    '%s: %s',
    (key, cause) => {
      // fewer layers than usual, for speed: the largest stays the largest
      const found = minutesOf(withSetting(of(key), 'run.layers', 24));
      const [most] = [...found.shares].sort((a, b) => b.time - a.time);
      expect(most.key).toBe(cause);
    },
    60_000,
  );

  test('a boiler of 9 kW is not a cause: it takes 97 % of the time at full output', () => {
    const { whole, ideal } = minutesOf(of('undersized-boiler'));
    expect((ideal ?? 0) / (whole ?? 1)).toBeGreaterThan(0.97);
  }, 60_000);

  test('long rests are not the largest: without any one of boiler, flow limit, primary flow and coil there are none, so each has a like part of them', () => {
    const rests = minutesOf(of('long-rests'));
    const healthy = minutesOf(defaultVariant('healthy'));
    for (const key of ['boiler', 'flowLimit', 'primaryFlow', 'coil'] as const) {
      const more = inMinutes(rests, key) - inMinutes(healthy, key);
      // a quarter of the 13.8 min by which it is slower, give or take what else each does
      expect(Math.abs(more - 13.8 / 4)).toBeLessThan(0.2);
    }
  }, 60_000);

  test('a sensor too high is never satisfied: without it it would be', () => {
    const found = minutesOf(of('sensor-too-high'));
    expect(found.whole).toBeNull();
    expect(found.shares).toEqual([]);
    expect(found.wouldHelp).toEqual([['sensor']]);
  });
});

describe('other cases', () => {
  const healthy = withSetting(defaultVariant('healthy'), 'run.layers', 16);

  test('an immersion heater instead of the boiler leaves nothing to share out', () => {
    const found = minutesOf(withSetting(healthy, 'immersion.used', 'insteadOfBoiler'));
    expect(found).toMatchObject({ whole: null, ideal: null, shares: [], runs: 0, of: 0 });
    expect(found.absent).toHaveLength(9);
  });

  test('a store that is hot as the run starts takes 0 min, and the sensor is what would help', () => {
    const hot = withSetting(withSetting(healthy, 'start.hotShare', 1), 'start.hotTemperature', 60);
    const found = minutesOf(hot);
    expect(found.ideal).toBe(0);
    expect(found.whole).toBeNull();
    expect(found.wouldHelp).toEqual([['sensor']]);
  });

  test('with all 9 causes there are 8, and the scale counts with the coil', () => {
    const nine = withSetting(
      withSetting(healthy, 'coil.scaleThickness', 0.001),
      'heating.arrangement',
      'simultaneous',
    );
    const from = removable(nine);
    expect(from.present).toHaveLength(8);
    expect(from.absent).toEqual([]);
    expect(from.scaleWithCoil).toBe(true);
    const clean = toEnd(
      timeWithout(removable(withSetting(nine, 'coil.scaleThickness', 0)), ['coil'], 3e4),
    );
    expect(toEnd(timeWithout(from, ['coil'], 3e4)).time).toBe(clean.time);
  });

  test('a stat that is satisfied long before the store is hot: the sensor takes minutes off', () => {
    // the top 40 % is hot, and the sensor stands in what is heated first
    const early = withSetting(
      withSetting(healthy, 'stat.setPoint', 60),
      'sensor.element',
      'thermistor',
    );
    const damp = withSetting(early, 'sensor.dampResistance', 20_000);
    const found = minutesOf(damp);
    expect(inMinutes(found, 'sensor')).toBeLessThan(-1);
    expect(sumOf(found)).toBeCloseTo((found.whole ?? 0) - (found.ideal ?? 0), 6);
  });

  test('scale that is taken away alone leaves the coil to resist, and the other way round', () => {
    const scaled = withSetting(healthy, 'coil.scaleThickness', 0.002);
    const from = removable(scaled);
    const time = (keys: readonly DelayKey[]) =>
      toEnd(timeWithout(from, keys, 3e4)).time ?? Number.NaN;
    expect(time(['scale'])).toBeLessThan(time([]));
    expect(time(['coil'])).toBeLessThan(time([]));
    expect(time(['coil', 'scale'])).toBeLessThan(Math.min(time(['coil']), time(['scale'])));
  });
});
