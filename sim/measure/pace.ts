import { type Constraint, type Gaining, gaining, type PaceStretch } from '../../shared/pace.ts';
import type { Seconds } from '../../shared/units.ts';

/** What set the pace at each sample of a run. */
export interface PaceSamples {
  /** [sample], s */
  readonly time: ArrayLike<number>;
  /** [sample] what shuts the cylinder out, else null. */
  readonly sole: readonly (Constraint | null)[];
  /** [sample], W */
  readonly gain: Readonly<Record<Gaining, ArrayLike<number>>>;
}

/**
 * Stretches in which the same constraints set the pace, without gaps. Between two samples nothing switches, so gains are
 * followed in a straight line from one to the next. A stretch too short to be seen goes to the one before it.
 */
export function paceStretches({ time, sole, gain }: PaceSamples): readonly PaceStretch[] {
  const stretches: { from: Seconds; to: Seconds; by: readonly Constraint[] }[] = [];
  const add = (from: Seconds, to: Seconds, by: readonly Constraint[]) => {
    const last = stretches.at(-1);
    if (last !== undefined && (isSame(last.by, by) || to - from < SHORTEST)) last.to = to;
    else stretches.push({ from, to, by });
  };
  for (let sample = 0; sample + 1 < time.length; sample++) {
    const from = time[sample];
    const to = time[sample + 1];
    if (to <= from) continue;
    const alone = sole[sample];
    if (alone !== null) {
      add(from, to, [alone]);
      continue;
    }
    const leads = (share: number) =>
      leaders((key) => gain[key][sample] + share * (gain[key][sample + 1] - gain[key][sample]));
    const changes = !isSame(leads(0), leads(1));
    const parts = changes ? Math.max(1, Math.ceil((to - from) / FINE)) : 1;
    for (let part = 0; part < parts; part++) {
      const at = (share: number) => from + (share / parts) * (to - from);
      add(at(part), at(part + 1), leads(changes ? (part + 0.5) / parts : 0));
    }
  }
  return stretches;
}

/** Those whose relaxation brings the most, and any that brings nearly as much; the most first. */
export function leaders(gainOf: (key: Gaining) => number): readonly Constraint[] {
  let most = 0;
  for (const key of gaining) most = Math.max(most, gainOf(key));
  const near = gaining.filter((key) => gainOf(key) >= TIED * most);
  // nothing would bring anything: water that is as hot as the flow may be
  if (most <= 0) return ['flowLimit'];
  return near.sort((one, other) => gainOf(other) - gainOf(one));
}

const isSame = (one: readonly Constraint[], other: readonly Constraint[]) =>
  one.length === other.length && one.every((key) => other.includes(key));

const TIED = 0.9; // of the strongest; engineering guess, no source: the usual steps themselves are no closer known
const FINE = 2; // s, between two looks where the lead changes
const SHORTEST = 1; // s
