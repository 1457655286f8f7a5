import { broughtUp, type Caution, cautionsOf } from '../../shared/cautions.ts';
import type { Change } from '../../shared/changes.ts';
import { citation } from '../../shared/citation.ts';
import { litres } from '../../shared/format.ts';
import { type Proposal, proposalsFor } from '../../shared/proposals.ts';
import type { Result } from '../../shared/result.ts';
import type { Study } from '../../shared/study.ts';
import type { Variant } from '../../shared/variant.ts';
import { part } from './progress.ts';
import { simulate } from './simulate.ts';

/**
 * What each practical change buys: a run of the variant with it, soonest first. Yields the share done. The variant must have
 * no problems (`shared/problems.ts`).
 */
export function* changesOf(variant: Variant): Generator<number, readonly Change[]> {
  const present = yield* part(simulate(variant), 0, 0);
  const proposals = proposalsFor(variant, present);
  const best = new Map<string, Tried>();
  for (const [done, proposal] of proposals.entries()) {
    const run = simulate(proposal.variant);
    const tried = { proposal, result: yield* part(run, done / proposals.length, 0) };
    const { key } = proposal;
    const before = best.get(key);
    const isOne = proposals.filter((each) => each.key === key).length === 1;
    if (isOne || (keepsWater(present, tried.result) && isSooner(tried, before))) {
      best.set(key, tried);
    }
    yield (done + 1) / proposals.length;
  }
  const waited = ({ recovery }: Change) => recovery ?? Number.POSITIVE_INFINITY;
  const changes = [...best.values()].map((tried) => changeOf(present, tried));
  // `sort` keeps the order of equals; the difference of two that are infinite would be no number
  return changes.sort((a, b) => (waited(a) === waited(b) ? 0 : waited(a) - waited(b)));
}

/** As a study. */
export function* changesStudy(variant: Variant): Generator<number, Study> {
  return { kind: 'changes', changes: yield* changesOf(variant) };
}

/** A proposal that has been run. */
interface Tried {
  readonly proposal: Proposal;
  readonly result: Result;
}

function changeOf(present: Result, { proposal, result }: Tried): Change {
  const { key, cause, text, variant } = proposal;
  const { recovery } = result.measures;
  const before = present.measures.recovery;
  return {
    ...{ key, cause, variant, recovery },
    text: `${text}${lessWater(present, result)}`,
    saves: before === null || recovery === null ? null : before - recovery,
    cautions: newCautions(present, proposal, result),
  };
}

/** What the change brings along: cautions that did not apply before, or do so more. */
function newCautions(present: Result, proposal: Proposal, result: Result): readonly Caution[] {
  const before = cautionsOf(present.variant, present);
  const hotter = result.measures.hottest > present.measures.hottest + WORTH_SAYING;
  // the scald of a hotter store is a new one
  const had = hotter ? before.filter(({ key }) => key !== 'scald') : before;
  const found = broughtUp(had, cautionsOf(proposal.variant, result));
  return proposal.isHotter ? [...found, limesFaster] : found;
}

/** Where sooner only means that less has been heated, it is said. */
function lessWater(present: Result, result: Result): string {
  const before = present.measures.usableAtSatisfied;
  const after = result.measures.usableAtSatisfied;
  if (before === null || after === null || before - after < WORTH_TELLING) return '';
  return `; the store then has ${litres(before - after)} less at 40 °C`;
}

/** A sensor that is satisfied with much less hot water saves no time worth having. */
function keepsWater(present: Result, result: Result): boolean {
  const before = present.measures.usableAtSatisfied;
  const after = result.measures.usableAtSatisfied;
  return before === null || (after !== null && after >= KEPT * before);
}

function isSooner({ result }: Tried, than: Tried | undefined): boolean {
  const time = result.measures.recovery;
  const other = than?.result.measures.recovery ?? null;
  return than === undefined || (time !== null && (other === null || time < other));
}

const limesFaster: Caution = {
  key: 'limesFaster',
  text: 'Where water is hard, lime settles faster on a hotter coil.',
  source: citation('practice'),
};
const WORTH_SAYING = 1; // K
const WORTH_TELLING = 0.005; // m³
const KEPT = 0.95;
