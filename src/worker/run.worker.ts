import { coolDownStudy } from '../../sim/run/coolDown.ts';
import { dayStudy } from '../../sim/run/day.ts';
import { deliveryStudy } from '../../sim/run/delivery.ts';
import { simulate } from '../../sim/run/simulate.ts';
import { arrangementStudy, differentialStudy, placementStudy } from '../../sim/run/studies.ts';
import { answering } from './answer.ts';
import { channelTick } from './channelTick.ts';

const answer = answering(
  {
    run: simulate,
    studies: [
      placementStudy,
      differentialStudy,
      arrangementStudy,
      coolDownStudy,
      deliveryStudy,
      dayStudy,
    ],
  },
  {
    post: (reply, transfer) => self.postMessage(reply, { transfer }),
    tick: channelTick(),
    now: () => performance.now(),
  },
);

self.onmessage = ({ data }) => answer(data);
