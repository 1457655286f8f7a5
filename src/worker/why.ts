import { changesStudy } from '../../sim/run/changes.ts';
import { minutesStudy } from '../../sim/run/minutes.ts';
import { spreadStudy } from '../../sim/run/spread.ts';
import type { StudyOf } from './answer.ts';
import { kept } from './kept.ts';

/** What says why it takes so long, in the order in which it is wanted. Kept, so that what is undone shows at once. */
export const why: readonly StudyOf[] = [
  // a name, the day of hot water in use and prices do not change a reheat
  kept(minutesStudy, (variant) => ({
    ...variant,
    name: '',
    day: null,
    ownDraws: [],
    prices: null,
  })),
  kept(changesStudy, (variant) => variant),
  spreadStudy,
];
