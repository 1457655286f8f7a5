import { pointOf } from '../../sim/run/pointOf.ts';
import { withOverrides } from '../../shared/grid.ts';
import { channelTick } from './channelTick.ts';
import { computing } from './computing.ts';
import type { PointAsked, PointJob } from './pointPool.ts';
import type { Point } from '../../shared/point.ts';

const answer = computing<PointJob, PointAsked, Point>(
  ({ base, asked }, overrides) => pointOf(withOverrides(base, overrides), asked),
  {
    post: (reply) => self.postMessage(reply),
    tick: channelTick(),
    now: () => performance.now(),
  },
);

self.onmessage = ({ data }) => answer(data);
self.postMessage({ kind: 'awake' });
