import { incomingCold } from '../../shared/coldWater.ts';
import {
  inletEddyRecords,
  inletReynolds,
  inletRichardson,
  inletRichardsonRecord,
} from '../../sim/closures/inletMixing.ts';
import { boreVelocity } from '../../sim/closures/pipeFriction.ts';
import { type Sampled, waterOf } from './reading.ts';
import { type Step, worked } from './working.ts';

type Run = Pick<Sampled, 'variant'>;

/** What holds the layers against the jet of cold water, and how far it stirs. @param store  the water it meets, °C */
export function inletSteps(run: Run, flow: number, store: number): Step[] {
  const { draw, cylinder } = run.variant;
  const water = waterOf(run);
  const richardson = worked(inletRichardsonRecord, {
    entering: water.density(incomingCold(draw)),
    store: water.density(store),
    length: cylinder.height,
    velocity: flow > 0 ? boreVelocity(draw.inletBore, flow) : Number.NaN,
  });
  const own = inletEddyRecords.filter(({ key }) => key === ownEddies(run));
  return [richardson, ...eddySteps(own, run, flow, store)];
}

/** The inlets that are not fitted, in the same draw. */
export function othersSteps(run: Run, flow: number, store: number): Step[] {
  const others = inletEddyRecords.filter(({ key }) => key !== ownEddies(run));
  return eddySteps(others, run, flow, store);
}

function eddySteps(
  eddies: readonly (typeof inletEddyRecords)[number][],
  run: Run,
  flow: number,
  store: number,
): Step[] {
  const { draw, cylinder } = run.variant;
  const water = waterOf(run);
  const cold = incomingCold(draw);
  const velocity = boreVelocity(draw.inletBore, flow);
  const reynolds = inletReynolds(water, cold, draw.inletBore, velocity);
  const richardson = inletRichardson(water, cold, store, cylinder.height, velocity);
  // water that is not heavier than what it meets has no number that holds it down
  const given = { reynolds, richardson: richardson > 0 ? richardson : Number.NaN };
  return eddies.map((record) => worked(record, given));
}

function ownEddies({ variant }: Run): string {
  return variant.draw.inlet === 'plain' ? 'sideInletEddies' : 'impingementInletEddies';
}
