import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../shared/fields.ts';
import { measureText } from '../../shared/format.ts';
import { presets, presetVariant } from '../../shared/presets.ts';
import type { Phase, Result } from '../../shared/result.ts';
import { findingOf, plain, type Sentence } from '../../shared/sentences.ts';
import { paceOfPhases } from '../make/result.ts';
import { type FieldPath, withSetting } from '../../shared/variant.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';

const text = (sentence: Sentence) => plain(sentence).replaceAll('\u00a0', ' ');
const base = defaultVariant('Case');
const worked = simulateToEnd(base);

function ran(...sets: readonly (readonly [FieldPath, number | string])[]): Result {
  return simulateToEnd(sets.reduce((v, [path, value]) => withSetting(v, path, value), base));
}

const minute = 60;
const phase = (from: number, to: number, limit: Phase['limit'], radiatorsRun = false): Phase => ({
  from: from * minute,
  to: to * minute,
  coilRuns: true,
  radiatorsRun,
  draws: false,
  immersionRuns: false,
  limit,
});

/** The worked run with 40 min of recovery, its phases in minutes. */
function held(phases: readonly Phase[], waiting = 0): Result {
  const time = (limit: Phase['limit']) =>
    phases.filter((p) => p.limit === limit).reduce((sum, p) => sum + p.to - p.from, 0);
  return {
    ...worked,
    phases,
    pace: paceOfPhases(phases, worked.trace.samples),
    measures: {
      ...worked.measures,
      recovery: 40 * minute,
      ruleTime: 30 * minute,
      waitingTime: waiting * minute,
      outputLimitTime: time('output'),
      flowLimitTime: time('flowLimit'),
      hotWaterCalls: 1,
    },
  };
}

describe('the finding', () => {
  test('a heat-up from cold and a reheat of a store 40 % hot are kept apart', () => {
    const cold = held([phase(0, 15, 'output'), phase(15, 40, 'flowLimit')]);
    expect(text(findingOf(cold)[0])).toBe('From cold to 60 °C at the sensor in 40.0 min.');
    const variant = withSetting(base, 'start.hotShare', 0.4);
    expect(text(findingOf({ ...cold, variant })[0])).toBe(
      'Back to 60 °C at the sensor in 40.0 min.',
    );
  });

  test('15 min at full output and 25 min at the 80 °C limit are told in their order', () => {
    expect(findingOf(held([phase(0, 15, 'output'), phase(15, 40, 'flowLimit')])).map(text)).toEqual(
      [
        'From cold to 60 °C at the sensor in 40.0 min.',
        'The coil sets the pace for 25.0 min, boiler output for 15.0 min.',
        'The boiler is at full output for 15.0 min; after that its flow is at the 80 °C limit for 25.0 min and the coil passes what it can.',
        'The trade’s formula, all this heat at full boiler output, would say 30.0 min: 10.0 min too few.',
      ],
    );
    const mixed = held([
      phase(0, 5, 'flowLimit'),
      phase(5, 20, 'output'),
      phase(20, 40, 'flowLimit'),
    ]);
    expect(text(findingOf(mixed)[2])).toBe(
      'The boiler is at full output for 15.0 min; for 25.0 min its flow is at the 80 °C limit and the coil passes what it can.',
    );
  });

  test('a boiler at full output for all 40 min, and a flow at its limit for all 40 min', () => {
    expect(text(findingOf(held([phase(0, 40, 'output')]))[1])).toBe(
      'Boiler output sets the pace for 40.0 min.',
    );
    expect(text(findingOf(held([phase(0, 40, 'flowLimit')]))[1])).toBe(
      'The coil sets the pace for 40.0 min.',
    );
  });

  test('10 min of waiting and 20 min of sharing each get a sentence', () => {
    const shared = held([phase(10, 30, 'output', true), phase(30, 40, 'output')], 10);
    expect(findingOf(shared).map(text)).toEqual([
      'Back to 60 °C at the sensor in 40.0 min.',
      'Boiler output sets the pace for 30.0 min.',
      'Of the whole, 10.0 min pass before the stat calls.',
      'The radiators take part of the boiler’s heat for 20.0 min.',
      'The trade’s formula, all this heat at full boiler output, says the same: 30.0 min.',
    ]);
  });

  test('a flow limit of 55 °C never satisfies a stat at 60 °C, and the finding says why', () => {
    const [headline, why] = findingOf(ran(['boiler.hotWaterFlow', 55])).map(text);
    expect(headline).toBe('The sensor never reaches 60 °C: the boiler holds its flow at 55 °C.');
    expect(why).toMatch(/^Set the flow limit for hot water above the set-point, by 10 K/);
  });

  test('a run of 15 min ends before the stat is satisfied, with the reading at its end', () => {
    const result = ran(['run.duration', 15 * minute]);
    const reading = result.trace.of.sensor[result.trace.samples - 1].toFixed(1);
    expect(text(findingOf(result)[0])).toBe(
      `Not back to 60 °C within 15.0 min: the sensor reads ${reading} °C.`,
    );
  });

  test('a sensor at 0.02 m, below the coil at 0.08 m, is to be raised, not waited for', () => {
    const result = ran(['stat.sensorHeight', 0.02]);
    const hottest = result.measures.hottest.toFixed(1);
    expect(text(findingOf(result)[1])).toBe(
      `The sensor sits below the coil, where water is hardly heated, while the hottest water is at ${hottest} °C: raise the sensor to the coil or above it.`,
    );
  });

  test('a store all at 60 °C with a differential of 6 K never calls within 2 h', () => {
    const result = ran(['start.hotShare', 1]);
    expect(findingOf(result).map(text)).toEqual([
      'The stat never calls: its sensor stays above 54.0 °C.',
    ]);
  });

  test('a run that was stopped after 12 min says so, whatever its kind of end', () => {
    const measures = { ...worked.measures, recovery: null };
    const ended = (kind: 'stopped' | 'tooManySteps' | 'outOfRange') =>
      text(findingOf({ ...worked, measures, outcome: { kind, at: 12 * minute } })[0]);
    expect(ended('stopped')).toBe(
      'The run was stopped after 12.0 min, before the stat was satisfied.',
    );
    expect(ended('tooManySteps')).toContain('more steps than it may take and ends after 12.0 min');
    expect(ended('outOfRange')).toContain(
      'left the range of its tables and the run ends after 12.0',
    );
  });

  test.each(presets)(
    '$key: at most 20 words in the headline, its numbers those of the measures',
    (preset) => {
      const result = simulateToEnd(presetVariant(preset));
      const sentences = findingOf(result);
      expect(text(sentences[0]).split(' ').length).toBeLessThanOrEqual(20);
      const numbers = sentences.flatMap(({ parts }) =>
        parts.filter((part) => typeof part !== 'string'),
      );
      expect(numbers.length).toBeGreaterThanOrEqual(result.measures.recovery === null ? 0 : 2);
      for (const number of numbers) {
        expect(number.text).toBe(measureText(number.measure, result.measures[number.measure]));
      }
    },
  );
});
