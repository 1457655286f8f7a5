import { problemsOf } from './problems.ts';
import { boilerProposals } from './proposals/boiler.ts';
import { coilProposals } from './proposals/coil.ts';
import { houseProposals } from './proposals/house.ts';
import { primaryProposals } from './proposals/primary.ts';
import type { Proposal } from './proposals/proposal.ts';
import { sensorProposals } from './proposals/sensor.ts';
import type { Result } from './result.ts';
import type { Variant } from './variant.ts';

export type { Proposal } from './proposals/proposal.ts';

/**
 * What could be changed on an installation to have hot water sooner, in the order of its causes. None lowers the set-point or
 * touches the safety limiter, and each can be run as it is.
 * @param result  of the variant as it is
 */
export function proposalsFor(variant: Variant, result: Result): readonly Proposal[] {
  const hasPart = variant.immersion.used !== 'insteadOfBoiler';
  return [sensorProposals, ...(hasPart ? ofBoiler : [])]
    .flatMap((propose) => propose(variant, result))
    .filter((each) => each !== null)
    .filter((proposal) => problemsOf(proposal.variant).length === 0);
}

const ofBoiler = [houseProposals, boilerProposals, primaryProposals, coilProposals];
