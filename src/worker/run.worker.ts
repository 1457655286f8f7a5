import { simulate } from '../../sim/run/simulate.ts';
import { answering } from './answer.ts';
import { channelTick } from './channelTick.ts';
import { STUDY_COUNT, WHY_COUNT } from './studyCount.ts';

const answer = answering(
  {
    run: simulate,
    thrown: async () => (await import('../../sim/run/thrown.ts')).simulateThrown,
    studies: async () => (await import('./studies.ts')).studies,
    studyCount: STUDY_COUNT,
    why: async () => (await import('./why.ts')).why,
    whyCount: WHY_COUNT,
  },
  {
    post: (reply, transfer) => self.postMessage(reply, { transfer }),
    tick: channelTick(),
    now: () => performance.now(),
  },
);

self.onmessage = ({ data }) => answer(data);
