import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import { presetNamed, presetVariant } from '../../../shared/presets.ts';
import { problemsOf } from '../../../shared/problems.ts';
import { proposalsFor } from '../../../shared/proposals.ts';
import type { Result } from '../../../shared/result.ts';
import { type Variant, withSetting } from '../../../shared/variant.ts';
import { changesOf } from '../../../sim/run/changes.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { toEnd } from '../../../sim/run/toEnd.ts';
import { anyHouse } from '../../make/anyHouse.ts';
import { anyVariant } from '../../make/anyVariant.ts';

const of = (key: string): Variant => {
  const preset = presetNamed(key);
  if (!preset) throw new Error(`${key} is no example`);
  return presetVariant(preset);
};
const found = (variant: Variant) => toEnd(changesOf(variant));

describe('on random installations', () => {
  test('no proposal for 200 of them lowers the set-point, raises the limiter or has a problem', () => {
    let proposals = 0;
    fc.assert(
      fc.property(anyVariant, fc.boolean(), (variant, calls) => {
        fc.pre(problemsOf(variant).length === 0);
        const marks = calls ? [{ kind: 'hotWaterCalled', at: 0 }] : [];
        for (const proposal of proposalsFor(variant, { marks } as unknown as Result)) {
          proposals++;
          expect(proposal.variant.stat.setPoint).toBe(variant.stat.setPoint);
          expect(proposal.variant.boiler.highLimit).toBe(variant.boiler.highLimit);
          expect(problemsOf(proposal.variant)).toEqual([]);
          expect(proposal.text).not.toContain('NaN');
        }
      }),
      { numRuns: 200, seed: 7 },
    );
    expect(proposals).toBeGreaterThan(200);
  }, 200_000);

  test('the minutes of every change for 15 of them are those of a fresh run, soonest first', () => {
    let runs = 0;
    fc.assert(
      fc.property(anyHouse, (variant) => {
        const changes = found(variant);
        const before = simulateToEnd(variant).measures.recovery;
        let last = 0;
        for (const change of changes) {
          runs++;
          const { recovery } = simulateToEnd(change.variant).measures;
          expect(change.recovery).toBe(recovery);
          expect(change.saves).toBe(
            before === null || recovery === null ? null : before - recovery,
          );
          expect(recovery ?? Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual(last);
          last = recovery ?? Number.POSITIVE_INFINITY;
        }
        expect(new Set(changes.map(({ key }) => key)).size).toBe(changes.length);
      }),
      { numRuns: 15, seed: 2 },
    );
    expect(runs).toBeGreaterThan(50);
  }, 200_000);
});

describe('the examples have what is wrong put right first', () => {
  test.each([
    ['flow-too-cool', 'ownTarget'],
    ['half-shut-valve', 'coilBranch'],
    ['weak-circulator', 'circulator'],
    ['small-bore', 'pipeSize'],
    ['scaled-coil', 'descale'],
    ['undersized-coil', 'largerCoil'],
    ['undersized-boiler', 'output'],
    ['heating-shares', 'hotWaterFirst'],
    ['turn-taken', 'hotWaterFirst'],
    ['badly-strapped', 'sensorFixing'],
    ['wrong-characteristic', 'characteristic'],
    ['bad-joint', 'joint'],
    ['wide-differential', 'differential'],
    ['sensor-too-high', 'sensorHeight'],
    ['sensor-too-low', 'sensorHeight'],
  ])(
    '%s: %s',
    (example, key) => {
      const [first] = found(withSetting(of(example), 'run.layers', 16));
      expect(first.key).toBe(key);
    },
    30_000,
  );

  test('hot-water times that are too short: longer ones and none save the same 71 min', () => {
    const [one, other] = found(of('programme-too-short'));
    expect([one.key, other.key].sort()).toEqual(['alwaysHotWater', 'longerTimes']);
    expect(one.recovery).toBe(other.recovery);
  }, 30_000);
});

describe('what a change brings along', () => {
  test('a flow of 5 K more comes with lime, and stops at 80 °C', () => {
    const cool = withSetting(defaultVariant('cool'), 'boiler.hotWaterFlow', 78);
    const flow = found(cool).find(({ key }) => key === 'flowLimit');
    expect(flow?.variant.boiler.hotWaterFlow).toBe(80);
    expect(flow?.cautions.map(({ key }) => key)).toContain('limesFaster');
    expect(found(defaultVariant('hot')).some(({ key }) => key === 'flowLimit')).toBe(false);
  }, 30_000);

  test('a pipe through which more than 1 m/s would run comes with that caution', () => {
    const nearer = found(of('far-away')).find(({ key }) => key === 'run');
    expect(nearer?.cautions.map(({ key }) => key)).toEqual(['fastPrimary']);
  }, 30_000);

  test('a store that was overheated has less water afterwards, and that is said', () => {
    const [first] = found(of('bad-joint'));
    expect(first.text).toMatch(
      /^Mend the bad joint in the sensor lead; the store then has 4\d\u00a0l less/,
    );
  });

  test('a sensor is never moved to where a twentieth of the hot water is gone', () => {
    const variant = of('partly-used');
    const before = simulateToEnd(variant).measures.usableAtSatisfied ?? Number.NaN;
    const moved = found(variant).find(({ key }) => key === 'sensorHeight');
    if (moved === undefined) throw new Error('no height was found');
    const after = simulateToEnd(moved.variant).measures.usableAtSatisfied ?? Number.NaN;
    expect(after).toBeGreaterThanOrEqual(0.95 * before);
  }, 30_000);
});

test('with an immersion heater instead of the boiler only the sensor is worth a word', () => {
  const variant = withSetting(defaultVariant('electric'), 'immersion.used', 'insteadOfBoiler');
  expect(new Set(found(variant).map(({ cause }) => cause))).toEqual(new Set(['sensor']));
});
