import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { type Asked, askedRow, askedRows } from '../../../shared/asked.ts';
import { defaultVariant, fields } from '../../../shared/fields.ts';
import type { Point } from '../../../shared/point.ts';
import { presets, presetVariant } from '../../../shared/presets.ts';
import { problemsOf } from '../../../shared/problems.ts';
import type { Measures, Outcome } from '../../../shared/result.ts';
import { type Variant, withSetting } from '../../../shared/variant.ts';
import { dayRun } from '../../../sim/run/day.ts';
import { pointOf } from '../../../sim/run/pointOf.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { placementStudy } from '../../../sim/run/studies.ts';
import { toEnd } from '../../../sim/run/toEnd.ts';
import { anyVariant } from '../../make/anyVariant.ts';

// no settings are known that end a run early, so a march that did is made here
const ended = vi.hoisted(() => ({ as: null as Outcome | null }));
vi.mock('../../../sim/run/march.ts', async (original) => {
  const { march } = await original<typeof import('../../../sim/run/march.ts')>();
  return {
    *march(...args: Parameters<typeof march>) {
      const marched = yield* march(...args);
      const wasCut = args[1].until !== undefined && marched.outcome.at < args[1].duration;
      return ended.as === null || wasCut ? marched : { ...marched, outcome: ended.as };
    },
  };
});

const at = (variant: Variant, asked: readonly Asked[]): Point => toEnd(pointOf(variant, asked));
const ofRun = askedRows.filter((row) => row.of === 'run').map(({ key }) => key as keyof Measures);
const all = presets.map((preset) => [preset.key, presetVariant(preset)] as const);
const worked = presetVariant(presets[0]);

describe('the bits of a run', () => {
  test.each(all)(
    '%s: 36 measures as the run has them, recovery by itself as well',
    (_, variant) => {
      const { measures } = simulateToEnd(variant);
      const { values, gaps } = at(variant, ofRun);
      expect(ofRun).toHaveLength(36);
      for (const [index, key] of ofRun.entries()) {
        expect(values[index], key).toBe(measures[key]);
        expect(gaps[index] === null, key).toBe(measures[key] !== null);
      }
      expect(at(variant, ['recovery']).values).toEqual([measures.recovery]);
    },
  );

  test('25 random variants of 2 h: the recovery by itself is that of the run', () => {
    fc.assert(
      fc.property(anyVariant, (any) => {
        const variant = withSetting(withSetting(any, 'run.duration', 7200), 'run.layers', 24);
        const { measures } = simulateToEnd(variant);
        expect(at(variant, ['recovery']).values).toEqual([measures.recovery]);
      }),
      { numRuns: 25, seed: 6 },
    );
  });

  test('22 measures of the day as the day has them, 2 of them per day', () => {
    const keys = askedRows.filter((row) => row.of === 'day').map(({ key }) => key);
    const { measures } = toEnd(dayRun(worked));
    const { values } = at(worked, keys);
    const expected = keys.map((key) => measures[askedRow(key).measure as keyof typeof measures]);
    expect(expected).toHaveLength(22 + 2);
    expect(values).toEqual(expected);
  });

  test('of 2 stated days the calls and the fuel per day are half of all', () => {
    const two = withSetting(withSetting(worked, 'day.repeat', 'stated'), 'day.days', 2);
    const { values } = at(two, [
      'dayHotWaterCalls',
      'callsPerDay',
      'dayFuelForHotWater',
      'fuelPerDay',
    ]);
    const [calls, perDay, fuel, fuelPerDay] = values.map(Number);
    expect(calls).toBeGreaterThan(1);
    expect(perDay).toBe(calls / 2);
    expect(fuelPerDay).toBe(fuel / 2);
  });

  test('the litres when the stat calls are those of the study of the sensor’s height', () => {
    const study = toEnd(placementStudy(worked));
    const points = study.kind === 'placement' ? study.points : [];
    const present = points.find(({ value }) => value === worked.stat.sensorHeight);
    expect(present?.usableAtCall).toBeGreaterThan(0);
    expect(at(worked, ['usableWhenCalled']).values).toEqual([present?.usableAtCall]);
  });

  test('run, day and draw asked at once come in the order asked; progress rises to 1', () => {
    const asked = ['callsPerDay', 'recovery', 'usableWhenCalled', 'fuel'] as const;
    const point = pointOf(worked, asked);
    let done = 0;
    let step = point.next();
    for (; !step.done; step = point.next()) {
      expect(step.value).toBeGreaterThanOrEqual(done);
      done = step.value;
    }
    expect(done).toBeLessThanOrEqual(1);
    expect(done).toBeGreaterThan(0.5);
    expect(step.value.values).toEqual(asked.map((key) => at(worked, [key]).values[0]));
  });
});

