import { describe, expect } from 'vitest';
import type { Change } from '../../shared/changes.ts';
import type { MinutesByCause } from '../../shared/minutes.ts';
import {
  changeBuys,
  changesHeading,
  changesTold,
  othersSentence,
} from '../../shared/sentences/changes.ts';
import { delayNotes, delaySentence } from '../../shared/sentences/minutes.ts';
import { spreadSentence } from '../../shared/sentences/spread.ts';
import type { Spread } from '../../shared/spread.ts';
import { unknownsOf } from '../../shared/unknowns.ts';
import type { FieldPath } from '../../shared/variant.ts';
import { minutesByCause, timeWithout } from '../../sim/run/minutes.ts';
import { spreadOf } from '../../sim/run/spread.ts';
import { toEnd } from '../../sim/run/toEnd.ts';
import { PossiblePlants } from '../../sim/run/unknowns.ts';
import { removable } from '../../sim/run/withoutCauses.ts';
import { claim } from '../support/claim.ts';
import { expectFalling } from '../support/expectOrder.ts';
import { houseWith, recoveryWith, type Settings } from '../support/houseWith.ts';

const coarse: Settings = { 'heating.arrangement': 'hotWaterOnly', 'run.layers': 12 };
const spaced = (text: string) => text.replaceAll('\u00a0', ' ');

/** How much sooner some changes make a reheat, s. */
function saved(before: Settings, ...changes: readonly Settings[]): number {
  const after: Settings = Object.assign({}, before, ...changes);
  return recoveryWith({ ...coarse, ...before }) - recoveryWith({ ...coarse, ...after });
}

describe('practical changes', () => {
  const change = (saves: number | null, recovery: number | null = 2000): Change => ({
    key: 'invented',
    cause: 'coil',
    text: 'Do something',
    variant: houseWith(),
    recovery,
    saves,
    cautions: [],
  });
  const others = (changes: readonly Change[]) =>
    spaced(othersSentence(changesTold(changes).others));

  claim(
    'Each is a run of its own on this installation; what two save together is not their sum.',
    () => {
      const cool: Settings = { 'boiler.hotWaterFlow': 65 };
      const scaled: Settings = { 'coil.scaleThickness': 1 };
      const coil: Settings = { 'coil.length': 18 };
      for (const [before, one] of [
        [cool, { 'boiler.hotWaterFlow': 75 }],
        [scaled, { 'coil.scaleThickness': 0 }],
        [{}, { 'boiler.output': 30 }],
      ] as const) {
        const sum = saved(before, one) + saved(before, coil);
        expect(Math.abs(saved(before, one, coil) / sum - 1)).toBeGreaterThan(0.1);
      }
    },
  );

  claim('saves nothing worth saying', () => {
    for (const saves of [2.9, 0, -2.9]) {
      expect(changeBuys(change(saves))).toBe('saves nothing worth saying');
    }
    expect(changeBuys(change(60))).toMatch(/^saves 1\.0/);
    expect(changeBuys(change(-60))).toMatch(/^costs 1\.0/);
  });
  claim(['None of … practical changes saves time here', 'One change saves up to …'], () => {
    expect(changesHeading([change(2), change(-30)])).toContain('None of 2 practical changes saves');
    expect(changesHeading([change(90), change(2)])).toMatch(/^One change saves up to 1\.5/);
  });
  claim('… would save less than …, or nothing at all', () => {
    expect(others([change(90), change(2), change(-30)])).toBe(
      '2 other changes would save less than 3 s, or nothing at all',
    );
    expect(others([change(90), change(3.1)])).toBe('');
  });
});

describe('minutes by cause', () => {
  const invented = (time: number): MinutesByCause => ({
    whole: 2400,
    ideal: 1800,
    shares: [{ key: 'coil', time }],
    absent: [],
    scaleWithCoil: false,
    wouldHelp: [],
    horizon: 21_600,
    counted: null,
    runs: 2,
    of: 2,
  });
  const ofCoil = (time: number) => spaced(delaySentence(invented(time).shares[0], invented(time)));

  claim('… … less than ….', () => {
    for (const time of [2.9, 0, -2.9]) expect(ofCoil(time)).toMatch(/costs less than 3 s\./);
    expect(ofCoil(60)).toMatch(/costs 1\.0 min\./);
    expect(ofCoil(-60)).toMatch(/takes 1\.0 min off\./);
  });

  claim(
    'Without some of the causes the stat would take longer than …, or never be satisfied: that counted as ….',
    () => {
      // a sensor that reads hot on a small coil: without the sensor alone the coil takes long, or never gets there
      const early: Settings = {
        ...coarse,
        'boiler.model': 'ideal',
        'coil.length': 3,
        'sensor.element': 'thermistor',
        'sensor.dampResistance': 5000,
      };
      const house = houseWith(early);
      const { whole, ideal, counted, shares } = toEnd(minutesByCause(house));
      if (whole === null || ideal === null) throw new Error('expected a reheat that gets there');
      expect(counted).toBe(2 * Math.max(whole, ideal));
      const alone = toEnd(timeWithout(removable(house), ['sensor'], 6 * 3600)).time;
      expect(alone ?? Number.POSITIVE_INFINITY).toBeGreaterThan(counted ?? Number.NaN);
      expect(delayNotes({ ...invented(0), shares, counted })[0]).toContain('longer than');
      expect(delayNotes({ ...invented(0), shares, counted: null })).toEqual([]);
    },
  );
});

