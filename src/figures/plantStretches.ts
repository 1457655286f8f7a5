import { type BurnerState, burnerStates } from '../../shared/phaseTime.ts';
import type { Result } from '../../shared/result.ts';
import { valvePhases, type ValveState, valveWords } from '../../shared/sentences/plantStates.ts';
import type { Stretch } from '../charts/LimitStrip.svelte';
import { mergedStretches } from './mergedStretches.ts';
import { shortMinutes } from './shortMinutes.ts';

const burnerWords: Readonly<Record<BurnerState, readonly string[]>> = {
  full: ['full output', 'full'],
  modulating: ['modulating', 'part'],
  least: ['at its least', 'least'],
  off: ['off'],
};

// the patterns of what holds the boiler, which they mean
const burnerPatterns = {
  full: 'output',
  modulating: 'flowLimit',
  least: 'minimum',
  off: 'off',
} as const;

/** In place of the whole words where there is too little room. */
const shortValveWords: Readonly<Record<ValveState, readonly string[]>> = {
  coil: ['coil'],
  radiators: ['radiators', 'rooms'],
  both: ['both'],
  moving: [],
  shut: [],
};

const valvePatterns = {
  coil: 'coil',
  radiators: 'radiators',
  both: 'both',
  moving: 'valve',
  shut: 'off',
} as const;

/** The burner through a run, without gaps. */
export function burnerStretches({ phases }: Pick<Result, 'phases'>): Stretch[] {
  return mergedStretches(phases, ({ limit }) => burnerStates[limit]).map((stretch) => ({
    ...stretch,
    pattern: burnerPatterns[stretch.pattern],
    words: burnerWords[stretch.pattern],
    minutes: stretch.pattern === 'off' ? '' : shortMinutes(stretch),
  }));
}

/** The valves through a run, without gaps; one with a travel time is moving while the water keeps its old way. */
export function valveStretches(result: Result): Stretch[] {
  return mergedStretches(valvePhases(result), ({ state }) => state).map((stretch) => ({
    ...stretch,
    pattern: valvePatterns[stretch.pattern],
    words: [valveWords[stretch.pattern], ...shortValveWords[stretch.pattern]],
    minutes: '',
  }));
}

/** The immersion heater through a run, without gaps. */
export function immersionStretches({ phases }: Pick<Result, 'phases'>): Stretch[] {
  return mergedStretches(phases, ({ immersionRuns }) => immersionRuns).map((stretch) => ({
    ...stretch,
    pattern: stretch.pattern ? 'heater' : 'off',
    words: stretch.pattern ? ['heater on', 'on'] : ['off'],
    minutes: stretch.pattern ? shortMinutes(stretch) : '',
  }));
}
