import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { causes } from '../../../shared/causes.ts';
import { defaultVariant } from '../../../shared/fields.ts';
import type { DelayKey, MinutesByCause } from '../../../shared/minutes.ts';
import { presetNamed, presetVariant } from '../../../shared/presets.ts';
import { problemsOf } from '../../../shared/problems.ts';
import { type Variant, withSetting } from '../../../shared/variant.ts';
import { minutesByCause, timeWithout } from '../../../sim/run/minutes.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { toEnd } from '../../../sim/run/toEnd.ts';
import { plantWithout, removable } from '../../../sim/run/withoutCauses.ts';
import { slotsOf } from '../../../sim/solve/slots.ts';
import { anyHouse } from '../../make/anyHouse.ts';
import { anyReheat } from '../../make/anyReheat.ts';

const HUNDREDTH = 0.6; // s, 0.01 min: what is promised
const sumOf = ({ shares }: MinutesByCause) => shares.reduce((sum, { time }) => sum + time, 0);
const of = (key: string): Variant => {
  const preset = presetNamed(key);
  if (!preset) throw new Error(`${key} is no example`);
  return presetVariant(preset);
};
const minutesOf = (variant: Variant) => toEnd(minutesByCause(variant));
const inMinutes = ({ shares }: MinutesByCause, key: DelayKey) =>
  (shares.find((share) => share.key === key)?.time ?? Number.NaN) / 60;

/** Within 0.01 min, and nothing is shared out to what is absent. */
function expectToAddUp(found: MinutesByCause) {
  const missing = sumOf(found) - ((found.whole ?? Number.NaN) - (found.ideal ?? Number.NaN));
  expect(Math.abs(missing)).toBeLessThan(HUNDREDTH);
  const absent = new Set(found.absent);
  expect(found.shares.filter(({ key }) => absent.has(key))).toEqual([]);
}

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

describe('on random installations', () => {
  test('of 200 that reheat from the base all is shared out, and adds up within 0.01 min', () => {
    fc.assert(
      fc.property(anyReheat, (drawn) => {
        const variant = withSetting(withSetting(drawn, 'run.layers', 10), 'run.duration', 6 * 3600);
        const found = minutesOf(variant);
        expect(found.runs).toBe(found.of);
        expect(found.of).toBeGreaterThanOrEqual(8);
        expectToAddUp(found);
      }),
      { numRuns: 200, seed: 5 },
    );
  }, 300_000);

  test('of 200 houses those that get there add up after the first round, and the whole is that of the run', () => {
    const seen = new Set<DelayKey>();
    let shared = 0;
    fc.assert(
      fc.property(anyHouse, (variant) => {
        expect(problemsOf(variant)).toEqual([]);
        const { recovery } = simulateToEnd(variant).measures;
        if (recovery === null) return;
        const run = minutesByCause(variant);
        let step = run.next();
        while (!step.done && typeof step.value === 'number') step = run.next();
        const found =
          typeof step.value === 'object' && 'study' in step.value ? step.value.study : step.value;
        if (typeof found === 'number') throw new Error('no minutes');
        if (!('shares' in found)) throw new Error('no minutes');
        expect(found.whole).toBe(recovery);
        if (found.ideal === null) return;
        shared++;
        for (const { key } of found.shares) seen.add(key);
        expectToAddUp(found);
      }),
      { numRuns: 200, seed: 11 },
    );
    console.log(`minutes of 200 random houses: ${shared} get there and are shared out`);
    expect(shared).toBeGreaterThan(100);
    expect(seen.size).toBe(9);
  }, 300_000);

  test('of 10 houses those that get there add up in the end', () => {
    fc.assert(
      fc.property(anyHouse, (variant) => {
        if (simulateToEnd(variant).measures.recovery === null) return;
        const found = minutesOf(variant);
        expect(found.runs).toBe(found.of);
        if (found.ideal !== null) expectToAddUp(found);
      }),
      { numRuns: 10, seed: 4 },
    );
  }, 300_000);

  test('of 200 houses what is taken away and is not there changes nothing', () => {
    fc.assert(
      fc.property(anyHouse, (variant) => {
        const from = removable(variant);
        const short = 1800; // s are enough to see a difference
        const cut = removable(withSetting(variant, 'run.duration', short));
        const end = (keys: readonly DelayKey[]) =>
          toEnd(timeWithout(cut, keys, short)).marched?.end.state;
        const without = from.absent.filter((key) => key !== 'heating'); // priority may stand for none
        if (without.length > 0) expect(end(without)).toEqual(end([]));
      }),
      { numRuns: 200, seed: 9 },
    );
  }, 300_000);

  test('of 200 the boiler alone takes its heat over its output, within 0.01 min, draws and heaters included', () => {
    let counted = 0;
    let withDraw = 0;
    let withHeater = 0;
    fc.assert(
      fc.property(anyHouse, (variant) => {
        const from = removable(variant);
        const all = plantWithout(from, from.present);
        const { time, marched } = toEnd(timeWithout(from, from.present, 6 * 3600));
        const calls = marched?.marks[0]?.mark;
        if (time === null || marched === null || calls?.kind !== 'hotWaterCalled' || calls.at > 0) {
          return;
        }
        counted++;
        if (variant.draw.volume > 0 && variant.draw.startsAt < time) withDraw++;
        if (variant.immersion.used === 'withBoiler') withHeater++;
        const given = marched.end.state[slotsOf(all).fromBoiler];
        expect(Math.abs(given / variant.boiler.output - time)).toBeLessThan(HUNDREDTH);
      }),
      { numRuns: 200, seed: 3 },
    );
    console.log(
      `full output: ${counted} of 200, ${withDraw} with a draw, ${withHeater} with a heater`,
    );
    expect(counted).toBeGreaterThan(150);
    expect(withDraw).toBeGreaterThan(10);
    expect(withHeater).toBeGreaterThan(10);
  }, 300_000);
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