describe('what is not known for certain', () => {
  const scaled: Settings = { ...coarse, 'coil.scaleThickness': 1 };
  const rangeOf = (settings: Settings, key: string) =>
    unknownsOf(houseWith({ ...scaled, ...settings })).find((one) => one.key === key);

  claim(
    [
      'Thicker or thinner: 100 % is between half of what is set and twice it.',
      'Longer or shorter: 100 % is between half of what is set and twice it.',
    ],
    () => {
      for (const [key, unit] of [
        ['scale', 1e-3],
        ['lag', 1],
      ] as const) {
        const path: FieldPath = key === 'lag' ? 'stat.lag' : 'coil.scaleThickness';
        for (const set of [0.5, 2]) {
          const range = rangeOf({ [path]: set, [`unknowns.${key}`]: 100 }, key);
          expect(range?.low).toBeCloseTo((set * unit) / 2, 9);
          expect(range?.high).toBeCloseTo(2 * set * unit, 9);
        }
        const widths = [50, 100, 300].map((percent) => {
          const range = rangeOf({ [path]: 1, [`unknowns.${key}`]: percent }, key);
          return (range?.low ?? Number.NaN) / (range?.high ?? Number.NaN);
        });
        expectFalling(widths);
      }
    },
  );

  claim(
    'A value near what is set is likelier than one at the end of its range, and none is beyond it; half the scale or the lag is as likely as twice.',
    () => {
      const plants = new PossiblePlants(houseWith({ ...scaled, 'stat.lag': 60 }));
      const shares = Array.from({ length: 41 }, (_, i) => i / 40); // of the cases below
      const drawn = {
        scale: shares.map((at) => plants.plant(() => at).variant.coil.scaleThickness * 1e3),
        cold: shares.map((at) => plants.plant(() => at).variant.draw.incomingCold),
        lag: shares.map((at) => plants.plant(() => at).variant.stat.lag),
      };
      const set = { scale: 1, cold: 10, lag: 60 };
      for (const key of ['scale', 'cold', 'lag'] as const) {
        const values = drawn[key];
        const { low = 0, high = 0 } = rangeOf({ 'stat.lag': 60 }, key) ?? {};
        const unit = key === 'scale' ? 1e3 : 1;
        expect(values[0]).toBeGreaterThan(low * unit - 1e-9);
        expect(values[40]).toBeLessThan(high * unit + 1e-9);
        expect(values[20]).toBeCloseTo(set[key], 9);
        // as many cases lie within less of what is set than at either end
        const middle = values[22] - values[18];
        expect(middle).toBeLessThan(values[40] - values[36]);
        if (key === 'cold') expect(middle).toBeLessThan(values[4] - values[0]);
        else {
          expect(values[22] / values[18]).toBeLessThan(values[4] / values[0]);
          for (const i of [0, 5, 10, 15]) {
            expect(values[i] * values[40 - i]).toBeCloseTo(set[key] ** 2, 6);
          }
        }
      }
    },
  );

  const spreads = new Map<number, Spread>();
  /** By 16 cases that are followed for so many hours. */
  function spreadWithin(hours: number): Spread {
    const house = houseWith({ ...coarse, 'run.layers': 10, 'run.duration': hours });
    const spread = spreads.get(hours) ?? toEnd(spreadOf(house, 16));
    spreads.set(hours, spread);
    return spread;
  }
  const saidWithin = (hours: number) => spaced(spreadSentence(spreadWithin(hours)));
  /** Hours within which so many of 16 cases get there. */
  const hoursFor = (count: number) => {
    const { recoveries } = spreadWithin(2);
    return (recoveries[count - 1] + recoveries[count]) / 2 / 3600;
  };

  claim('half of them under …', () => {
    const { median, recoveries } = spreadWithin(2);
    expect([...recoveries].filter((time) => time < (median ?? 0))).toHaveLength(8);
    expect(saidWithin(2)).toMatch(/ in 8 of 10 cases, half of them under [\d.]+ min/);
  });
  claim(['more than half of them not within …', ', more than 1 in 10 not within …'], () => {
    const few = spreadWithin(hoursFor(6));
    expect(few.reached).toBe(6);
    expect(saidWithin(hoursFor(6))).toContain(', more than half of them not within ');
    expect(saidWithin(hoursFor(12))).toMatch(
      /half of them under .*, more than 1 in 10 not within /,
    );
    expect(saidWithin(2)).not.toContain('not within');
  });
  claim('A case that does not get there counts as longer than any.', () => {
    // so that what is known of the shorter ones stays as it was
    const { low, median, high, reached } = spreadWithin(hoursFor(12));
    const all = spreadWithin(2);
    expect([reached, all.reached]).toEqual([12, 16]);
    // within the tolerance of the runs, whose samples lie otherwise
    expect(low).toBeCloseTo(all.low ?? Number.NaN, 0);
    expect(median).toBeCloseTo(all.median ?? Number.NaN, 0);
    expect(high).toBeNull();
  });
});