describe('a value that is missing', () => {
  test('says that the stat was not satisfied in half an hour', () => {
    const short = withSetting(worked, 'run.duration', 1800);
    for (const asked of [['recovery'], ['recovery', 'fuel']] as const) {
      const { values, gaps } = at(short, asked);
      expect(values[0]).toBeNull();
      expect(gaps[0]).toEqual({
        kind: 'notReached',
        outcome: null,
        sentences: ['The stat was not satisfied within the run.'],
      });
    }
  });

  test('says that the rooms are not heated, and that an ideal boiler burns nothing', () => {
    const alone = withSetting(worked, 'heating.arrangement', 'hotWaterOnly');
    const ideal = withSetting(alone, 'boiler.model', 'ideal');
    const { gaps } = at(ideal, ['lowestRoom', 'fuel', 'condensingShare', 'recovery']);
    expect(gaps.map((gap) => gap?.sentences[0] ?? null)).toEqual([
      'No rooms are heated.',
      'No fuel is counted for an ideal boiler.',
      'No burner was lit, or the boiler is ideal.',
      null,
    ]);
  });

  test('says everything that is to be put right, and runs nothing', () => {
    const bad = withSetting(withSetting(worked, 'stat.setPoint', 200), 'coil.area', -1);
    const { values, gaps } = at(bad, ['recovery', 'callsPerDay']);
    expect(values).toEqual([null, null]);
    const sentences = problemsOf(bad).map(({ message }) => message);
    expect(sentences.length).toBeGreaterThan(1);
    expect(gaps).toEqual([
      { kind: 'notPossible', outcome: null, sentences },
      { kind: 'notPossible', outcome: null, sentences },
    ]);
  });

  test('a run that ended early keeps its recovery and says of the rest how it ended', () => {
    const { recovery } = simulateToEnd(worked).measures;
    ended.as = { kind: 'tooManySteps', at: 7000 };
    try {
      const { values, gaps } = at(worked, ['recovery', 'fuel']);
      expect(values).toEqual([recovery, null]);
      expect(gaps[0]).toBeNull();
      expect(gaps[1]).toMatchObject({ kind: 'endedEarly', outcome: 'tooManySteps' });
      expect(gaps[1]?.sentences[0].replaceAll('\u00a0', ' ')).toBe(
        'The run ended early, after 116.7 min: it needed too many steps.',
      );
      expect(at(worked, ['recovery']).values).toEqual([recovery]);
      const never = withSetting(worked, 'run.duration', 1800);
      ended.as = { kind: 'outOfRange', at: 600 };
      expect(at(never, ['recovery']).gaps[0]).toMatchObject({ outcome: 'outOfRange' });
    } finally {
      ended.as = null;
    }
  });

  test('400 wrecked variants throw nothing, and where the settings are right there is a run', () => {
    const wild = fc.oneof(
      fc.double({ min: -1e9, max: 1e9 }),
      fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, 0, -0, 'none', '', 1e-300),
    );
    const wreck = fc.array(fc.tuple(fc.constantFrom(...fields.map(({ path }) => path)), wild), {
      minLength: 1,
      maxLength: 4,
    });
    fc.assert(
      fc.property(wreck, (changes) => {
        const variant = changes.reduce<Variant>(
          (changed, [path, value]) => withSetting(changed, path, value),
          defaultVariant('wrecked'),
        );
        const { gaps } = at(variant, ['recovery']);
        expect(gaps[0]?.kind === 'notPossible').toBe(problemsOf(variant).length > 0);
      }),
      { numRuns: 400, seed: 7 },
    );
  });
});
