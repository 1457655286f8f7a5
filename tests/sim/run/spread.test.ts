import { beforeAll, describe, expect, test } from 'vitest';
import { presetNamed, presetVariant } from '../../../shared/presets.ts';
import type { Spread } from '../../../shared/spread.ts';
import type { SoFar } from '../../../shared/study.ts';
import { type FieldPath, type Variant, withSetting } from '../../../shared/variant.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { SPREAD_RUNS, spreadOf, spreadStudy } from '../../../sim/run/spread.ts';
import { toEnd } from '../../../sim/run/toEnd.ts';

// 10 layers in place of 48 make a run four times as quick; the sampling is the same, and that is what is tested here.
// tests/bench/spread.bench.ts prints the same of full runs
const LAYERS = 10;

function preset(key: string, ...settings: readonly (readonly [FieldPath, number | string])[]) {
  const found = presetNamed(key);
  if (found === undefined) throw new Error(`there is no preset ${key}`);
  const coarse = withSetting(presetVariant(found), 'run.layers', LAYERS);
  return settings.reduce((v, [path, value]) => withSetting(v, path, value), coarse);
}

const known: readonly (readonly [FieldPath, number])[] = (
  ['coil', 'ratedCoil', 'scale', 'hiddenScale', 'primaryFlow', 'cold', 'lag'] as const
).map((key) => [`unknowns.${key}`, 0] as const);

const spread = (variant: Variant, runs = SPREAD_RUNS) => toEnd(spreadOf(variant, runs));
const shareOf = ({ firstOrder }: Spread, wanted: string) =>
  firstOrder.find(({ key }) => key === wanted)?.share ?? Number.NaN;

describe.each(['family-as-found', 'scaled-coil', 'rapid-coil'])(
  '%s',
  (key) => {
    const variant = preset(key);
    const few = spread(variant);
    const many = spread(variant, 2048);

    test('low, median and high of 256 runs are within 2 % of those of 2048', () => {
      for (const which of ['low', 'median', 'high'] as const) {
        const miss = Math.abs((few[which] ?? Number.NaN) / (many[which] ?? Number.NaN) - 1);
        expect(miss, which).toBeLessThan(0.02);
      }
    });

    test('each of the 5 indices is within 0.03 of that of 1024 runs', () => {
      expect(many.firstOrder).toHaveLength(5);
      for (const { key: unknown, share } of many.firstOrder) {
        expect(Math.abs(shareOf(few, unknown) - share), unknown).toBeLessThan(0.03);
      }
    });
  },
  120_000,
);

describe('what the readings say', () => {
  const variant = preset('family-as-found');
  let found: Spread;
  beforeAll(() => {
    found = spread(variant, 64);
  }, 60_000);

  test('the band lies in order, and closes at the set-point when 9 in 10 are there', () => {
    const { time, lowReading, medianReading, highReading, high } = found;
    for (let sample = 0; sample < time.length; sample++) {
      expect(lowReading[sample]).toBeLessThanOrEqual(medianReading[sample]);
      expect(medianReading[sample]).toBeLessThanOrEqual(highReading[sample]);
    }
    const last = time.length - 1;
    expect(time[last]).toBeGreaterThanOrEqual(high ?? Number.NaN);
    expect(time[last] - 60).toBeLessThan(high ?? Number.NaN);
    for (const line of [lowReading, medianReading, highReading]) {
      expect(line[last]).toBeCloseTo(variant.stat.setPoint, 3);
    }
  });

  test('each line meets the set-point within a sample of the time it stands for', () => {
    const { time, low, median, high } = found;
    const lines = [
      [found.highReading, low],
      [found.medianReading, median],
      [found.lowReading, high],
    ] as const;
    for (const [line, recovery] of lines) {
      const there = time[line.findIndex((reading) => reading >= variant.stat.setPoint - 0.01)];
      // one sample, and what the percentile of readings and of times round differently
      expect(Math.abs(there - (recovery ?? Number.NaN))).toBeLessThan(2 * 60);
    }
  });

  test('recoveries are in order, 64 of 64', () => {
    expect(found).toMatchObject({ runs: 64, reached: 64, of: 64 });
    expect([...found.recoveries]).toEqual([...found.recoveries].sort((a, b) => a - b));
  });
}, 60_000);

