import type { Phase, Result } from '../../shared/result.ts';
import type { Stretch } from '../charts/LimitStrip.svelte';
import { mergedStretches } from './mergedStretches.ts';
import { shortMinutes } from './shortMinutes.ts';

type Held = Exclude<Phase['limit'], 'off'> | 'waiting' | 'rooms' | 'off';

/** Words for what holds the boiler, in full and ever shorter. */
const words: Readonly<Record<Held, readonly string[]>> = {
  waiting: ['waiting for the call', 'waiting', 'wait'],
  output: ['boiler at full output', 'full output', 'boiler'],
  flowLimit: ['flow at its limit', 'flow limit', 'limit'],
  minimum: ['boiler at its least', 'at its least', 'least'],
  resting: ['burner resting', 'resting', 'rest'],
  lockedOut: ['boiler locked out', 'locked out', 'locked'],
  idle: ['return too hot', 'idle'],
  valve: ['valve moving', 'valve'],
  overrun: ['pump overrun', 'overrun'],
  rooms: ['rooms only', 'rooms'],
  off: ['off'],
};

/**
 * What held the boiler, one stretch after the other: neighbours of one kind run together, and what
 * lasts under half a second between two samples of a switch is left out.
 */
export function limitStretches(result: Result): Stretch[] {
  const called = result.marks.find((mark) => mark.kind === 'hotWaterCalled')?.at ?? Infinity;
  return mergedStretches(result.phases, (phase) => patternOf(phase, called)).map((stretch) => ({
    ...stretch,
    words: words[stretch.pattern],
    minutes: stretch.pattern === 'off' ? '' : shortMinutes(stretch),
  }));
}

/** What holds the boiler at a moment, in words. */
export function heldBy(result: Result, seconds: number): string {
  const stretches = limitStretches(result);
  const here =
    stretches.find(({ from, to }) => seconds >= from && seconds < to) ?? stretches.at(-1);
  return here === undefined ? '' : here.words[0];
}

function patternOf(phase: Phase, called: number): Held {
  if (phase.coilRuns || phase.limit === 'valve' || phase.limit === 'overrun') return phase.limit;
  if (phase.radiatorsRun) return 'rooms';
  return phase.from < called && called < Infinity ? 'waiting' : 'off';
}
