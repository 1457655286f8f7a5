import { duration, figure } from '../../shared/format.ts';
import type { Phase, Result } from '../../shared/result.ts';
import type { Stretch } from '../charts/LimitStrip.svelte';

/** Words for what holds the boiler, in full and ever shorter. */
const words: Readonly<Record<Stretch['pattern'], readonly string[]>> = {
  waiting: ['waiting for the call', 'waiting', 'wait'],
  output: ['boiler at full output', 'full output', 'boiler'],
  flowLimit: ['flow at its limit', 'flow limit', 'limit'],
  idle: ['resting'],
  rooms: ['rooms only', 'rooms'],
  off: ['off'],
};

/**
 * What held the boiler, one stretch after the other: neighbours of one kind run together, and what
 * lasts under half a second between two samples of a switch is left out.
 */
export function limitStretches(result: Result): Stretch[] {
  const merged: { pattern: Stretch['pattern']; from: number; to: number }[] = [];
  const called = result.marks.find((mark) => mark.kind === 'hotWaterCalled')?.at ?? Infinity;
  for (const phase of result.phases) {
    if (phase.to - phase.from < 0.5) continue;
    const pattern = patternOf(phase, called);
    const last = merged.at(-1);
    if (last?.pattern === pattern) last.to = phase.to;
    else merged.push({ pattern, from: phase.from, to: phase.to });
  }
  return merged.map((stretch) => ({
    ...stretch,
    words: words[stretch.pattern],
    minutes: stretch.pattern === 'off' ? '' : shortMinutes(stretch.to - stretch.from),
  }));
}

/** What holds the boiler at a moment, in words. */
export function heldBy(result: Result, seconds: number): string {
  const stretches = limitStretches(result);
  const here =
    stretches.find(({ from, to }) => seconds >= from && seconds < to) ?? stretches.at(-1);
  return here === undefined ? '' : here.words[0];
}

/** Minutes without their unit, which the axis below the strip names. */
function shortMinutes(seconds: number): string {
  return seconds < 7200 ? figure(seconds / 60, 1) : duration(seconds);
}

function patternOf(phase: Phase, called: number): Stretch['pattern'] {
  if (phase.coilRuns) return phase.limit;
  if (phase.radiatorsRun) return 'rooms';
  return phase.from < called && called < Infinity ? 'waiting' : 'off';
}
