import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../shared/fields.ts';
import { presets, presetVariant } from '../../shared/presets.ts';
import type { Result } from '../../shared/result.ts';
import type { Study, StudyPoint } from '../../shared/study.ts';
import { placementFinding } from '../../shared/sentences/placement.ts';
import { arrangementFinding, differentialFinding } from '../../shared/sentences/studies.ts';
import { plain, reheatFinding, type Sentence, sectionFinding } from '../../shared/sentences.ts';
import { withSetting } from '../../shared/variant.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';

const text = (sentence: Sentence) => plain(sentence).replaceAll('\u00a0', ' ');
const base = defaultVariant('Case');
const worked = simulateToEnd(base);
const minute = 60;

const point = (
  value: number,
  recovery: number | null,
  usable: number,
  calls: number | null = null,
): StudyPoint => ({
  value,
  callsAtStart: true,
  recovery: recovery === null ? null : recovery * minute,
  usableAtSatisfied: recovery === null ? null : usable / 1000,
  usableAtCall: recovery === null ? null : usable / 2000,
  reheatAfterCall: recovery === null ? null : (recovery * minute) / 2,
  callsPerDay: calls,
});

describe('the figures', () => {
  test('the section when satisfied: 13 l of 210 l, 6 %, still cold; none cold; and at a moment', () => {
    const cold = { ...worked, measures: { ...worked.measures, coldAtSatisfied: 0.0131 } };
    expect(text(sectionFinding(cold).heading)).toBe(
      'When the stat is satisfied 13 l, 6 % of the store, are still below 40 °C.',
    );
    const warm = { ...worked, measures: { ...worked.measures, coldAtSatisfied: 0 } };
    expect(text(sectionFinding(warm).heading)).toBe(
      'When the stat is satisfied all 210 l are at 40 °C or more.',
    );
    expect(text(sectionFinding(worked, 0).heading)).toBe(
      'After 0.0 min the top is at 10.0 °C and the bottom at 10.0 °C.',
    );
    expect(text(sectionFinding(worked).summary[0])).toBe(
      'The sensor sits 0.44 m up, at 33 % of the height, and calls at 54.0 °C.',
    );
  });

  test('moving the sensor from 0.1 m to 1.1 m saves 20 min and gives up 150 l', () => {
    const study: Extract<Study, { kind: 'placement' }> = {
      kind: 'placement',
      points: [point(0.1, 45, 330), point(0.44, 40, 320), point(1.1, 25, 180)],
    };
    const words = placementFinding(study, worked);
    expect(text(words.heading)).toBe(
      'Moving the sensor from 0.10 m up to 1.10 m saves 20.0 min and gives up 150 l of usable water.',
    );
    expect(text(words.summary[0])).toBe(
      'At 0.44 m the stat is satisfied after 40.0 min with 320 l usable at 40 °C; when it calls again 160 l are left.',
    );
  });

  test('2 of 3 heights that are never satisfied are counted, and 3 of 3 too', () => {
    const points = [point(0.02, null, 0), point(0.06, null, 0), point(0.44, 40, 320)];
    const some = placementFinding({ kind: 'placement', points }, worked);
    expect(text(some.heading)).toBe('Only at 0.44 m is the stat satisfied, after 40.0 min.');
    expect(text(some.summary[1])).toBe(
      'At 2 heights from 0.02 m to 0.06 m the stat is not satisfied within 2 h 00 min.',
    );
    const none = placementFinding(
      { kind: 'placement', points: points.map((p) => ({ ...p, recovery: null })) },
      worked,
    );
    expect(text(none.heading)).toBe(
      'At none of 3 heights is the stat satisfied within 2 h 00 min of a call.',
    );
  });

  test('heights that take the same 42 min differ in what is left at the call: 227 l or 30 l', () => {
    const points = [point(0.12, 42, 600), point(0.44, 42, 454), point(1.2, 42, 60)];
    const words = placementFinding({ kind: 'placement', points }, worked);
    expect(text(words.heading)).toBe(
      'From 0.12 m up to 1.20 m the stat takes the same 42.0 min, but calls with 30 l left in place of 300 l.',
    );
  });

  test('a sensor 0.04 m up, below the coil at 0.08 m, is told apart from the others', () => {
    const points = [point(0.04, 115, 370), point(0.44, 44, 320), point(1.2, 43, 315)];
    const words = placementFinding({ kind: 'placement', points }, worked);
    expect(text(words.heading)).toMatch(
      /^Moving the sensor from 0\.44 m up to 1\.20 m saves 1\.0 min/,
    );
    expect(text(words.summary[1])).toBe(
      'Below the coil, at 0.04 m, the stat is satisfied only after 115.0 min.',
    );
  });

  test('in a store 40 % hot a sensor above 0.79 m does not call, which is no failure', () => {
    const variant = withSetting(base, 'start.hotShare', 0.4);
    const points = [
      point(0.44, 20, 334),
      point(0.7, 20, 334),
      { ...point(0.8, null, 0), callsAtStart: false },
      { ...point(1.2, null, 0), callsAtStart: false },
    ];
    const words = placementFinding({ kind: 'placement', points }, { ...worked, variant });
    expect(text(words.summary[1])).toBe(
      'From 0.80 m up the sensor sits in water that is still hot, and the stat does not call.',
    );
  });

  test('from 2 K to 15 K the stat goes from 8 to 3 calls a day and calls with 45 l less left', () => {
    const points = [point(2, 40, 320, 8), point(6, 40, 280, 5), point(15, 40, 230, 3)];
    const words = differentialFinding({ kind: 'differential', points }, worked);
    expect(text(words.heading)).toBe(
      'From 2 K to 15 K the stat goes from 8 to 3 calls a day and calls with 45 l less usable water left.',
    );
    expect(text(words.summary[0])).toBe(
      'At 6 K the stat calls at 54.0 °C with 140 l usable left, and reheats in 20.0 min.',
    );
    expect(text(words.summary[1])).toContain('two invented days of 120 l each');
  });

  test('hot water first against both at once: 33 min and 19.4 °C, 58 min and 19.7 °C', () => {
    const result = (recovery: number | null, lowestRoom: number): Result => ({
      ...worked,
      measures: {
        ...worked.measures,
        recovery: recovery === null ? null : recovery * minute,
        lowestRoom,
      },
    });
    const words = arrangementFinding({
      kind: 'arrangement',
      priority: result(33, 19.4),
      simultaneous: result(58, 19.7),
    });
    expect(text(words.heading)).toBe(
      'Hot water first takes 33.0 min and the rooms fall to 19.4 °C; both at once takes 58.0 min and 19.7 °C.',
    );
    expect(text(words.summary[0])).toBe(
      'Sharing the boiler costs 25.0 min of hot water recovery and keeps the rooms 0.30 K warmer at their lowest.',
    );
    const never = arrangementFinding({
      kind: 'arrangement',
      priority: result(33, 19.4),
      simultaneous: result(null, 19.7),
    });
    expect(text(never.summary[0])).toBe(
      'Sharing the boiler, the stat is not satisfied within 2 h 00 min.',
    );
  });

  test('every heading has a number in it, every summary 2 sentences at most, for 28 presets', () => {
    expect(presets).toHaveLength(28);
    for (const preset of presets) {
      const result = simulateToEnd(presetVariant(preset));
      for (const words of [
        reheatFinding(result),
        sectionFinding(result),
        sectionFinding(result, 9),
      ]) {
        expect(text(words.heading)).toMatch(/\d/);
        expect(words.summary.length).toBeLessThanOrEqual(2);
      }
    }
  });
});