describe('settings of the unknowns', () => {
  test('with all put to 0 the band has no width: 1 run, the recovery of the reheat within 0.1 s', () => {
    const variant = preset('family-as-found', ...known);
    const found = spread(variant);
    const { recovery } = simulateToEnd(variant).measures;
    expect(found).toMatchObject({ runs: 1, of: 1, firstOrder: [] });
    expect([found.low, found.median, found.high]).toEqual([
      found.median,
      found.median,
      found.median,
    ]);
    expect(Math.abs((found.median ?? Number.NaN) - (recovery ?? Number.NaN))).toBeLessThan(0.1);
  });

  test('with the scale alone put to 0 the scale is none of 4 unknowns, and the band is narrower', () => {
    const all = spread(preset('family-as-found'), 64);
    const less = spread(preset('family-as-found', ['unknowns.scale', 0]), 64);
    expect(less.firstOrder).toHaveLength(4);
    expect(shareOf(less, 'scale')).toBeNaN();
    const width = ({ low, high }: Spread) => (high ?? Number.NaN) - (low ?? Number.NaN);
    expect(width(less)).toBeLessThan(0.9 * width(all));
  });

  test('the cold alone explains all of it, within 0.02', () => {
    const found = spread(preset('healthy-house', ...known, ['unknowns.cold', 3]), 64);
    expect(found.firstOrder).toHaveLength(1);
    expect(Math.abs(shareOf(found, 'cold') - 1)).toBeLessThan(0.02);
  });

  test('with even ranges alone the median is the time as set within 1 %', () => {
    const variant = preset('scaled-coil', ['unknowns.hiddenScale', 0]);
    const { recovery } = simulateToEnd(variant).measures;
    const { median } = spread(variant, 64);
    expect(Math.abs((median ?? Number.NaN) / (recovery ?? Number.NaN) - 1)).toBeLessThan(0.01);
  });
}, 60_000);

describe('runs that do not get there', () => {
  test('in 15 min no run gets there: nothing is known and nothing scatters', () => {
    const found = spread(preset('family-as-found', ['run.duration', 900]), 32);
    expect(found).toMatchObject({
      low: null,
      median: null,
      high: null,
      reached: 0,
      firstOrder: [],
    });
    expect(found.recoveries).toHaveLength(0);
    expect(found.time.at(-1)).toBe(900);
  });

  test('a run as long as the median leaves the low end known and the high end open', () => {
    const { median } = spread(preset('family-as-found'), 32);
    const cut = preset('family-as-found', ['run.duration', (median ?? Number.NaN) + 1]);
    const found = spread(cut, 32);
    expect(found.reached).toBeGreaterThanOrEqual(14);
    expect(found.reached).toBeLessThan(29);
    expect(found.low).not.toBeNull();
    expect(found.high).toBeNull();
  });
}, 60_000);

test('what is known after 32, 64 and 128 runs comes before the 256, and the share done rises to 1', () => {
  const study = spreadStudy(preset('rapid-coil'));
  const soFar: SoFar[] = [];
  let done = 0;
  for (;;) {
    const step = study.next();
    if (step.done) {
      expect(step.value).toMatchObject({ kind: 'spread', runs: 256, of: 256 });
      break;
    }
    const now = typeof step.value === 'number' ? step.value : step.value.done;
    expect(now).toBeGreaterThanOrEqual(done);
    done = now;
    if (typeof step.value !== 'number') soFar.push(step.value);
  }
  expect(done).toBe(1);
  const counts = soFar.map((one) => (one.study.kind === 'spread' ? one.study.runs : 0));
  expect(counts).toEqual([32, 64, 128]);
}, 60_000);
