import { type Constraint, paceWords } from '../../shared/pace.ts';
import type { Result } from '../../shared/result.ts';
import type { Stretch } from '../charts/LimitStrip.svelte';
import type { PatternName } from '../charts/Patterns.svelte';
import { shortMinutes } from './shortMinutes.ts';

/** The pattern of each constraint; where it is one of what burner and valves do, they mean the same. */
const patterns: Readonly<Record<Constraint, PatternName>> = {
  sensor: 'waiting',
  programme: 'programme',
  valve: 'valve',
  heating: 'rooms',
  output: 'output',
  resting: 'resting',
  flowLimit: 'flowLimit',
  primaryFlow: 'stream',
  coil: 'surface',
  heater: 'heater',
  satisfied: 'off',
};

/** What set the pace, one stretch after the other; what lasts under half a second is left out. */
export function paceRibbon({ pace }: Pick<Result, 'pace'>): Stretch[] {
  return pace.stretches
    .filter(({ from, to }) => to - from >= 0.5)
    .map(({ from, to, by }) => ({
      from,
      to,
      pattern: patterns[by[0]],
      ...(by.length > 1 ? { under: patterns[by[1]] } : {}),
      words: [paceWords(by), paceWords(by, 1), ...together(by)],
      minutes: by[0] === 'satisfied' ? '' : shortMinutes({ from, to }),
    }));
}

/** Where there is no room for the names of all: one of them alone would be untrue. */
function together({ length }: readonly Constraint[]): string[] {
  if (length < 2) return [];
  return [length === 2 ? 'both' : 'several'];
}
