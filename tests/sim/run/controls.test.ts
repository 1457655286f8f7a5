import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Mark, Result } from '../../../shared/result.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { anyRun } from '../../make/anyRun.ts';

/** Marks that undo each other. */
const pairs: readonly (readonly [Mark['kind'], Mark['kind']])[] = [
  ['hotWaterCalled', 'statSatisfied'],
  ['heatingCalled', 'roomSatisfied'],
  ['burnerLit', 'burnerOff'],
  ['immersionOn', 'immersionOff'],
];

/** The sample at a mark: both sides of every change are sampled. */
function sampleAt({ trace }: Result, at: number): number {
  return trace.time.findIndex((time) => Math.abs(time - at) < 1e-6);
}

const switchesRightly = fc.property(anyRun, (variant) => {
  const result = simulateToEnd(variant);
  const { trace, marks, phases } = result;
  expect(result.outcome.kind).toBe('finished');

  for (const [one, other] of pairs) {
    const own = marks.filter(({ kind }) => kind === one || kind === other);
    for (let i = 1; i < own.length; i++) {
      // never twice the same, so none in between was missed
      expect(own[i].kind).not.toBe(own[i - 1].kind);
    }
    // no chatter: ten switches in a row take time. The burner, the room and the immersion heater have differentials of
    // 0.1 K or more; 1 s is a hundred times what locating them could confuse
    for (let i = 10; i < own.length; i++) {
      expect(own[i].at - own[i - 10].at).toBeGreaterThan(1);
    }
  }

  // at its mark a stat is at its threshold, as near as it moves in 0.1 s (and as rounding)
  const { setPoint, differential } = variant.stat;
  for (const { kind, at } of marks) {
    if (at === 0 || (kind !== 'statSatisfied' && kind !== 'hotWaterCalled')) continue;
    const sample = sampleAt(result, at);
    const threshold = kind === 'statSatisfied' ? setPoint : setPoint - differential;
    expect(Math.abs(trace.of.sensor[sample] - threshold)).toBeLessThan(
      0.1 * fastest(result, sample) + 1e-6,
    );
  }

  // while the burner is lit the flow keeps below where it has to go off, and below the limiter
  const { boiler } = variant;
  for (let i = 0; i < trace.samples; i++) {
    // between two things that happen at one moment, the first has been seen to and the second has not
    const isPassing = i + 1 < trace.samples && trace.time[i + 1] - trace.time[i] < 1e-6;
    if (trace.of.fuel[i] <= 0 || isPassing) continue;
    expect(trace.of.flow[i]).toBeLessThan(trace.of.flowTarget[i] + boiler.offMargin + 0.05);
    expect(trace.of.flow[i]).toBeLessThan(boiler.highLimit + 0.05);
  }
  // phases follow each other without gaps
  for (let i = 1; i < phases.length; i++) expect(phases[i].from).toBe(phases[i - 1].to);
});

test('500 runs over all settings: no switch chatters, none is missed, and stats switch within 0.1 s of their thresholds', () => {
  fc.assert(switchesRightly, { numRuns: 500, endOnFailure: true });
}, 240_000);

// a solver that estimated five times what is asked for let this burner stay lit 0.2 K past where it has to go off
test('one run that a looser solver got wrong', () => {
  fc.assert(switchesRightly, { seed: -309494498, path: '84', numRuns: 1 });
});

/** How fast the reading moves next to a sample, K/s: by the samples around it, at least 0.01. */
function fastest({ trace }: Result, sample: number): number {
  let rate = 0.01;
  for (const other of [sample - 2, sample - 1, sample + 1, sample + 2]) {
    const width = Math.abs(trace.time[other] - trace.time[sample]);
    if (!(width > 1e-3)) continue;
    rate = Math.max(rate, Math.abs(trace.of.sensor[other] - trace.of.sensor[sample]) / width);
  }
  return rate;
}
