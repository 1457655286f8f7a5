import { coolDownStudy } from '../../sim/run/coolDown.ts';
import { dayStudy } from '../../sim/run/day.ts';
import { deliveryStudy } from '../../sim/run/delivery.ts';
import { arrangementStudy, differentialStudy, placementStudy } from '../../sim/run/studies.ts';

/** What is computed beside the bench, in the order in which it is wanted. */
export const studies = [
  placementStudy,
  differentialStudy,
  arrangementStudy,
  dayStudy,
  deliveryStudy,
  coolDownStudy,
] as const;
