import type { Result } from './result.ts';
import { sampleAt } from './sampleAt.ts';
import type { Seconds, Watts } from './units.ts';

/**
 * What can set the pace of a reheat. `gains`: it can be relaxed a little, and the heat this would
 * bring decides; the others shut the cylinder out altogether, or leave nothing to do.
 */
export const constraints = {
  sensor: { words: ['waiting for the sensor', 'sensor'], gains: false },
  programme: { words: ['programme shut', 'programme'], gains: false },
  valve: { words: ['valve moving', 'valve'], gains: false },
  heating: { words: ['heating’s share', 'heating'], gains: true },
  output: { words: ['boiler output', 'boiler'], gains: true },
  resting: { words: ['boiler resting', 'resting'], gains: true },
  flowLimit: { words: ['flow limit', 'limit'], gains: true },
  primaryFlow: { words: ['primary flow', 'flow'], gains: true },
  coil: { words: ['coil'], gains: true },
  heater: { words: ['immersion heater', 'heater'], gains: false },
  satisfied: { words: ['satisfied'], gains: false },
} as const satisfies Record<string, { readonly words: readonly string[]; readonly gains: boolean }>;

export type Constraint = keyof typeof constraints;

/** Those that can be relaxed a little. */
export type Gaining = {
  [K in Constraint]: (typeof constraints)[K]['gains'] extends true ? K : never;
}[Constraint];

/** The same, in the order the heat travels. */
export const gaining = (Object.keys(constraints) as Constraint[]).filter(
  (key): key is Gaining => constraints[key].gains,
);

/**
 * A usual step by which each is relaxed in practice. Engineering guess, no source: the next boiler
 * of a range, a coil half as large again, a circulator or pipe one size up, a flow limit of 70 in
 * place of 60 °C; heating gives way and a rest is over altogether or not at all.
 */
export const usualStep = {
  output: 0.3, // of the output
  coil: 0.5, // of what it conducts
  primaryFlow: 0.5, // of the flow
  flowLimit: 10, // K
} as const;

/** A stretch of the run and what set its pace: one constraint, or several that would bring nearly as much. */
export interface PaceStretch {
  readonly from: Seconds;
  readonly to: Seconds;
  /** The strongest first. */
  readonly by: readonly Constraint[];
}

/** What set the pace through a run. */
export interface Pace {
  /** Without gaps, neighbours unlike. */
  readonly stretches: readonly PaceStretch[];
  /**
   * [sample of the trace], W: heat into the cylinder that a usual step would add at that moment, if
   * what the first hundredth of it adds went on; 0 where something shuts the cylinder out.
   */
  readonly gain: Readonly<Record<Gaining, Float64Array>>;
}

/** What sets the pace at a moment. */
export function paceAt({ pace }: Pick<Result, 'pace'>, at: Seconds): readonly Constraint[] {
  const here = pace.stretches.find(({ to }) => at < to) ?? pace.stretches.at(-1);
  return here?.by ?? [];
}

/** What a usual step of each would add at a moment, the most first, W. */
export function gainsAt(
  { pace, trace }: Pick<Result, 'pace' | 'trace'>,
  at: Seconds,
): readonly { readonly key: Gaining; readonly gain: Watts }[] {
  const sample = sampleAt(trace.time, at);
  return gaining
    .map((key) => ({ key, gain: pace.gain[key][sample] }))
    .sort((one, other) => other.gain - one.gain);
}

/** How long each set the pace, up to a moment, s; what is shared is shared out evenly. The longest first. */
export function paceTotals(
  { stretches }: Pace,
  until: Seconds,
): readonly { readonly key: Constraint; readonly time: Seconds }[] {
  const totals = new Map<Constraint, Seconds>();
  for (const { from, to, by } of stretches) {
    const time = Math.min(to, until) - from;
    if (time <= 0) continue;
    for (const key of by) totals.set(key, (totals.get(key) ?? 0) + time / by.length);
  }
  return [...totals]
    .map(([key, time]) => ({ key, time }))
    .sort((one, other) => other.time - one.time);
}

/** In words: `coil`, or `coil and primary flow`. @param size  0 for the whole words, 1 for short ones */
export function paceWords(by: readonly Constraint[], size = 0): string {
  return by
    .map((key) => {
      const { words } = constraints[key];
      return words[Math.min(size, words.length - 1)];
    })
    .join(' and ');
}
