import { defaultVariant } from '../../shared/fields.ts';
import { withOverrides } from '../../shared/grid.ts';
import type { Point } from '../../shared/point.ts';
import { pointOf } from '../../sim/run/pointOf.ts';
import { channelTick } from './channelTick.ts';
import { computing } from './computing.ts';
import type { PointAsked, PointJob } from './pointPool.ts';

const answer = computing<PointJob, PointAsked, Point>(
  ({ base, asked }, overrides) => pointOf(withOverrides(base, overrides), asked),
  {
    post: (reply) => self.postMessage(reply),
    tick: channelTick(),
    now: () => performance.now(),
  },
);

/** Runs that nobody asked for, so that the code is compiled for speed before it is needed: no pool has a task of this number. */
const WARM = -1;
/** Most is compiled by then; a third of a second. */
const WARM_RUNS = 80;
/** What is asked for at the start goes first, ms. */
const PAUSE = 300;

function warmUp() {
  const runs = Array.from({ length: WARM_RUNS }, (_, key): { key: number; asked: PointAsked } => ({
    key,
    asked: [
      ['coil.area', 0.5 + key / WARM_RUNS],
      ['boiler.hotWaterFlow', 60 + ((7 * key) % 25)],
    ],
  }));
  const base = withOverrides(defaultVariant(''), [['coil.given', 'area']]);
  answer({ kind: 'compute', task: WARM, job: { base, asked: ['recovery'] }, runs });
}

self.onmessage = ({ data }) => {
  answer({ kind: 'drop', task: WARM });
  answer(data);
};
self.postMessage({ kind: 'awake' });
setTimeout(warmUp, PAUSE);
