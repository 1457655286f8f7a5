import { beforeAll, describe, expect, test } from 'vitest';
import { plainVariant } from '../../make/plainVariant.ts';
import type { Study } from '../../../shared/study.ts';
import { presets, presetVariant } from '../../../shared/presets.ts';
import { withSetting } from '../../../shared/variant.ts';
import { ownDraws } from '../../../sim/demand/schedule.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { arrangementStudy, differentialStudy, placementStudy } from '../../../sim/run/studies.ts';

const variant = withSetting(plainVariant('as found'), 'stat.sensorHeight', 0.43);

/** Runs a study to its end; its progress must rise to 1. */
function found<K extends Study['kind']>(kind: K, study: Generator<number, Study>) {
  let done = 0;
  for (;;) {
    const step = study.next();
    if (step.done) {
      expect(done).toBeGreaterThan(0.5);
      expect(step.value.kind).toBe(kind);
      return step.value as Extract<Study, { kind: K }>;
    }
    expect(step.value).toBeGreaterThanOrEqual(done);
    done = step.value;
  }
}

describe('sensor height, 16 heights and the present one', () => {
  let points: Extract<Study, { kind: 'placement' }>['points'];
  beforeAll(() => {
    points = found('placement', placementStudy(variant)).points;
  });

  test('are 17 points, in order, with 0.43 m among them', () => {
    expect(points.map(({ value }) => value)).toEqual(
      points.map(({ value }) => value).sort((a, b) => a - b),
    );
    expect(points).toHaveLength(17);
    expect(points.map(({ value }) => value)).toContain(0.43);
  });

  test('a sensor 0.04 m up, below a coil that begins at 0.08 m, is not satisfied in 2 h', () => {
    expect(points[0].value).toBeLessThan(0.08);
    expect(points[0].recovery).toBeNull();
  });

  test('above the coil each higher sensor calls with fewer litres left', () => {
    const left = points.filter(({ value }) => value > 0.48).map(({ usableAtCall }) => usableAtCall);
    expect(left.length).toBeGreaterThan(8);
    for (let i = 1; i < left.length; i++) expect(left[i]).toBeLessThan(left[i - 1] as number);
  });
});

// what a page says twice has to be the same
test.each(presets.filter((preset) => ownDraws(presetVariant(preset)).length === 0))(
  '$title: the point of the present height recovers as the run itself, to the last bit',
  (preset) => {
    const set = presetVariant(preset);
    const { points } = found('placement', placementStudy(set));
    const present = points.find(({ value }) => value === set.stat.sensorHeight);
    const { recovery, usableAtSatisfied } = simulateToEnd(set).measures;
    expect(present?.recovery).toBe(recovery);
    expect(present?.usableAtSatisfied).toBe(usableAtSatisfied);
  },
);

test('in a store 40 % hot a sensor calls at the start below 0.74 m and not above 0.84 m', () => {
  // the hot part begins at 60 % of 1.32 m, with a boundary of 0.1 m about it
  const used = withSetting(variant, 'start.hotShare', 0.4);
  const { points } = found('placement', placementStudy(used));
  const above = points.filter(({ value }) => value > 0.84);
  const below = points.filter(({ value }) => value < 0.74);
  expect(above.map(({ callsAtStart }) => callsAtStart)).toEqual(above.map(() => false));
  expect(below.map(({ callsAtStart }) => callsAtStart)).toEqual(below.map(() => true));
  expect(above.map(({ recovery }) => recovery)).toEqual(above.map(() => null));
  expect([above.length, below.length].every((count) => count > 4)).toBe(true);
});

describe('differential, 10 of them and the present one', () => {
  let points: Extract<Study, { kind: 'differential' }>['points'];
  beforeAll(() => {
    points = found(
      'differential',
      differentialStudy(withSetting(variant, 'stat.differential', 5)),
    ).points;
  });

  test('are 11 points with 5 K among them', () => {
    expect(points).toHaveLength(11);
    expect(points.map(({ value }) => value)).toContain(5);
  });

  test('from cold the differential changes recovery by less than 0.01 s', () => {
    const times = points.map(({ recovery }) => recovery as number);
    expect(Math.max(...times) - Math.min(...times)).toBeLessThan(0.01);
  });

  test('20 K calls less often in a day than 1 K, and then takes longer to reheat', () => {
    const [narrow, wide] = [points[0], points[points.length - 1]];
    expect(wide.callsPerDay).toBeLessThan(narrow.callsPerDay as number);
    expect(wide.callsPerDay).toBeGreaterThan(0);
    expect(wide.reheatAfterCall).toBeGreaterThan(narrow.reheatAfterCall as number);
  });
});

test('both at once takes longer than hot water first, and keeps the rooms warmer', () => {
  const { priority, simultaneous } = found('arrangement', arrangementStudy(variant));
  expect(simultaneous.measures.recovery).toBeGreaterThan(priority.measures.recovery as number);
  expect(simultaneous.measures.lowestRoom).toBeGreaterThan(priority.measures.lowestRoom as number);
});
